import type { RunRows, Span } from '../model/layout/types';
import { boxAt, wallSide } from './parts/side';
import type { Footprint, Plan } from './plan/types';

/** A corner of the room that counters run into from both sides; `x` is the place that far from its side wall. */
export interface Corner {
  readonly wall: 'left' | 'right';
  x(distance: number): number;
}

/** The corner one looks into: the one with the longer counter on its side wall. Null where no two runs meet. */
export function cornerOf(plan: Plan): Corner | null {
  const corners = plan.runs.filter((run) => run.wall !== 'back' && run.ends.to === 'meets');
  const run = corners.sort((a, b) => lengthOf(b.counter) - lengthOf(a.counter))[0];
  if (!run) return null;
  return run.wall === 'left'
    ? { wall: 'left', x: (distance) => distance }
    : { wall: 'right', x: (distance) => plan.width - distance };
}

const lengthOf = ({ from, to }: Span): number => to - from;

/** A place that far from a corner's side wall, or nearer where a run on the other side wall leaves less room. */
export function nearestFree(plan: Plan, distance: number, { wall }: Corner): number {
  const other = wall === 'left' ? 'right' : 'left';
  const taken = plan.runs.some((run) => run.wall === other) ? plan.counter.depth + 0.2 : 0.4;
  return Math.min(distance, plan.width - taken);
}

/** The longest counter, and the longest part of it that neither sink nor cooktop nor hood takes up. */
export function longestCounter(plan: Plan): { readonly run: RunRows; readonly free: Span } & Span {
  const run = [...plan.runs].sort((a, b) => lengthOf(b.counter) - lengthOf(a.counter))[0]!;
  const { from, to } = run.counter;
  let free: Span = { from, to: from };
  let at = from;
  const taken = [run.sink, run.cooktop].filter((span) => span !== null).sort((a, b) => a.from - b.from);
  for (const span of [...taken, { from: to, to }]) {
    if (span.from - at > lengthOf(free)) free = { from: at, to: span.from };
    at = span.to;
  }
  return { run, from, to, free };
}

/** Middle of all counters and tall units on the floor, by area. */
export function middleOfUnits(plan: Plan): readonly [x: number, y: number] {
  let [x, y, total] = [0, 0, 0];
  for (const { x0, x1, y0, y1 } of footprints(plan)) {
    const area = (x1 - x0) * (y1 - y0);
    x += (area * (x0 + x1)) / 2;
    y += (area * (y0 + y1)) / 2;
    total += area;
  }
  return [x / total, y / total];
}

/** What stands on the floor. */
function footprints(plan: Plan): Footprint[] {
  const runs = plan.runs.flatMap((run) =>
    [run.counter, ...run.tall].map((span) => {
      const [min, max] = boxAt(wallSide(plan, run.wall), {
        a: [span.from, span.to],
        d: [0, plan.counter.depth],
        z: [0, 0],
      });
      return { x0: min[0], x1: max[0], y0: min[1], y1: max[1] };
    }),
  );
  return plan.island ? [...runs, plan.island.counter] : runs;
}

/** One who sits at a table keeps this far from walls and furniture, m. */
const FROM_WALL = 0.4;
const FROM_UNITS = 0.25;
/** Less than this from the doorway it would be nearly the same view, m. */
const FROM_DOOR = 0.75;
/** What stands nearer than this fills the picture, m; so much of the distance looked over that is worth. */
const TOO_NEAR = 1.2;
const NEARNESS_COUNTS = 2.5;

/** A place for a table edge, as far from the units as the room lets it, and what one looks at from there. */
export function atTable(plan: Plan): {
  readonly eye: readonly [x: number, y: number];
  readonly target: readonly [x: number, y: number];
} {
  const { width, depth, door } = plan;
  const target = middleOfUnits(plan);
  const taken = footprints(plan);
  const isFree = (x: number, y: number): boolean =>
    !taken.some(
      ({ x0, x1, y0, y1 }) => x > x0 - FROM_UNITS && x < x1 + FROM_UNITS && y > y0 - FROM_UNITS && y < y1 + FROM_UNITS,
    );
  const atDoor = (door.from + door.to) / 2;
  let best: { eye: readonly [number, number]; score: number } | null = null;
  for (const x of [FROM_WALL, 0.25 * width, 0.5 * width, 0.75 * width, width - FROM_WALL]) {
    for (const y of [FROM_WALL, 0.25 * depth, 0.5 * depth, 0.75 * depth, depth - FROM_WALL]) {
      if (!isFree(x, y)) continue;
      const isNearDoor = Math.hypot(x - atDoor, y) < FROM_DOOR;
      const nearest = Math.min(...taken.map((one) => distanceTo(one, x, y)));
      const tooNear = NEARNESS_COUNTS * Math.max(0, TOO_NEAR - nearest);
      const score = Math.hypot(x - target[0], y - target[1]) - tooNear - (isNearDoor ? 10 : 0);
      if (!best || score > best.score + 1e-9) best = { eye: [x, y], score };
    }
  }
  return { eye: best?.eye ?? [atDoor, FROM_WALL], target };
}

const distanceTo = ({ x0, x1, y0, y1 }: Footprint, x: number, y: number): number =>
  Math.hypot(Math.max(x0 - x, 0, x - x1), Math.max(y0 - y, 0, y - y1));
