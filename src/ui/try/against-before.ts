import type { Warning } from '../../engine/judge/assessment';
import { compareFindings } from '../../engine/judge/repairs/compare-findings';
import type { AgainstBefore, FindingCounts } from '../words/try-out';

/** Counts what a trial does to the findings; the order of either does not matter. */
export function againstBefore(before: readonly Warning[], after: readonly Warning[]): AgainstBefore {
  const { cleared, softened, added, addedNotes } = compareFindings(before, after);
  // A note that is gone is one that the way back would bring.
  const goneNotes = compareFindings(after, before).addedNotes;
  return {
    clears: counts([...cleared, ...goneNotes]),
    eases: softened.length,
    brings: counts([...added, ...addedNotes]),
  };
}

function counts(warnings: readonly Warning[]): FindingCounts {
  const questions = warnings.filter(({ code }) => code === 'cannot-tell').length;
  const notes = warnings.filter(({ code, severity }) => severity === 'note' && code !== 'cannot-tell').length;
  return { warnings: warnings.length - questions - notes, notes, questions };
}
