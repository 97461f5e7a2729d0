import type { Rect } from './types';
import type { WindowLight } from './window-light';

/** A stretch of a rectangle in fractions of its edges: u from, u to, v from, v to. */
export type Stretch = readonly [u0: number, u1: number, v0: number, v1: number];

/**
 * Where the sun through a window may fall on a rectangle: the box round the shadow-free projection of the glass, or null where it
 * misses. Bars and furniture take away from it; nothing adds to it.
 */
export function sunPatchOn(rect: Rect, axis: number, sign: number, window: WindowLight): Stretch | null {
  const { sun, corners } = window;
  if (!sun) return null;
  const along = sun.towards[axis]!;
  if (along * sign <= 1e-6) return null;
  const plane = rect.origin[axis]!;
  let [u0, u1, v0, v1] = [Infinity, -Infinity, Infinity, -Infinity];
  const uu = rect.u[0] ** 2 + rect.u[1] ** 2 + rect.u[2] ** 2;
  const vv = rect.v[0] ** 2 + rect.v[1] ** 2 + rect.v[2] ** 2;
  let reaches = false;
  for (let c = 0; c < 12; c += 3) {
    // Down the beam from the corner of the glass to the plane of the rectangle.
    const t = (corners[c + axis]! - plane) / along;
    if (t > 0) reaches = true;
    let fu = 0;
    let fv = 0;
    for (let k = 0; k < 3; k++) {
      const p = corners[c + k]! - Math.max(t, 0) * sun.towards[k]! - rect.origin[k]!;
      fu += (p * rect.u[k]!) / uu;
      fv += (p * rect.v[k]!) / vv;
    }
    u0 = Math.min(u0, fu);
    u1 = Math.max(u1, fu);
    v0 = Math.min(v0, fv);
    v1 = Math.max(v1, fv);
  }
  if (!reaches || u1 < 0 || u0 > 1 || v1 < 0 || v0 > 1) return null;
  return [Math.max(0, u0), Math.min(1, u1), Math.max(0, v0), Math.min(1, v1)];
}
