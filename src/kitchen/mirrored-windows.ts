import type { Rect, Vec3, Viewpoint } from '../engine/light/types';
import type { SurfaceId } from '../engine/surface';
import type { MirroredWindows } from '../model/cautions';
import type { Kitchen, Wall } from '../model/kitchen';
import type { Slab } from './parts/counter-edge';
import { wallSide } from './parts/side';
import { counterSlabs } from './parts/slabs';
import { windowApertures } from './parts/window';
import { planKitchen } from './plan/plan-kitchen';
import type { Plan } from './plan/types';
import { viewpoints } from './viewpoints';

/** Points of a pane that are looked for, along each side. */
const STEPS = 6;
/** One notices what shines within so many degrees of where one looks. Our judgment. */
const NOTICED_DEG = 45;

const known = new WeakMap<Kitchen, MirroredWindows>();

/**
 * Which counters mirror which windows to somebody at one of the usual viewpoints: the eye mirrored in the plane of the top sees a pane
 * through the slab. What stands on the counter is left out. Worked out once a kitchen.
 */
export function mirroredWindows(kitchen: Kitchen): MirroredWindows {
  const before = known.get(kitchen);
  if (before) return before;
  const plan = planKitchen(kitchen);
  const panes = windowApertures(plan).map(({ rect }) => ({ wall: wallOf(plan, rect), points: pointsOf(rect) }));
  const views = viewpoints(plan);
  const found = new Map<SurfaceId, Wall[]>();
  for (const slab of counterSlabs(plan)) {
    const walls = found.get(slab.surface) ?? [];
    for (const { wall, points } of panes) {
      const isSeen = () => views.some((view) => points.some((point) => isMirrored(point, slab, view)));
      if (!walls.includes(wall) && isSeen()) walls.push(wall);
    }
    found.set(slab.surface, walls);
  }
  known.set(kitchen, found);
  return found;
}

/** Whether the light of a point reaches the eye by way of the top of a slab, near enough to where one looks. */
function isMirrored([x, y, z]: Vec3, { box: [min, max] }: Slab, { eye, target }: Viewpoint): boolean {
  const top = max[2];
  const above = z - top;
  const eyeAbove = eye[2] - top;
  if (above <= 0 || eyeAbove <= 0) return false;
  const t = eyeAbove / (eyeAbove + above);
  const at: Vec3 = [eye[0] + t * (x - eye[0]), eye[1] + t * (y - eye[1]), top];
  if (at[0] < min[0] || at[0] > max[0] || at[1] < min[1] || at[1] > max[1]) return false;
  return angleDeg(minus(at, eye), minus(target, eye)) <= NOTICED_DEG;
}

const minus = (a: Vec3, b: Vec3): Vec3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];

function angleDeg(a: Vec3, b: Vec3): number {
  const along = a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  return (Math.acos(Math.max(-1, Math.min(1, along / (Math.hypot(...a) * Math.hypot(...b))))) * 180) / Math.PI;
}

function pointsOf({ origin, u, v }: Rect): Vec3[] {
  const points: Vec3[] = [];
  for (let i = 0; i < STEPS; i++) {
    for (let j = 0; j < STEPS; j++) {
      const [s, t] = [(i + 0.5) / STEPS, (j + 0.5) / STEPS];
      points.push([origin[0] + s * u[0] + t * v[0], origin[1] + s * u[1] + t * v[1], origin[2] + s * u[2] + t * v[2]]);
    }
  }
  return points;
}

const WALLS: readonly Wall[] = ['left', 'back', 'right', 'front'];

/** The wall whose plane a pane is nearest to. */
function wallOf(plan: Plan, { origin, u, v }: Rect): Wall {
  const off = (wall: Wall): number => {
    const side = wallSide(plan, wall);
    const axis = side.along === 0 ? 1 : 0;
    return Math.abs(u[axis]) + Math.abs(v[axis]) + Math.abs(origin[axis] - side.wall);
  };
  return WALLS.reduce((best, wall) => (off(wall) < off(best) ? wall : best));
}
