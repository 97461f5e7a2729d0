import type { Rect, Vec3 } from '../engine/light/types';

/** Unit vector out of the front of a rectangle (along u x v). */
export function rectNormal(rect: Rect): Vec3 {
  const { u, v } = rect;
  const x = u[1] * v[2] - u[2] * v[1];
  const y = u[2] * v[0] - u[0] * v[2];
  const z = u[0] * v[1] - u[1] * v[0];
  const length = Math.hypot(x, y, z);
  return [x / length, y / length, z / length];
}
