import type { Problem } from '../../engine/result';
import { type CxfObject, GLOWS } from './cxf-object';
import type { CxfDialect } from './cxf-values';
import { CONDITIONS_BEST_FIRST, conditionNotice } from './measurement-condition';
import { counted, IF_RIGHT, sheetProblem } from './sheet-problem';

/** One notice for each way of choosing, with how often. */
export function chosenNotices(objects: readonly CxfObject[], file: string): readonly Problem[] {
  const counts = new Map<string, { count: number; readonly line: number }>();
  for (const { chosen, line } of objects) {
    if (!chosen) continue;
    const seen = counts.get(chosen);
    if (seen) seen.count++;
    else counts.set(chosen, { count: 1, line });
  }
  return [...counts]
    .slice(0, 10)
    .map(([chosen, { count, line }]) =>
      sheetProblem(
        'measurement-chosen',
        `${counted(count, 'object')} ${count === 1 ? 'has' : 'have'} several measurements: ${chosen}. ${chosen.endsWith(GLOWS) ? WHY_GLOWS : WHY}`,
        IF_RIGHT,
        file,
        line,
      ),
    );
}

/** Under which conditions that what is taken was measured, each once. */
export const conditionNotices = (objects: readonly CxfObject[], file: string): readonly Problem[] =>
  CONDITIONS_BEST_FIRST.flatMap((condition) => {
    const first = objects.find((one) => one.condition === condition);
    return first ? [conditionNotice(condition, file, first.line)] : [];
  });

/** Gloss that was left out. */
export function glossNotices(objects: readonly CxfObject[], file: string): readonly Problem[] {
  const such = objects.filter(({ glossAngles }) => glossAngles.length > 0);
  if (such.length === 0) return [];
  const angles = [...new Set(such.flatMap(({ glossAngles }) => glossAngles))].map((angle) => `${angle}°`).join(', ');
  const text = `Gloss of ${counted(such.length, 'object')} is given at ${angles}; it cannot be turned into gloss at 60° and was left out.`;
  return [sheetProblem('gloss-other-angle', text, 'Give gloss units at 60° if you have them.', file, such[0]!.line)];
}

const WHY =
  'SCI goes before SCE: in a room all reflected light counts. M1 goes before M0, M2 and M3: its light is like daylight, ultraviolet included.';

const WHY_GLOWS = 'The best of the others was taken.';

const DIALECTS: { readonly [D in CxfDialect]: string } = {
  'no-reference': 'name no ColorSpecification; the only one of the file was taken',
  'own-steps': 'give the steps of their spectra themselves, where their specification should',
  'no-date': 'have no CreationDate',
};

export function dialectNotices(objects: readonly CxfObject[], file: string): readonly Problem[] {
  return (Object.keys(DIALECTS) as CxfDialect[]).flatMap((dialect) => {
    const such = objects.filter(({ dialects }) => dialects.has(dialect));
    if (such.length === 0) return [];
    const text = `${counted(such.length, 'object')} depart from the standard: they ${DIALECTS[dialect]}.`;
    return [sheetProblem('cxf-dialect', text, IF_RIGHT, file, such[0]!.line)];
  });
}
