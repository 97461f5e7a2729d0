import type { ShiftVerdict } from '../../engine/change/shift-under';
import { QuestionPath } from '../parts/QuestionPath';

/** The mark of what a light does to a color: level lines stay, an arrow shifts, a question mark cannot be told. */
export function VerdictMark({ verdict }: { readonly verdict: ShiftVerdict }) {
  return (
    <svg className="mark" viewBox="0 0 16 16" width="14" height="14" aria-hidden="true" focusable="false">
      {verdict === 'holds' && <path d="M3 6h10M3 10.5h10" stroke="currentColor" strokeWidth="1.8" />}
      {verdict === 'shifts' && (
        <path d="M2 8h11M9 3.5 13.5 8 9 12.5" stroke="currentColor" strokeWidth="1.8" fill="none" />
      )}
      {verdict === 'cannot-tell' && <QuestionPath />}
    </svg>
  );
}
