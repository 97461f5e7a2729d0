import { RAIL } from '../../model/layout/measures';
import type { RunRows, Span } from '../../model/layout/types';
import { ENDS, type End, inwards, meetsOtherRow, wallLength } from '../plan/run-ends';
import type { Plan } from '../plan/types';
import type { Assembly } from './assembly';
import { BACKSPLASH_THICKNESS } from './backsplash';
import { grained } from './pattern-coordinates';
import { boxAt, type Extent, wallSide } from './side';

const THICKNESS = RAIL.thickness / 1000;
const NEAR = 1e-6;

/** Along the front, and back to the wall where the row ends free; in a corner up to the other row's rail. */
export function addRail(parts: Assembly, plan: Plan, run: RunRows, row: Span): void {
  const { bottom, depth } = plan.wallUnits;
  const side = wallSide(plan, run.wall);
  const piece = parts.newPiece();
  const add = (a: Extent['a'], d: Extent['d'], along: 0 | 1): void => {
    const skin = { surface: 'wall-fronts', coordinates: grained(along, piece), piece } as const;
    const length = along === side.along ? a[1] - a[0] : d[1] - d[0];
    parts.made.push({ kind: 'rail', surface: 'wall-fronts', length, width: RAIL.height / 1000 });
    parts.box(skin, ...boxAt(side, { a, d, z: [bottom - RAIL.height / 1000, bottom] }));
  };
  const rear = depth - RAIL.back / 1000;
  const across: 0 | 1 = side.along === 0 ? 1 : 0;
  const reach = ENDS.map((end) => {
    if (!meetsOtherRow(plan, run, row, end)) return row[end];
    const toOther = run.ends[end] === 'owns-corner' ? depth - rear : depth - rear - THICKNESS;
    return row[end] - inwards(end) * toOther;
  });
  add([reach[0]!, reach[1]!], [rear, rear + THICKNESS], side.along);
  if (endsFree(plan, run, row, 'to')) add([row.to - THICKNESS, row.to], [BACKSPLASH_THICKNESS, rear], across);
  if (endsFree(plan, run, row, 'from')) add([row.from, row.from + THICKNESS], [BACKSPLASH_THICKNESS, rear], across);
}

/** Whether a row ends where it can be seen from the side: not at a wall, at tall units, or at the row across. */
export function endsFree(plan: Plan, run: RunRows, row: Span, end: End): boolean {
  const at = row[end];
  const wall = end === 'from' ? 0 : wallLength(plan, run.wall);
  const isAtTall = run.tall.some((block) => at > block.from - NEAR && at < block.to + NEAR);
  return Math.abs(at - wall) > NEAR && !isAtTall && !meetsOtherRow(plan, run, row, end);
}
