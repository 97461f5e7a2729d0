import type { Warning } from '../../engine/judge/assessment';
import { SeverityMark } from '../parts/SeverityMark';
import { FINDINGS, SEVERITY_WORDS } from '../words/findings';
import { capital } from '../words/numbers';
import { retold } from '../words/spoken';

/** A finding with its mark and its grade in words; a reason where one is given in words. */
export function PrintedFinding({ warning, isShort }: { readonly warning: Warning; readonly isShort?: boolean }) {
  const isQuestion = warning.code === 'cannot-tell';
  return (
    <div className="printed-finding">
      <SeverityMark severity={isQuestion ? 'question' : warning.severity} />
      <div>
        <p>
          {retold(warning.text)}{' '}
          <span className="sheet-small">
            {capital(isQuestion ? FINDINGS.question : SEVERITY_WORDS[warning.severity])}.
          </span>
        </p>
        {!isShort && warning.reason && <p className="sheet-small">{retold(warning.reason)}</p>}
      </div>
    </div>
  );
}
