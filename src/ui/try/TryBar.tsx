import { useEffect, useRef } from 'react';
import { TRY } from '../words/try-out';
import './try-bar.css';

export interface TryBarProps {
  /** What is tried, and in which option. */
  readonly label: string;
  readonly option: string;
  readonly onKeep: () => void;
  readonly onDrop: () => void;
  /** Not where one goes on trying from a list. */
  readonly takesFocus: boolean;
}

/**
 * Says what is on trial, with what can be done about it. What one pressed to try it is often gone by then, so the words take the focus
 * (and are read out); once the trial ends, the focus goes back, or to the findings.
 */
export function TryBar({ label, option, onKeep, onDrop, takesFocus }: TryBarProps) {
  const words = useRef<HTMLParagraphElement>(null);
  const text = TRY.trying(label, option);
  useEffect(() => {
    const before = document.activeElement;
    return () => {
      // What held the focus is taken away after this.
      requestAnimationFrame(() => giveBack(before));
    };
  }, []);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another trial is read out, too
  useEffect(() => {
    if (takesFocus) words.current?.focus({ preventScroll: true });
  }, [text, takesFocus]);
  return (
    <section className="try-bar" aria-label={TRY.region}>
      <div className="try-words">
        <p ref={words} tabIndex={-1}>
          <strong>{text}</strong>
        </p>
        <p className="small">{TRY.unkept}</p>
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

function giveBack(before: Element | null): void {
  if (document.activeElement !== document.body) return;
  const isThere = before instanceof HTMLElement && before !== document.body && before.isConnected;
  const to = isThere ? before : document.querySelector<HTMLElement>('.findings-body');
  to?.focus({ preventScroll: true });
}
