import type { Kitchen } from '../../model/kitchen';
import type { Rows, RunRows } from '../../model/layout/types';
import { type LengthUnit, lengthText } from '../../model/length-text';
import type { PlanMargins } from './PlanView';

/** A dimension of a drawing: between two points of it, mm, x to the right and y down. */
export interface Dimension {
  readonly from: readonly [x: number, y: number];
  readonly to: readonly [x: number, y: number];
  readonly length_mm: number;
  /** Whether the words stand above (or left of) the line, or below (or right of) it. */
  readonly side: 'before' | 'after';
}

/** A dimension's words: what they say, and whether they turn across their line for want of room along it. */
export interface DimensionWords {
  readonly text: string;
  readonly isTurned: boolean;
  /** How far they reach away from the line, mm. */
  readonly depth_mm: number;
}

/** Mean width of a digit against the height of letters. */
const DIGIT_WIDTH = 0.56;
/** The foot of the words from their line, in heights of letters. */
export const GAP = 0.25;
/** How far lines of dimensions stand from what they measure and from each other, in heights of letters. */
export const FIRST_LINE = 0.8;
const LINE_APART = 1.9;

/** The words of a dimension at a height of letters; null where even turned they have no room. */
export function dimensionWords({ length_mm }: Dimension, unit: LengthUnit, letter: number): DimensionWords | null {
  if (length_mm < 0.95 * letter) return null;
  const text = lengthText(length_mm, unit);
  const wide = text.length * DIGIT_WIDTH * letter;
  const isTurned = wide > length_mm;
  return { text, isTurned, depth_mm: GAP * letter + (isTurned ? wide : letter) };
}

/** A chain of dimensions along x at one height, from mark to mark; none where marks coincide. */
export const chainAlongX = (marks: readonly number[], y: number, side: Dimension['side']): readonly Dimension[] =>
  pairs(marks).map(([from, to]) => ({ from: [from, y], to: [to, y], length_mm: to - from, side }));

/** A chain of dimensions along y. */
export const chainAlongY = (marks: readonly number[], x: number, side: Dimension['side']): readonly Dimension[] =>
  pairs(marks).map(([from, to]) => ({ from: [x, from], to: [x, to], length_mm: to - from, side }));

function pairs(marks: readonly number[]): readonly (readonly [number, number])[] {
  const sorted = [...marks].sort((a, b) => a - b).filter((mark, i, all) => i === 0 || mark - all[i - 1]! > 0.5);
  return sorted.slice(1).map((to, i) => [sorted[i]!, to]);
}

/** The sizes on a plan: what stands along each wall, the room outside it, the island. `letter`: height of the words, mm. */
export function planDimensions(
  { room, island }: Kitchen,
  rows: Rows,
  letter: number,
  wall: number,
): readonly Dimension[] {
  const { width, depth } = room;
  const near = wall + FIRST_LINE * letter;
  const far = near + LINE_APART * letter;
  const parted = rows.runs.filter((run) => isParted(run, run.wall === 'back' ? width : depth));
  const along = parted.flatMap((run) => {
    const marks = blockMarks(run);
    const down = marks.map((mark) => depth - mark);
    if (run.wall === 'back') return chainAlongX(marks, -near, 'before');
    return run.wall === 'left' ? chainAlongY(down, -near, 'before') : chainAlongY(down, width + near, 'after');
  });
  const has = (wall: RunRows['wall']) => parted.some((run) => run.wall === wall);
  return [
    ...along,
    ...chainAlongX([0, width], -(has('back') ? far : near), 'before'),
    ...chainAlongY([0, depth], -(has('left') ? far : near), 'before'),
    ...(island
      ? [
          ...chainAlongX([island.x, island.x + island.width], depth - island.y + FIRST_LINE * letter, 'after'),
          ...chainAlongY(
            [depth - island.y - island.depth, depth - island.y],
            // Beside the end that is free.
            island.joined === 'right' ? island.x - FIRST_LINE * letter : island.x + island.width + FIRST_LINE * letter,
            island.joined === 'right' ? 'before' : 'after',
          ),
        ]
      : []),
  ];
}

/** Free space a plan needs round the room for its dimensions, mm. */
export function planMargins(rows: Rows, letter: number, wall: number): PlanMargins {
  const one = wall + (FIRST_LINE + GAP + 1.2) * letter;
  const two = one + LINE_APART * letter;
  const has = (side: RunRows['wall']) => rows.runs.some((run) => run.wall === side);
  return {
    left: has('left') ? two : one,
    top: has('back') ? two : one,
    right: has('right') ? one : wall + 0.4 * letter,
    bottom: wall + 0.4 * letter,
  };
}

/** Whether a run says more than the length of its wall. */
const isParted = (run: RunRows, length: number): boolean =>
  run.tall.length > 0 || run.counter.from > 0.5 || run.counter.to < length - 0.5;

const blockMarks = (run: RunRows): readonly number[] =>
  [run.counter, ...run.tall].flatMap(({ from, to }) => [from, to]);
