import type { Vec3 } from '../../engine/light/types';
import type { SurfaceId } from '../../engine/surface';
import type { Plan } from '../plan/types';
import type { Assembly } from './assembly';
import { backSide, leftSide } from './base-units';
import { unfolded } from './pattern-coordinates';
import { boxAt } from './side';
import { bowlBox } from './sink';

type Box = readonly [min: Vec3, max: Vec3];

/** The counter slab of the back wall: from the left wall to the tall units, corner included. */
const backSlab = (plan: Plan): Box =>
  boxAt(backSide(plan), {
    a: [0, plan.back.to],
    d: [0, plan.counter.depth],
    z: [plan.counter.bottom, plan.counter.top],
  });

/** The slab of the short leg: butts against the other at the corner, overhangs its end panel. */
const leftSlab = (plan: Plan): Box =>
  boxAt(leftSide, {
    a: [plan.left.end - plan.counter.overhang, plan.depth - plan.counter.depth],
    d: [0, plan.counter.depth],
    z: [plan.counter.bottom, plan.counter.top],
  });

export function islandSlab(plan: Plan): Box {
  const { x0, x1, y0, y1 } = plan.island.counter;
  return [
    [x0, y0, plan.counter.bottom],
    [x1, y1, plan.counter.top],
  ];
}

/** All three slabs, each with its pattern along its length. */
export function addCounters(parts: Assembly, plan: Plan): void {
  addSlab(parts, plan, backSlab(plan), 0, 'counter');
  addSlab(parts, plan, leftSlab(plan), 1, 'counter');
  addSlab(parts, plan, islandSlab(plan), 0, 'island-counter');
}

function addSlab(parts: Assembly, plan: Plan, [min, max]: Box, length: 0 | 1, surface: SurfaceId): void {
  const skin = { surface, coordinates: unfolded(min, max, length), piece: parts.newPiece() };
  parts.hollowBox(skin, min, max, bowlBox(plan));
}
