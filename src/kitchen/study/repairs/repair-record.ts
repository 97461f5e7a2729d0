import type { FindingRef, Repair, RepairChange, Unrepaired, Warning } from '../../../engine/judge/assessment';
import { weakEdges } from '../../../engine/judge/edges';
import { edgesWorsened } from '../../../engine/judge/repairs/edges-worsened';
import { repairText, unrepairedText } from '../../../engine/judge/repairs/repair-words';
import { answersLack } from '../../../engine/judge/repairs/repairable';
import type { JudgedOption } from './judged-option';
import type { LibraryChange } from './library-changes';
import type { Miss, Offer } from './search';
import { addedIn } from './trial';

/** What is offered, as the assessment tells it. `settings`: those it was run in, the one on screen first. */
export function repairRecord(
  { change, trial, elsewhere }: Offer,
  { option, input }: JudgedOption,
  settings: readonly string[],
): Repair {
  const cleared = trial.findings.cleared.filter(({ code }) => answersLack(code, trial.balance)).map(refTo);
  const softened = trial.findings.softened.map(refTo);
  const added = [...trial.findings.addedNotes.map((note) => addedIn(settings[0]!, note)), ...elsewhere];
  const changes = [changeRecord(change)];
  const worsens = edgesWorsened(weakEdges(input), trial.weakEdges);
  const decided = change.surfaces.filter((surface) => option.scheme[surface].state === 'decided');
  return {
    surface: change.surfaces[0]!,
    finish: change.finish.id,
    changes,
    changes_decided: change.isDecided,
    clears: codesOf(cleared),
    cleared,
    softened,
    otherwise_from: trial.otherwiseFrom,
    worsens,
    adds: codesOf(added),
    added,
    settings,
    text: repairText({ changes, cleared, softened, added, worsens, decided, otherwiseFrom: trial.otherwiseFrom }),
  };
}

/** Why nothing is offered for a warning. */
export const unrepairedRecord = (warning: Warning, near: Miss | null, isSettled: boolean): Unrepaired => ({
  ...refTo(warning),
  text: unrepairedText(near && { change: changeRecord(near.change), raises: near.raises.text }, isSettled),
});

const refTo = ({ code, surfaces }: Warning): FindingRef => ({ code, surfaces });

const codesOf = (refs: readonly FindingRef[]) => [...new Set(refs.map(({ code }) => code))];

const changeRecord = ({ surfaces, finish, moved_de00 }: LibraryChange): RepairChange => ({
  surfaces,
  finish: finish.id,
  label: finish.label,
  moved_de00,
});
