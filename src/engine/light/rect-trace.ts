import { type RectBvh, SKIN_M } from './rect-bvh';

const stack = new Int32Array(128);
const NEARLY_ZERO = 1e-12;

/** Whether a ray from `o` along `d` (components along the face's axis) comes at a one-sided face from outside. */
const enters = (sign: number, plane: number, o: number, d: number): boolean =>
  d * sign < 0 && (o - plane) * sign > SKIN_M;

const inverse = (d: number): number => 1 / (d > NEARLY_ZERO || d < -NEARLY_ZERO ? d : NEARLY_ZERO);

/**
 * Slot of the nearest rectangle a ray meets, from either side, nearer than `limit` (in lengths of the direction);
 * of several at the same place the lowest slot, -1 for none. The distance is left in `bvh.hitDistance[0]`.
 */
export function traceNearest(
  bvh: RectBvh,
  ox: number,
  oy: number,
  oz: number,
  dx: number,
  dy: number,
  dz: number,
  limit: number,
): number {
  const { bounds, leafCount, link, splitAxis, axis, plane, extent, oneSided, sign } = bvh;
  const ix = inverse(dx);
  const iy = inverse(dy);
  const iz = inverse(dz);
  const sx = ix < 0 ? 3 : 0;
  const sy = iy < 0 ? 3 : 0;
  const sz = iz < 0 ? 3 : 0;
  let best = limit;
  let hit = -1;
  let depth = 0;
  let node = 0;
  for (;;) {
    const at = 6 * node;
    const x0 = (bounds[at + sx]! - ox) * ix;
    const x1 = (bounds[at + 3 - sx]! - ox) * ix;
    const y0 = (bounds[at + 1 + sy]! - oy) * iy;
    const y1 = (bounds[at + 4 - sy]! - oy) * iy;
    const z0 = (bounds[at + 2 + sz]! - oz) * iz;
    const z1 = (bounds[at + 5 - sz]! - oz) * iz;
    let near = Math.max(x0, y0);
    if (z0 > near) near = z0;
    let far = Math.min(x1, y1);
    if (z1 < far) far = z1;
    if (near <= far && far > 0 && near <= best) {
      const count = leafCount[node]!;
      if (count === 0) {
        const split = splitAxis[node]!;
        const reversed = split === 0 ? sx : split === 1 ? sy : sz;
        if (reversed) {
          stack[depth++] = node + 1;
          node = link[node]!;
        } else {
          stack[depth++] = link[node]!;
          node = node + 1;
        }
        continue;
      }
      const first = link[node]!;
      for (let slot = first; slot < first + count; slot++) {
        const a = axis[slot]!;
        let t: number;
        let pb: number;
        let pc: number;
        if (a === 0) {
          t = (plane[slot]! - ox) * ix;
          pb = oy + dy * t;
          pc = oz + dz * t;
        } else if (a === 1) {
          t = (plane[slot]! - oy) * iy;
          pb = oz + dz * t;
          pc = ox + dx * t;
        } else {
          t = (plane[slot]! - oz) * iz;
          pb = ox + dx * t;
          pc = oy + dy * t;
        }
        if (t <= 0 || t > best || (t === best && slot >= hit)) continue;
        const e = 4 * slot;
        if (pb >= extent[e]! && pb <= extent[e + 1]! && pc >= extent[e + 2]! && pc <= extent[e + 3]!) {
          if (oneSided[slot] === 1) {
            const o = a === 0 ? ox : a === 1 ? oy : oz;
            if (!enters(sign[slot]!, plane[slot]!, o, a === 0 ? dx : a === 1 ? dy : dz)) continue;
          }
          best = t;
          hit = slot;
        }
      }
    }
    if (depth === 0) break;
    node = stack[--depth]!;
  }
  bvh.hitDistance[0] = best;
  return hit;
}

/** Shadow rays cast against these rectangles so far: a measure of work done. */
export const shadowRayCount = (bvh: RectBvh): number => bvh.lastBlocker[1]!;

/** Counts shadow rays that were cast elsewhere. */
export function countShadowRays(bvh: RectBvh, count: number): void {
  bvh.lastBlocker[1]! += count;
}

/** Whether anything, from either side, stands between the origin and `limit` lengths of the direction. */
export function isBlocked(
  bvh: RectBvh,
  ox: number,
  oy: number,
  oz: number,
  dx: number,
  dy: number,
  dz: number,
  limit: number,
): boolean {
  const { bounds, leafCount, link, axis, plane, extent, lastBlocker, oneSided, sign } = bvh;
  const ix = inverse(dx);
  const iy = inverse(dy);
  const iz = inverse(dz);
  const sx = ix < 0 ? 3 : 0;
  const sy = iy < 0 ? 3 : 0;
  const sz = iz < 0 ? 3 : 0;
  lastBlocker[1]!++;
  let depth = 0;
  let node = 0;
  let first = lastBlocker[0]!;
  let count = first < 0 ? 0 : 1;
  for (;;) {
    for (let slot = first; slot < first + count; slot++) {
      const a = axis[slot]!;
      let t: number;
      let pb: number;
      let pc: number;
      if (a === 0) {
        t = (plane[slot]! - ox) * ix;
        pb = oy + dy * t;
        pc = oz + dz * t;
      } else if (a === 1) {
        t = (plane[slot]! - oy) * iy;
        pb = oz + dz * t;
        pc = ox + dx * t;
      } else {
        t = (plane[slot]! - oz) * iz;
        pb = ox + dx * t;
        pc = oy + dy * t;
      }
      if (t <= 0 || t >= limit) continue;
      const e = 4 * slot;
      if (pb >= extent[e]! && pb <= extent[e + 1]! && pc >= extent[e + 2]! && pc <= extent[e + 3]!) {
        if (oneSided[slot] === 1) {
          const o = a === 0 ? ox : a === 1 ? oy : oz;
          if (!enters(sign[slot]!, plane[slot]!, o, a === 0 ? dx : a === 1 ? dy : dz)) continue;
        }
        lastBlocker[0] = slot;
        return true;
      }
    }
    // Walk on to the next leaf whose box the ray meets.
    for (;;) {
      if (node < 0) {
        if (depth === 0) return false;
        node = stack[--depth]!;
      }
      const at = 6 * node;
      const x0 = (bounds[at + sx]! - ox) * ix;
      const x1 = (bounds[at + 3 - sx]! - ox) * ix;
      const y0 = (bounds[at + 1 + sy]! - oy) * iy;
      const y1 = (bounds[at + 4 - sy]! - oy) * iy;
      const z0 = (bounds[at + 2 + sz]! - oz) * iz;
      const z1 = (bounds[at + 5 - sz]! - oz) * iz;
      let near = Math.max(x0, y0);
      if (z0 > near) near = z0;
      let far = Math.min(x1, y1);
      if (z1 < far) far = z1;
      if (near > far || far <= 0 || near >= limit) {
        node = -1;
        continue;
      }
      count = leafCount[node]!;
      first = link[node]!;
      if (count > 0) {
        node = -1;
        break;
      }
      stack[depth++] = first;
      node = node + 1;
    }
  }
}
