import type { Problem } from '../engine/result';

/** Inclusive bounds and the unit they are in. */
export type Bounds = readonly [least: number, most: number, unit: string];

/** A problem when the number is outside its bounds or no number at all; nothing otherwise. */
export function checkNumber(value: number, [least, most, unit]: Bounds, path: string): readonly Problem[] {
  if (value >= least && value <= most) return [];
  const tail = unit ? ` ${unit}` : '';
  return [
    {
      code: 'out-of-range',
      text: `${path} is ${value}, outside ${least} to ${most}${tail}.`,
      at: { path },
      remedy: `Give a number from ${least} to ${most}${tail}.`,
    },
  ];
}

/** A problem when a text is empty or only spaces. */
export function checkText(value: string, path: string): readonly Problem[] {
  if (value.trim() !== '') return [];
  return [{ code: 'empty-text', text: `${path} is empty.`, at: { path }, remedy: 'Give it a text.' }];
}

/** A problem for every id that stands in the list a second time. */
export function checkUnique(ids: readonly string[], path: string): readonly Problem[] {
  const first = new Map<string, number>();
  const problems: Problem[] = [];
  ids.forEach((id, i) => {
    const before = first.get(id);
    if (before === undefined) first.set(id, i);
    else
      problems.push({
        code: 'duplicate-id',
        text: `${path}[${i}].id: "${id}" stands already at ${path}[${before}].`,
        at: { path: `${path}[${i}].id` },
        remedy: 'Give each its own id.',
      });
  });
  return problems;
}
