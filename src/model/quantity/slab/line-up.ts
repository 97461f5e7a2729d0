import type { SlabPiece } from '../slab-types';
import { common, type Stretches } from './stretches';

/** A part between a line and an end is at least as long as this, mm: less is a slip of measuring. */
const LEAST_MM = 20;

/**
 * Where on a piece the pieces before it on its line are parted or begin and end, mm along it: their seams, and the joints of a corner. What lies
 * at its own ends is none.
 */
export function linesOn(
  piece: SlabPiece,
  others: readonly SlabPiece[],
  seams: readonly (readonly number[])[],
): readonly number[] {
  const { along, length_mm, lines_mm = [] } = piece;
  if (!along) return lines_mm;
  const at = others.flatMap((other, i) => {
    if (!other.along || other.along.line !== along.line || other.follows !== undefined) return [];
    const shift = other.along.from_mm - along.from_mm;
    return [0, ...(seams[i] ?? []), other.length_mm].map((place) => place + shift);
  });
  const inside = [...lines_mm, ...at].filter((place) => place > LEAST_MM && place < length_mm - LEAST_MM);
  return [...new Set(inside)].sort((a, b) => a - b);
}

/** Most ways that are looked at further. */
const MOST_WAYS = 3;

/** The ways to set all seams at lines, those that share the length most evenly first; none where lines do not do. */
export function seamsAtLines(
  count: number,
  { length_mm, longest_mm, shortest_mm }: { readonly [K in 'length_mm' | 'longest_mm' | 'shortest_mm']: number },
  before: readonly Stretches[],
  lines_mm: readonly number[],
): readonly (readonly number[])[] {
  let ways: readonly (readonly number[])[] = [[]];
  for (let i = 1; i <= count; i++) {
    ways = ways.flatMap((way) => {
      const last = way.at(-1) ?? 0;
      return lines_mm
        .filter((at) => at - last >= shortest_mm && at - last <= longest_mm)
        .filter((at) => common(before[count + 1 - i]!, [[at, at]]).length > 0)
        .map((at) => [...way, at]);
    });
  }
  const uneven = (way: readonly number[]): number =>
    way.reduce((sum, at, i) => sum + Math.abs(at - (length_mm * (i + 1)) / (count + 1)), 0);
  return [...ways].sort((a, b) => uneven(a) - uneven(b)).slice(0, MOST_WAYS);
}
