import type { Severity } from '../../engine/judge/assessment';
import { QuestionPath } from './QuestionPath';

/**
 * The mark of a finding: triangle grave, circle visible, dash note, and a question mark for what is no warning but open.
 * Shape carries the grade, never color.
 */
export function SeverityMark({ severity }: { readonly severity: Severity | 'question' }) {
  return (
    <svg className="mark" viewBox="0 0 16 16" width="16" height="16" aria-hidden="true" focusable="false">
      {severity === 'grave' && (
        <>
          <path d="M8 1.5 15.2 14.5H.8Z" fill="currentColor" />
          <path d="M8 6v4M8 11.4v1.4" stroke="var(--panel)" strokeWidth="1.6" fill="none" />
        </>
      )}
      {severity === 'visible' && <circle cx="8" cy="8" r="5.5" fill="none" stroke="currentColor" strokeWidth="2" />}
      {severity === 'note' && <path d="M3 8h10" stroke="currentColor" strokeWidth="2" />}
      {severity === 'question' && <QuestionPath />}
    </svg>
  );
}
