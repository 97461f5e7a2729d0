import { useEffect, useRef, useState } from 'react';
import type { SurfaceId } from '../../engine/surface';
import { type AgainstBefore, isNamedIn, type SettledMoved, TRY } from '../words/try-out';
import { giveBack } from './give-back';
import './try-bar.css';

export interface TryBarProps {
  /** What is tried, and in which option. */
  readonly label: string;
  readonly option: string;
  /** Every surface that it changes, and which of them were settled. */
  readonly moves: readonly SurfaceId[];
  readonly settled: readonly SettledMoved[];
  /** What it does to the findings; null where those of before are not known. */
  readonly against: AgainstBefore | 'comparing' | 'other-light' | null;
  readonly onKeep: () => void;
  readonly onDrop: () => void;
  /** Not where one goes on trying from a list. */
  readonly takesFocus: boolean;
}

/**
 * Says what is on trial and what it does, with what can be done about it. What one pressed to try it is often gone by then, so the
 * words take the focus (and are read out); once the trial ends, the focus goes back, or to the findings.
 */
export function TryBar(props: TryBarProps) {
  const { label, option, moves, settled, against, onKeep, onDrop, takesFocus } = props;
  const words = useRef<HTMLParagraphElement>(null);
  // Looked for before this bar is there: what was pressed goes when it comes.
  const [began] = useState(() => document.activeElement);
  const text = TRY.trying(label, option);
  const isNamed = isNamedIn(label, moves);
  useEffect(
    () => () => {
      // What held the focus is taken away after this.
      requestAnimationFrame(() => giveBack(began));
    },
    [began],
  );
  // biome-ignore lint/correctness/useExhaustiveDependencies: another trial is read out, too
  useEffect(() => {
    if (!takesFocus) return;
    words.current?.focus({ preventScroll: true });
    // Where the page scrolls, the bar may be out of sight.
    words.current?.scrollIntoView({ block: 'nearest' });
  }, [text, takesFocus]);
  return (
    <section className="try-bar" aria-label={TRY.region}>
      <div className="try-words">
        <p ref={words} tabIndex={-1}>
          <strong>{text}</strong>
          {(!isNamed || settled.length > 0) && (
            <span className="try-moves small">
              {!isNamed && <Moves moves={moves} />} <b>{settled.map(TRY.settled).join(' ')}</b>
            </span>
          )}
        </p>
        <p className="small">
          {against && <span aria-live="polite">{againstWords(against)}</span>}{' '}
          <span className="quiet">{TRY.unkept}</span>
        </p>
      </div>
      <div className="try-buttons">
        <button type="button" className="button button-strong" onClick={onKeep}>
          {TRY.keep}
        </button>
        <button type="button" className="button button-outlined" aria-keyshortcuts="Escape" onClick={onDrop}>
          {TRY.drop}
        </button>
      </div>
    </section>
  );
}

/** All that moves, in as many words as fit into a line. */
function Moves({ moves }: Pick<TryBarProps, 'moves'>) {
  const [all, brief] = [TRY.moves(moves), TRY.movesBriefly(moves)];
  if (all === brief) return all;
  return (
    <>
      <span aria-hidden="true">{brief}</span>
      <span className="hidden-visually">{all}</span>
    </>
  );
}

function againstWords(against: NonNullable<TryBarProps['against']>): string {
  if (against === 'comparing') return TRY.comparing;
  return against === 'other-light' ? TRY.otherLight : TRY.against(against);
}
