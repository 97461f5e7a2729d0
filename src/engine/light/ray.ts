import type { RectBvh } from './rect-bvh';
import { traceNearest } from './rect-trace';
import type { Vec3 } from './types';

/** Where a ray meets a rectangle: its index, fractions 0-1 along u and v, distance in m. */
export interface RayHit {
  readonly rect: number;
  readonly u: number;
  readonly v: number;
  readonly distance: number;
}

/** The first rectangle whose front a ray meets; null when it meets nothing, or a back first. */
export function castRay(bvh: RectBvh, origin: Vec3, direction: Vec3): RayHit | null {
  const length = Math.hypot(...direction);
  if (!(length > 0)) return null;
  const d = direction.map((x) => x / length) as [number, number, number];
  const slot = traceNearest(bvh, origin[0], origin[1], origin[2], d[0], d[1], d[2], Infinity);
  if (slot < 0 || d[bvh.axis[slot] as 0 | 1 | 2] * bvh.sign[slot]! > 0) return null;
  const distance = bvh.hitDistance[0]!;
  const along = (axis: number): number => origin[axis as 0 | 1 | 2] + d[axis as 0 | 1 | 2] * distance;
  const clamp = (x: number): number => Math.min(1, Math.max(0, x));
  return {
    rect: bvh.rect[slot]!,
    u: clamp((along(bvh.uAxis[slot]!) - bvh.uStart[slot]!) * bvh.uInverse[slot]!),
    v: clamp((along(bvh.vAxis[slot]!) - bvh.vStart[slot]!) * bvh.vInverse[slot]!),
    distance,
  };
}
