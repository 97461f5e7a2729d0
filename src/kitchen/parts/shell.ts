import type { Solid } from '../../engine/light/types';
import type { Plan } from '../plan/types';
import type { Assembly } from './assembly';
import { hollow } from './cut-holes';
import { ceilingHoles } from './lamps';
import { inPlane } from './pattern-coordinates';
import { windowHole } from './window';

/** Places on the walls that are finished otherwise, as boxes that straddle the wall's plane. */
export interface WallHoles {
  readonly left: readonly Solid[];
  readonly back: readonly Solid[];
  readonly door: readonly Solid[];
}

/** Floor (boards along x, towards the window), ceiling and walls, seen from inside. */
export function addShell(parts: Assembly, plan: Plan, holes: WallHoles): void {
  const { width, depth, height } = plan;
  const wall = { surface: 'wall', coordinates: inPlane() } as const;
  parts.face({ surface: 'floor', coordinates: inPlane() }, [0, 0, 0], [width, depth, 0], 'z+');
  parts.face(
    { surface: 'ceiling', coordinates: inPlane() },
    [0, 0, height],
    [width, depth, height],
    'z-',
    ceilingHoles(plan),
  );
  parts.face(wall, [0, 0, 0], [0, depth, height], 'x+', [windowHole(plan), ...holes.left]);
  parts.face(wall, [width, 0, 0], [width, depth, height], 'x-');
  parts.face(wall, [0, 0, 0], [width, 0, height], 'y+', holes.door);
  parts.face(wall, [0, depth, 0], [width, depth, height], 'y-', holes.back);
}

/** What lies behind floor, ceiling and walls: faces of furniture that touch it are not seen. */
export function addOutside(parts: Assembly, plan: Plan): void {
  const { width, depth, height } = plan;
  const t = 0.5;
  parts.solid([-t, -t, -t], [width + t, depth + t, 0]);
  parts.solid([-t, -t, height], [width + t, depth + t, height + t]);
  parts.solid([width, -t, 0], [width + t, depth + t, height]);
  parts.solid([-t, -t, 0], [width + t, 0, height]);
  parts.solid([-t, depth, 0], [width + t, depth + t, height]);
  for (const { min, max } of hollow({ min: [-t, 0, 0], max: [0, depth, height] }, windowHole(plan))) {
    parts.solid(min, max);
  }
}
