import type { RunRows, Span } from '../../model/layout/types';
import type { Plan } from './types';

export type End = 'from' | 'to';

export const ENDS: readonly End[] = ['from', 'to'];

/** From an end of a run to its middle, along its wall. */
export const inwards = (end: End): 1 | -1 => (end === 'from' ? 1 : -1);

/** Length of the wall a run stands at, m. */
export const wallLength = (plan: Plan, wall: 'left' | 'back' | 'right' | 'front'): number =>
  wall === 'left' || wall === 'right' ? plan.depth : plan.width;

/**
 * Where the plane of the fronts of whatever stands across this end of a run cuts its wall: of the run on the next wall, or of
 * the working side of a peninsula. For ends in a corner only, along the run, m.
 */
function frontsAcross(plan: Plan, run: RunRows, end: End): number {
  const { island } = plan;
  const isAtDoorWall = run.wall !== 'back' && end === 'from';
  if (isAtDoorWall && island) return island.body.y1;
  const wall = end === 'from' ? 0 : wallLength(plan, run.wall);
  return wall + inwards(end) * plan.baseDepth;
}

/** A plane `behind` m behind the fronts that stand across this end of a run. */
export const behindFrontsAcross = (plan: Plan, run: RunRows, end: End, behind: number): number =>
  frontsAcross(plan, run, end) - inwards(end) * behind;

/** What stands under a run's counter, prolonged to `behind` m behind the fronts of what it meets in a corner. */
export function baseReach(plan: Plan, run: RunRows, behind: number): readonly [number, number] {
  const [from, to] = ENDS.map((end) =>
    run.ends[end] === 'meets' ? behindFrontsAcross(plan, run, end, behind) : run.base[end],
  );
  return [from!, to!];
}

/** The run that stands across this end of a run, in a corner of the room. */
export function neighbor(plan: Plan, run: RunRows, end: End): RunRows | undefined {
  const wall = run.wall === 'back' ? (end === 'from' ? 'left' : 'right') : end === 'to' ? 'back' : null;
  const isCorner = run.ends[end] === 'meets' || run.ends[end] === 'owns-corner';
  return isCorner ? plan.runs.find((other) => other.wall === wall) : undefined;
}

const NEAR = 1e-6;

/** Whether a row of wall units ends in a corner where a row on the next wall ends, too. */
export function meetsOtherRow(plan: Plan, run: RunRows, row: Span, end: End): boolean {
  const { depth } = plan.wallUnits;
  const wall = end === 'from' ? 0 : wallLength(plan, run.wall);
  const other = neighbor(plan, run, end);
  if (!other || Math.abs(row[end] - wall - inwards(end) * depth) > NEAR) return false;
  const here = run.wall === 'back' ? plan.depth : run.wall === 'left' ? 0 : plan.width;
  return other.over.some(({ from, to }) => [from, to].some((at) => Math.abs(Math.abs(at - here) - depth) < NEAR));
}

/**
 * A row of wall units, in a corner prolonged: to the wall where its run owns the corner, else to `behind` m behind the fronts of
 * the row across.
 */
export function overReach(plan: Plan, run: RunRows, row: Span, behind: number): readonly [number, number] {
  const [from, to] = ENDS.map((end) => {
    if (!meetsOtherRow(plan, run, row, end)) return row[end];
    return row[end] - inwards(end) * (run.ends[end] === 'owns-corner' ? plan.wallUnits.depth : behind);
  });
  return [from!, to!];
}
