import type { PropMesh, Rect, Vec3 } from '../engine/light/types';

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

/** Where a ray meets a prop: the triangle's vertices and the weights (0-1, sum 1) of the place between them. */
export interface PropHit {
  readonly prop: number;
  readonly distance: number;
  readonly vertices: readonly [number, number, number];
  readonly weights: readonly [number, number, number];
}

/** The nearest front of a prop's triangles that a ray meets before `farthest` (in lengths of `direction`), or null. */
export function pickProp(
  props: readonly PropMesh[],
  origin: Vec3,
  direction: Vec3,
  farthest = Number.POSITIVE_INFINITY,
): PropHit | null {
  let best: PropHit | null = null;
  let nearest = farthest;
  const [dx, dy, dz] = direction;
  props.forEach(({ positions, indices }, prop) => {
    for (let i = 0; i < indices.length; i += 3) {
      const [a, b, c] = [3 * indices[i]!, 3 * indices[i + 1]!, 3 * indices[i + 2]!];
      const [ax, ay, az] = [positions[a]!, positions[a + 1]!, positions[a + 2]!];
      const [ux, uy, uz] = [positions[b]! - ax, positions[b + 1]! - ay, positions[b + 2]! - az];
      const [vx, vy, vz] = [positions[c]! - ax, positions[c + 1]! - ay, positions[c + 2]! - az];
      // T. Moeller and B. Trumbore, Fast, minimum storage ray-triangle intersection (1997), fronts only.
      const [px, py, pz] = [dy * vz - dz * vy, dz * vx - dx * vz, dx * vy - dy * vx];
      const det = ux * px + uy * py + uz * pz;
      if (!(det > 0)) continue;
      const [tx, ty, tz] = [origin[0] - ax, origin[1] - ay, origin[2] - az];
      const u = (tx * px + ty * py + tz * pz) / det;
      if (!(u >= 0 && u <= 1)) continue;
      const [qx, qy, qz] = [ty * uz - tz * uy, tz * ux - tx * uz, tx * uy - ty * ux];
      const v = (dx * qx + dy * qy + dz * qz) / det;
      if (!(v >= 0 && u + v <= 1)) continue;
      const distance = (vx * qx + vy * qy + vz * qz) / det;
      if (!(distance > 0 && distance < nearest)) continue;
      nearest = distance;
      best = { prop, distance, vertices: [a / 3, b / 3, c / 3], weights: [1 - u - v, u, v] };
    }
  });
  return best;
}
