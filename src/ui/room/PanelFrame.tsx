import { type ReactNode, useEffect, useId, useRef } from 'react';
import { DAYLIGHT } from '../words/daylight';
import './room-panel.css';

interface PanelFrameProps {
  readonly title: string;
  /** Which button of the page opens it: the focus returns there. */
  readonly opener: string;
  readonly onClose: () => void;
  readonly children: ReactNode;
}

/** Where less of a panel shows when it opens, the page scrolls to it. */
const LEAST_IN_SIGHT_PX = 160;

/** A panel in the column of findings: takes the focus when it opens, gives it back when it goes; Esc closes it. */
export function PanelFrame({ title, opener, onClose, children }: PanelFrameProps) {
  const heading = useId();
  const panel = useRef<HTMLElement>(null);
  useEffect(() => {
    panel.current?.focus({ preventScroll: true });
    // What stood here before may have been scrolled.
    panel.current?.parentElement?.scrollTo(0, 0);
    const isBelow = (panel.current?.getBoundingClientRect().top ?? 0) > window.innerHeight - LEAST_IN_SIGHT_PX;
    if (isBelow) panel.current?.scrollIntoView({ block: 'start' });
    return () => {
      const { activeElement } = document;
      if (activeElement && activeElement !== document.body) return;
      document.querySelector<HTMLElement>(`[data-opens="${opener}"]`)?.focus({ preventScroll: true });
    };
  }, [opener]);
  return (
    <section
      ref={panel}
      className="room-panel"
      aria-labelledby={heading}
      tabIndex={-1}
      onKeyDown={(event) => {
        if (event.key !== 'Escape') return;
        // Esc closes what is open, one thing at a time: the page must not hear of this press.
        event.stopPropagation();
        onClose();
      }}
    >
      <div className="room-panel-head">
        <h2 id={heading}>{title}</h2>
        <button type="button" className="button button-outlined" onClick={onClose}>
          {DAYLIGHT.close}
        </button>
      </div>
      {children}
    </section>
  );
}
