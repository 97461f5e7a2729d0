import { seamsAtLines } from './line-up';
import { clearOf, common, nearest, type Stretches, shifted } from './stretches';

/** A piece too long for its slab, mm. */
export interface LongPiece {
  readonly length_mm: number;
  /** No seam goes through them. */
  readonly cutouts_mm: Stretches;
  /** Where a seam is better not set, in several sets, the strictest first: the first that leaves places for no more seams counts. */
  readonly better_clear?: readonly Stretches[];
  /** Places that seams go to where they can. */
  readonly lines_mm?: readonly number[];
  /** The longest part that a slab holds. */
  readonly longest_mm: number;
  readonly shortest_mm: number;
}

/** Places from which the end is reached by so many seams, from none upward. */
type Before = readonly Stretches[];

/** Dust of floating point, mm: finer than what still goes into a slab. */
const DUST_MM = 1e-7;
/** Nobody makes a counter of more parts. */
const MOST_SEAMS = 100;

/**
 * Ways to part a piece by as few seams as can be: no part is longer or shorter than allowed, and no seam goes through a cut-out. The best
 * way first: at the lines, where there are some. Else one seam lies as near as can be to two thirds or one third of the length (our
 * judgment: out of the middle, where it would be looked at, and both parts of use); more share it evenly. The other ways make the first or
 * the last parts as long as can be; they are for where a slab can be saved. Empty where there is no place for seams; [[]] where none is
 * needed.
 */
export function chooseSeams(piece: LongPiece): readonly (readonly number[])[] {
  const { length_mm, cutouts_mm, better_clear = [] } = piece;
  const longest_mm = piece.longest_mm + DUST_MM;
  const shortest_mm = Math.max(0, piece.shortest_mm - DUST_MM);
  if (length_mm <= longest_mm) return [[]];
  if (shortest_mm > longest_mm) return [];
  const parted = { ...piece, longest_mm, shortest_mm };
  const anywhere = placesBefore(parted, cutouts_mm, MOST_SEAMS);
  if (!anywhere) return [];
  const count = anywhere.length - 1;
  for (const clear of better_clear) {
    const before = placesBefore(parted, [...cutouts_mm, ...clear], count);
    if (before) return waysWith(count, parted, before);
  }
  return waysWith(count, parted, anywhere);
}

/** Places for as few seams as reach the end, all clear of what is in the way; null where more than `most` would be needed. */
function placesBefore(
  { length_mm, longest_mm, shortest_mm }: LongPiece,
  inWay: Stretches,
  most: number,
): Before | null {
  const clear = clearOf(length_mm, inWay);
  const before: Stretches[] = [[[length_mm, length_mm]]];
  while (before.length <= most) {
    before.push(common(shifted(before.at(-1)!, -longest_mm, -shortest_mm), clear));
    if (common(shifted(before.at(-1)!, -longest_mm, -shortest_mm), [[0, 0]]).length > 0) return before;
  }
  return null;
}

function waysWith(count: number, piece: LongPiece, before: Before): readonly (readonly number[])[] {
  const { length_mm, longest_mm, lines_mm = [] } = piece;
  const to = (target: (i: number) => number): readonly number[] => seamsNear(count, piece, before, target);
  const off = (seams: readonly number[], target: number): number => Math.abs(seams[0]! - target);
  const [long, short] = [(length_mm * 2) / 3, length_mm / 3];
  const evenly = (i: number): number => (length_mm * i) / (count + 1);
  const thirds = [to(() => long), to(() => short)] as const;
  const preferred =
    count > 1
      ? [to(evenly)]
      : off(thirds[1], short) < off(thirds[0], long) - DUST_MM
        ? [thirds[1], thirds[0]]
        : [...thirds];
  const ways = [
    ...seamsAtLines(count, piece, before, lines_mm),
    ...preferred,
    to((i) => i * longest_mm),
    to((i) => length_mm - (count + 1 - i) * longest_mm),
  ];
  const clean = ways.map((way) => way.map(withoutDust));
  return clean.filter((way, i) => clean.findIndex((other) => other.join() === way.join()) === i);
}

/** Seams one after another, each the place nearest to its target from which the rest can be done. */
function seamsNear(
  count: number,
  { longest_mm, shortest_mm }: LongPiece,
  before: Before,
  target: (i: number) => number,
): readonly number[] {
  const seams: number[] = [];
  for (let i = 1; i <= count; i++) {
    const last = seams.at(-1) ?? 0;
    const open = common(before[count + 1 - i]!, [[last + shortest_mm, last + longest_mm]]);
    seams.push(nearest(open, tenth(target(i))) ?? nearest(before[count + 1 - i]!, last + shortest_mm)!);
  }
  return seams;
}

const withoutDust = (mm: number): number => Math.round(mm * 1e6) / 1e6;

/** Saws are not set finer, mm. */
const tenth = (mm: number): number => Math.round(mm * 10) / 10;
