import { useId, useState } from 'react';
import type { Assessment, Warning } from '../../engine/judge/assessment';
import { firmnessOf } from '../../engine/judge/firmness';
import type { SurfaceId } from '../../engine/surface';
import { pointing } from '../parts/pointing';
import { SeverityMark } from '../parts/SeverityMark';
import { BASIS_WORDS, FINDINGS, holdsInWords, SEVERITY_WORDS, WARNING_WORDS } from '../words/findings';
import { capital } from '../words/numbers';
import { retold } from '../words/spoken';
import { type HelpSource, WhatHelps } from './WhatHelps';

interface WarningItemProps {
  readonly warning: Warning;
  readonly assessment: Assessment;
  readonly help: HelpSource;
  /** Said already as the balance sentence: then only its name stands here, with the reason. */
  readonly isSaid: boolean;
  /** New, and how firmly it holds not known yet: shown without its grade. */
  readonly isChecking: boolean;
  /** Told which surfaces to outline while the warning is pointed at or has the focus. */
  readonly onPoint: (surfaces: readonly SurfaceId[]) => void;
}

/** One warning: its mark and one sentence; the reason with its numbers is one step away. */
export function WarningItem({ warning, assessment, help, isSaid, isChecking, onPoint }: WarningItemProps) {
  const [open, setOpen] = useState(false);
  const id = useId();
  const isQuestion = warning.code === 'cannot-tell';
  return (
    <li
      className={`warning ${isChecking ? '' : `warning-${warning.severity}`}`}
      {...pointing(warning.surfaces, onPoint)}
    >
      <SeverityMark severity={isQuestion ? 'question' : isChecking ? 'note' : warning.severity} />
      <div className="warning-words">
        <p id={`${id}-text`}>{isSaid ? saidAbove(warning, assessment) : retold(warning.text)}</p>
        <div className="warning-foot">
          <span className="small quiet">
            {isChecking
              ? FINDINGS.checking
              : capital(isQuestion ? FINDINGS.question : SEVERITY_WORDS[warning.severity])}
          </span>
          <button
            type="button"
            className="button button-plain"
            aria-expanded={open}
            aria-controls={`${id}-why`}
            aria-describedby={`${id}-text`}
            onClick={() => setOpen(!open)}
          >
            {open ? FINDINGS.hideWhy : FINDINGS.why}
          </button>
        </div>
        <WhatHelps warning={warning} assessment={assessment} help={help} />
        <div id={`${id}-why`} className="warning-why small" hidden={!open}>
          <p>{retold(warning.reason ?? warning.why)}</p>
          <p>
            {capital(BASIS_WORDS[warning.basis])}. {holdsInWords(warning.holds_in, assessment.status)}
          </p>
          {warning.reason && (
            <details>
              <summary>{FINDINGS.numbers}</summary>
              <p>{retold(warning.why)}</p>
            </details>
          )}
        </div>
      </div>
    </li>
  );
}

/** What stands in the place of a sentence that is the headline already: the figure it rests on. */
function saidAbove({ code, holds_in }: Warning, { balance }: Assessment): string {
  const isFirm = firmnessOf(holds_in) === 'firm';
  if (code === 'lacks-warm') return FINDINGS.saidAbove('warm', balance.warm_share, isFirm);
  if (code === 'lacks-cool') return FINDINGS.saidAbove('cool', balance.cool_share, isFirm);
  return `${capital(WARNING_WORDS[code])}.`;
}
