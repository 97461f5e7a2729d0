// AssemblyScript. Four rays that start at one point walk a hierarchy of rectangles together. Boxes are tested in f32 against bounds
// that were widened for it, rectangles in f64 by the same operations as in TypeScript: what is found is the same to the last bit.

import { ABOVE, four, GROUP_BYTES, inverse, meetsBox, NODE_BYTES, SKIN_M, SLOT_BYTES } from './packet.as';

/** Of two lanes: where the ray meets the rectangle nearer than `best`; of two at the same place the one of the lower slot. */
function meets(slot: usize, index: v128, t: v128, best: v128, hit: v128, ob: v128, oc: v128, db: v128, dc: v128): v128 {
  const pb = f64x2.add(ob, f64x2.mul(db, t));
  const pc = f64x2.add(oc, f64x2.mul(dc, t));
  const nearer = v128.or(f64x2.lt(t, best), v128.and(f64x2.eq(t, best), f64x2.lt(index, hit)));
  const along = v128.and(f64x2.ge(pb, v128.load64_splat(slot, 8)), f64x2.le(pb, v128.load64_splat(slot, 16)));
  const across = v128.and(f64x2.ge(pc, v128.load64_splat(slot, 24)), f64x2.le(pc, v128.load64_splat(slot, 32)));
  return v128.and(v128.and(f64x2.gt(t, f64x2.splat(0)), nearer), v128.and(along, across));
}

/**
 * The nearest rectangle each ray from o meets: its slot (f64, -1 for none) and distance (f64, Infinity), one after another. `rays` holds
 * groups of four local directions (four p, four q, four r), whose direction is p t + q s + r n.
 * A node: low x, y, z, high x, y, z (f32, widened), slots of a leaf or 0 with the axis of the split above (u16, u16), first slot
 * or second child (u32). A slot: plane, low b, high b, low c, high c (f64), axis (u32), one-sided (u32), sign (f64). `stack`: 512 bytes.
 */
