import type { Chain, ChainKind } from './types';

/** Marks nearer than this are one, mm. */
const LEAST_MM = 0.5;

/** A chain of dimensions over marks in any order, mm to tenths; first and last are its ends. */
export function chainOf(what: ChainKind, side: Chain['side'], row: 0 | 1, places: readonly number[]): Chain {
  const sorted = places.map((place) => Math.round(10 * place) / 10).sort((a, b) => a - b);
  const marks = sorted.filter((mark, i) => i === 0 || mark - sorted[i - 1]! >= LEAST_MM);
  const last = sorted.at(-1)!;
  // The end stays where it is, whatever is beside it.
  if (marks.length > 1 && last > marks.at(-1)!) marks[marks.length - 1] = last;
  return { what, side, row, marks };
}
