import type { Stretch } from './sun-patch';
import type { Rect, Solid } from './types';

/** A box this near before a rectangle darkens it where it stands, m; its shadow reaches about as far to the sides. */
const NEAR_M = 0.12;
const BESIDE_M = 0.06;

/** Where a box that stands on a rectangle, or close before it, darkens it by contact; null where it does not. */
export function contactPatchOn(rect: Rect, axis: number, sign: number, { min, max }: Solid): Stretch | null {
  const plane = rect.origin[axis]!;
  const gap = sign > 0 ? min[axis]! - plane : plane - max[axis]!;
  const depth = max[axis]! - min[axis]!;
  // A box may be sunk in what it stands on.
  if (gap > NEAR_M || gap < -depth) return null;
  const [u0, u1] = shares(rect.origin, rect.u, min, max);
  const [v0, v1] = shares(rect.origin, rect.v, min, max);
  if (u1 < 0 || u0 > 1 || v1 < 0 || v0 > 1) return null;
  return [Math.max(0, u0), Math.min(1, u1), Math.max(0, v0), Math.min(1, v1)];
}

/** The box and what lies beside it as shares of an axis-parallel edge. */
function shares(
  origin: Rect['origin'],
  edge: Rect['u'],
  min: Solid['min'],
  max: Solid['max'],
): [from: number, to: number] {
  const axis = edge.findIndex((x) => Math.abs(x) === Math.max(...edge.map(Math.abs))) as 0 | 1 | 2;
  const a = (min[axis] - BESIDE_M - origin[axis]) / edge[axis];
  const b = (max[axis] + BESIDE_M - origin[axis]) / edge[axis];
  return [Math.min(a, b), Math.max(a, b)];
}
