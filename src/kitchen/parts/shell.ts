import type { Solid, Vec3 } from '../../engine/light/types';
import type { Wall } from '../../model/kitchen';
import type { Plan } from '../plan/types';
import type { Assembly } from './assembly';
import { hollowAll } from './cut-holes';
import { lampHoles } from './lamps';
import { addNextRoom, nextRoomHollows, nextRoomOutside } from './next-room';
import { openingHoles } from './opening-leaves';
import { inPlane } from './pattern-coordinates';
import { boxAt, faceAt, wallSide } from './side';

const WALLS: readonly Wall[] = ['left', 'right', 'front', 'back'];

/** Places on the walls that are finished otherwise, as boxes that straddle the wall's plane. */
type WallFields = { readonly [W in Wall]?: readonly Solid[] };

/**
 * Floor (boards along x, towards the left wall), ceiling and walls, seen from inside, less all openings and `fields`; with them
 * the next room beyond an open side, whose floor is the same field.
 */
export function addShell(parts: Assembly, plan: Plan, fields: WallFields): void {
  const { width, depth, height } = plan;
  const floor = { surface: 'floor', coordinates: inPlane(), piece: parts.newField() } as const;
  parts.face(floor, [0, 0, 0], [width, depth, 0], 'z+');
  const ceiling = { surface: 'ceiling', coordinates: inPlane(), piece: parts.newField() } as const;
  parts.face(ceiling, [0, 0, height], [width, depth, height], 'z-', lampHoles(plan));
  const holes = [...openingHoles(plan), ...nextRoomHollows(plan)];
  for (const wall of WALLS) {
    const side = wallSide(plan, wall);
    const a = [0, side.along === 0 ? width : depth] as const;
    const box = boxAt(side, { a, d: [0, 0], z: [0, height] });
    const skin = { surface: 'wall', coordinates: inPlane(), piece: parts.newField() } as const;
    parts.face(skin, ...box, faceAt(side, 'd+'), [...holes, ...(fields[wall] ?? [])]);
  }
  addNextRoom(parts, plan, floor);
}

/** What lies behind floor, ceiling and walls: faces of furniture that touch it are not seen. */
export function addOutside(parts: Assembly, plan: Plan): void {
  const { width, depth, height } = plan;
  const t = 1;
  const slabs: readonly (readonly [min: Vec3, max: Vec3])[] = [
    [
      [-t, -t, -t],
      [width + t, depth + t, 0],
    ],
    [
      [-t, -t, height],
      [width + t, depth + t, height + t],
    ],
    [
      [width, 0, 0],
      [width + t, depth, height],
    ],
    [
      [-t, 0, 0],
      [0, depth, height],
    ],
    [
      [-t, -t, 0],
      [width + t, 0, height],
    ],
    [
      [-t, depth, 0],
      [width + t, depth + t, height],
    ],
  ];
  const holes = [...openingHoles(plan), ...nextRoomHollows(plan)];
  const solids = [...slabs.map(([min, max]): Solid => ({ min, max })), ...nextRoomOutside(plan)];
  for (const solid of solids) for (const { min, max } of hollowAll(solid, holes)) parts.solid(min, max);
}
