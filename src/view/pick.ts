import type { Rect, Vec3 } from '../engine/light/types';

/** Where a ray meets the front of a rectangle: distance along the ray (in lengths of `direction`), place along u and v. */
export interface RectHit {
  readonly rect: number;
  readonly distance: number;
  readonly u: number;
  readonly v: number;
}

/**
 * The nearest front that a ray meets, or null. A plain loop: one ray per click or step of the camera needs no tree.
 * Backs are not seen, as in the picture.
 */
export function pickRect(
  rects: readonly Rect[],
  origin: Vec3,
  direction: Vec3,
  farthest = Number.POSITIVE_INFINITY,
): RectHit | null {
  let best: RectHit | null = null;
  let nearest = farthest;
  for (let i = 0; i < rects.length; i++) {
    const { origin: corner, u, v } = rects[i]!;
    const nx = u[1] * v[2] - u[2] * v[1];
    const ny = u[2] * v[0] - u[0] * v[2];
    const nz = u[0] * v[1] - u[1] * v[0];
    const facing = direction[0] * nx + direction[1] * ny + direction[2] * nz;
    if (facing >= 0) continue;
    const [ax, ay, az] = [corner[0] - origin[0], corner[1] - origin[1], corner[2] - origin[2]];
    const distance = (ax * nx + ay * ny + az * nz) / facing;
    if (!(distance > 0 && distance < nearest)) continue;
    const px = distance * direction[0] - ax;
    const py = distance * direction[1] - ay;
    const pz = distance * direction[2] - az;
    const alongU = (px * u[0] + py * u[1] + pz * u[2]) / (u[0] * u[0] + u[1] * u[1] + u[2] * u[2]);
    const alongV = (px * v[0] + py * v[1] + pz * v[2]) / (v[0] * v[0] + v[1] * v[1] + v[2] * v[2]);
    if (alongU < 0 || alongU > 1 || alongV < 0 || alongV > 1) continue;
    nearest = distance;
    best = { rect: i, distance, u: alongU, v: alongV };
  }
  return best;
}
