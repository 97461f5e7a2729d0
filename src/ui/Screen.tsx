import { type ReactNode, useRef } from 'react';
import { useCovered } from './parts/use-covered';
import './styles/tokens.css';
import './styles/base.css';
import './styles/controls.css';
import './styles/screen.css';
import { PICTURE } from './words/picture';

export interface ScreenProps {
  readonly bar: ReactNode;
  readonly banner: ReactNode;
  readonly picture: ReactNode;
  readonly ledge: ReactNode;
  /** Over the ledge; null when closed. */
  readonly drawer: ReactNode;
  readonly findings: ReactNode;
}

/** One picture, one ledge of samples, one column of findings; everything else is a step away. */
export function Screen({ bar, banner, picture, ledge, drawer, findings }: ScreenProps) {
  const ledgeBox = useRef<HTMLDivElement>(null);
  const drawerBox = useRef<HTMLDivElement>(null);
  const isDrawerOpen = drawer !== null && drawer !== false;
  useCovered(ledgeBox, drawerBox, isDrawerOpen);
  return (
    <div className="screen">
      <header className="screen-bar">{bar}</header>
      <main className="screen-main">
        <div className="screen-banner">{banner}</div>
        <section className="screen-picture" aria-label={PICTURE.region}>
          {picture}
        </section>
        <div ref={ledgeBox} className="screen-ledge">
          {ledge}
          {isDrawerOpen && (
            <div ref={drawerBox} className="screen-drawer">
              {drawer}
            </div>
          )}
        </div>
        <div className="screen-findings">{findings}</div>
      </main>
    </div>
  );
}
