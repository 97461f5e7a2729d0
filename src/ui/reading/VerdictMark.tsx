import type { ShiftVerdict } from '../../engine/change/shift-under';

/** The mark of what a light does to a color: level lines stay, an arrow shifts, a question mark cannot be told. */
export function VerdictMark({ verdict }: { readonly verdict: ShiftVerdict }) {
  return (
    <svg className="mark" viewBox="0 0 16 16" width="14" height="14" aria-hidden="true" focusable="false">
      {verdict === 'holds' && <path d="M3 6h10M3 10.5h10" stroke="currentColor" strokeWidth="1.8" />}
      {verdict === 'shifts' && (
        <path d="M2 8h11M9 3.5 13.5 8 9 12.5" stroke="currentColor" strokeWidth="1.8" fill="none" />
      )}
      {verdict === 'cannot-tell' && (
        <path
          d="M5 5.5a3 3 0 1 1 4.4 2.7C8.4 8.8 8 9.4 8 10.5M8 12.6v1.6"
          stroke="currentColor"
          strokeWidth="1.8"
          fill="none"
        />
      )}
    </svg>
  );
}
