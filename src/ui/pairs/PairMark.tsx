import { QuestionPath } from '../parts/QuestionPath';
import { SeverityMark } from '../parts/SeverityMark';
import { FAULT_LETTERS } from '../words/pairs';
import type { CellSign } from './cell-sign';

/**
 * The sign of a verdict: the mark of its grade and a letter for a fault, one drawing each for the rest. Form and weight tell them
 * apart, never color.
 */
export function PairMark({ kind, severity }: CellSign) {
  const letter = FAULT_LETTERS[kind];
  if (letter) {
    return (
      <span className="pair-mark">
        <SeverityMark severity={severity ?? 'note'} />
        <b aria-hidden="true">{letter}</b>
      </span>
    );
  }
  return (
    <span className="pair-mark">
      <svg className="mark" viewBox="0 0 16 16" width="16" height="16" aria-hidden="true" focusable="false">
        {DRAWINGS[kind]}
      </svg>
    </span>
  );
}

const line = (d: string, strokeWidth = 1.8) => (
  <path d={d} stroke="currentColor" strokeWidth={strokeWidth} fill="none" />
);

const DRAWINGS: Partial<Record<CellSign['kind'], React.ReactNode>> = {
  'cannot-tell': <QuestionPath />,
  same: line('M3 6h10M3 10.5h10', 2.2),
  match: line('M2.5 6.5q2.7-3 5.5 0t5.5 0M2.5 11q2.7-3 5.5 0t5.5 0'),
  agree: line('M2.5 8.5 6.5 12.5 13.5 4'),
  relates: (
    <>
      <circle cx="5.6" cy="8" r="3.6" stroke="currentColor" strokeWidth="1.5" fill="none" />
      <circle cx="10.4" cy="8" r="3.6" stroke="currentColor" strokeWidth="1.5" fill="none" />
    </>
  ),
  none: <circle cx="8" cy="8" r="1.4" fill="currentColor" />,
};
