import { RAIL } from '../../model/layout/measures';
import type { Span } from '../../model/layout/types';
import type { Plan } from '../plan/types';
import type { Assembly } from './assembly';
import { BACKSPLASH_THICKNESS } from './backsplash';
import { backSide } from './base-units';
import { grained } from './pattern-coordinates';
import { boxAt, type Extent } from './side';

const THICKNESS = RAIL.thickness / 1000;

/** Along the front, and back to the wall where the row ends free beside the hood. */
export function addRail(parts: Assembly, plan: Plan, row: Span): void {
  const { bottom, depth } = plan.wallUnits;
  const piece = parts.newPiece();
  const add = (a: Extent['a'], d: Extent['d'], along: 0 | 1): void => {
    const skin = { surface: 'wall-fronts', coordinates: grained(along, piece), piece } as const;
    parts.box(skin, ...boxAt(backSide(plan), { a, d, z: [bottom - RAIL.height / 1000, bottom] }));
  };
  const rear = depth - RAIL.back / 1000;
  add([row.from, row.to], [rear, rear + THICKNESS], 0);
  if (row.to === plan.hood.from) add([row.to - THICKNESS, row.to], [BACKSPLASH_THICKNESS, rear], 1);
  if (row.from === plan.hood.to) add([row.from, row.from + THICKNESS], [BACKSPLASH_THICKNESS, rear], 1);
}
