import type { Span } from '../../model/layout/types';
import type { Plan } from '../plan/types';
import type { Assembly } from './assembly';
import { BACKSPLASH_THICKNESS } from './backsplash';
import { backSide } from './base-units';
import { FRONT_THICKNESS } from './front';
import { grained } from './pattern-coordinates';
import { boxAt, type Extent } from './side';

/** Strip under the wall units that hides the lamp: 18 mm thick, 30 mm high; `back` of its rear face from the fronts. */
export const RAIL = { thickness: 0.018, height: 0.03, back: FRONT_THICKNESS + 0.003 + 0.018 };

/** Along the front, and back to the wall where the row ends free beside the hood. */
export function addRail(parts: Assembly, plan: Plan, row: Span): void {
  const { bottom, depth } = plan.wallUnits;
  const piece = parts.newPiece();
  const add = (a: Extent['a'], d: Extent['d'], along: 0 | 1): void => {
    const skin = { surface: 'wall-fronts', coordinates: grained(along, piece), piece } as const;
    parts.box(skin, ...boxAt(backSide(plan), { a, d, z: [bottom - RAIL.height, bottom] }));
  };
  const rear = depth - RAIL.back;
  add([row.from, row.to], [rear, rear + RAIL.thickness], 0);
  if (row.to === plan.hood.from) add([row.to - RAIL.thickness, row.to], [BACKSPLASH_THICKNESS, rear], 1);
  if (row.from === plan.hood.to) add([row.from, row.from + RAIL.thickness], [BACKSPLASH_THICKNESS, rear], 1);
}
