import { rectNormal } from './rect-bvh';
import type { Rect } from './types';

const SAME_PLANE_M = 1e-6;

/**
 * The rectangles that can stand between a point of the room and the face of a lamp or window. Outer walls, floor and ceiling cannot: a
 * rectangle with nothing behind its plane blocks no line between points in front of it.
 */
export function blockersOf(rects: readonly Rect[], faces: readonly Rect[]): Rect[] {
  const low = [Infinity, Infinity, Infinity];
  const high = [-Infinity, -Infinity, -Infinity];
  for (const { origin, u, v } of [...rects, ...faces]) {
    for (let k = 0; k < 3; k++) {
      const far = origin[k]! + u[k]! + v[k]!;
      low[k] = Math.min(low[k]!, origin[k]!, far);
      high[k] = Math.max(high[k]!, origin[k]!, far);
    }
  }
  return rects.filter((rect) => {
    const { axis, sign } = rectNormal(rect);
    const plane = rect.origin[axis];
    return sign > 0 ? low[axis]! < plane - SAME_PLANE_M : high[axis]! > plane + SAME_PLANE_M;
  });
}
