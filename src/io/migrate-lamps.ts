import { spreadLamps } from '../model/layout/spread-lamps';

type Fields = Readonly<Record<string, unknown>>;

/** More ceiling lamps no version takes. */
const MOST_LAMPS = 24;

/**
 * Places for the ceiling lamps of a version 1 kitchen that are too large to be spread evenly: in a row across the room, mm. Version 1
 * asked only that all of them side by side are no longer than the shorter wall. Null where they are spread as ever, or where a
 * value is no number.
 */
export function rowOfLamps(
  room: unknown,
  counter: unknown,
  { count, size }: Fields,
): readonly [number, number][] | null {
  const { width, depth } = (room ?? {}) as Fields;
  const { depth: counterDepth } = (counter ?? {}) as Fields;
  const given = [count, size, width, depth, counterDepth];
  if (!given.every((value): value is number => typeof value === 'number' && Number.isFinite(value))) return null;
  const [lamps, side, wide, deep, before] = given as [number, number, number, number, number];
  if (!Number.isInteger(lamps) || lamps < 1 || lamps > MOST_LAMPS) return null;
  const free = deep - before;
  const spread = spreadLamps(lamps, { x0: before, x1: wide, y0: 0, y1: free });
  const fits = spread.every(
    ([x, y], i) =>
      Math.min(x, wide - x, y, free - y) >= side / 2 &&
      spread.slice(0, i).every(([x2, y2]) => Math.max(Math.abs(x - x2), Math.abs(y - y2)) >= side),
  );
  if (fits) return null;
  return Array.from({ length: lamps }, (_, i) => [(wide * (i + 0.5)) / lamps, free / 2]);
}