export function traceFan(
  nodes: usize,
  slots: usize,
  rays: usize,
  groups: usize,
  stack: usize,
  hits: usize,
  distances: usize,
  x: f64,
  y: f64,
  z: f64,
  tx: f64,
  ty: f64,
  tz: f64,
  sx: f64,
  sy: f64,
  sz: f64,
  nx: f64,
  ny: f64,
  nz: f64,
): void {
  const ox = f64x2.splat(x);
  const oy = f64x2.splat(y);
  const oz = f64x2.splat(z);
  const fx = f32x4.splat(<f32>x);
  const fy = f32x4.splat(<f32>y);
  const fz = f32x4.splat(<f32>z);
  for (let group: usize = 0; group < groups; group++) {
    const at = rays + group * GROUP_BYTES;
    const p0 = v128.load(at);
    const p1 = v128.load(at, 16);
    const q0 = v128.load(at, 32);
    const q1 = v128.load(at, 48);
    const r0 = v128.load(at, 64);
    const r1 = v128.load(at, 80);
    const dx0 = f64x2.add(
      f64x2.add(f64x2.mul(f64x2.splat(tx), p0), f64x2.mul(f64x2.splat(sx), q0)),
      f64x2.mul(f64x2.splat(nx), r0),
    );
    const dx1 = f64x2.add(
      f64x2.add(f64x2.mul(f64x2.splat(tx), p1), f64x2.mul(f64x2.splat(sx), q1)),
      f64x2.mul(f64x2.splat(nx), r1),
    );
    const dy0 = f64x2.add(
      f64x2.add(f64x2.mul(f64x2.splat(ty), p0), f64x2.mul(f64x2.splat(sy), q0)),
      f64x2.mul(f64x2.splat(ny), r0),
    );
    const dy1 = f64x2.add(
      f64x2.add(f64x2.mul(f64x2.splat(ty), p1), f64x2.mul(f64x2.splat(sy), q1)),
      f64x2.mul(f64x2.splat(ny), r1),
    );
    const dz0 = f64x2.add(
      f64x2.add(f64x2.mul(f64x2.splat(tz), p0), f64x2.mul(f64x2.splat(sz), q0)),
      f64x2.mul(f64x2.splat(nz), r0),
    );
    const dz1 = f64x2.add(
      f64x2.add(f64x2.mul(f64x2.splat(tz), p1), f64x2.mul(f64x2.splat(sz), q1)),
      f64x2.mul(f64x2.splat(nz), r1),
    );
    const ix0 = inverse(dx0);
    const ix1 = inverse(dx1);
    const iy0 = inverse(dy0);
    const iy1 = inverse(dy1);
    const iz0 = inverse(dz0);
    const iz1 = inverse(dz1);
    const ix = four(ix0, ix1);
    const iy = four(iy0, iy1);
    const iz = four(iz0, iz1);
    const turned =
      (f64x2.extract_lane(dx0, 0) < 0 ? 1 : 0) |
      (f64x2.extract_lane(dy0, 0) < 0 ? 2 : 0) |
      (f64x2.extract_lane(dz0, 0) < 0 ? 4 : 0);
    let best0 = f64x2.splat(Infinity);
    let best1 = f64x2.splat(Infinity);
    let hit0 = f64x2.splat(-1);
    let hit1 = f64x2.splat(-1);
    let limit = f32x4.splat(f32.MAX_VALUE);
    let depth = stack;
    let node = nodes;
    for (;;) {
      const open = meetsBox(node, fx, fy, fz, ix, iy, iz, limit);
      if (v128.any_true(open)) {
        const count = <usize>load<u16>(node, 24);
        const link = <usize>load<u32>(node, 28);
        if (count === 0) {
          const first = node + NODE_BYTES;
          const second = nodes + link * NODE_BYTES;
          if ((turned >> load<u16>(node, 26)) & 1) {
            store<u32>(depth, first);
            node = second;
          } else {
            store<u32>(depth, second);
            node = first;
          }
          depth += 4;
          continue;
        }
        for (let index = link; index < link + count; index++) {
          const slot = slots + index * SLOT_BYTES;
          const axis = load<u32>(slot, 40);
          const oa = axis === 0 ? x : axis === 1 ? y : z;
          const height = f64x2.splat(load<f64>(slot) - oa);
          const number = f64x2.splat(<f64>index);
          let t0: v128;
          let t1: v128;
          let met0: v128;
          let met1: v128;
          if (axis === 0) {
            t0 = f64x2.mul(height, ix0);
            t1 = f64x2.mul(height, ix1);
            met0 = meets(slot, number, t0, best0, hit0, oy, oz, dy0, dz0);
            met1 = meets(slot, number, t1, best1, hit1, oy, oz, dy1, dz1);
          } else if (axis === 1) {
            t0 = f64x2.mul(height, iy0);
            t1 = f64x2.mul(height, iy1);
            met0 = meets(slot, number, t0, best0, hit0, oz, ox, dz0, dx0);
            met1 = meets(slot, number, t1, best1, hit1, oz, ox, dz1, dx1);
          } else {
            t0 = f64x2.mul(height, iz0);
            t1 = f64x2.mul(height, iz1);
            met0 = meets(slot, number, t0, best0, hit0, ox, oy, dx0, dy0);
            met1 = meets(slot, number, t1, best1, hit1, ox, oy, dx1, dy1);
          }
          if (!v128.any_true(v128.or(met0, met1))) continue;
          if (load<u32>(slot, 44) === 1) {
            const sign = load<f64>(slot, 48);
            if (!((oa - load<f64>(slot)) * sign > SKIN_M)) continue;
            const to = f64x2.splat(sign);
            const da0 = axis === 0 ? dx0 : axis === 1 ? dy0 : dz0;
            const da1 = axis === 0 ? dx1 : axis === 1 ? dy1 : dz1;
            met0 = v128.and(met0, f64x2.lt(f64x2.mul(da0, to), f64x2.splat(0)));
            met1 = v128.and(met1, f64x2.lt(f64x2.mul(da1, to), f64x2.splat(0)));
          }
          best0 = v128.bitselect(t0, best0, met0);
          best1 = v128.bitselect(t1, best1, met1);
          hit0 = v128.bitselect(number, hit0, met0);
          hit1 = v128.bitselect(number, hit1, met1);
          const above = f64x2.splat(ABOVE);
          limit = four(f64x2.mul(best0, above), f64x2.mul(best1, above));
        }
      }
      if (depth === stack) break;
      depth -= 4;
      node = <usize>load<u32>(depth);
    }
    v128.store(hits + group * 32, hit0);
    v128.store(hits + group * 32, hit1, 16);
    v128.store(distances + group * 32, best0);
    v128.store(distances + group * 32, best1, 16);
  }
}
