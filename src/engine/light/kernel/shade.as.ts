// AssemblyScript. Shadow rays from one point to four targets at a time: see trace.as.ts.
import { ABOVE, four, GROUP_BYTES, inverse, meetsBox, NODE_BYTES, SKIN_M, SLOT_BYTES } from './packet.as';

const NONE: usize = usize.MAX_VALUE;

/** Of two lanes: whether the rectangle stands before the target. */
function stands(slot: usize, t: v128, ob: v128, oc: v128, db: v128, dc: v128): v128 {
  const pb = f64x2.add(ob, f64x2.mul(db, t));
  const pc = f64x2.add(oc, f64x2.mul(dc, t));
  const along = v128.and(f64x2.ge(pb, v128.load64_splat(slot, 8)), f64x2.le(pb, v128.load64_splat(slot, 16)));
  const across = v128.and(f64x2.ge(pc, v128.load64_splat(slot, 24)), f64x2.le(pc, v128.load64_splat(slot, 32)));
  const between = v128.and(f64x2.gt(t, f64x2.splat(0)), f64x2.lt(t, f64x2.splat(1)));
  return v128.and(between, v128.and(along, across));
}

/**
 * Whether anything stands between a point and each target: four i32 a group, 0 for free. `targets`: groups of four x, four y, four z.
 * `last`: place of the slot (u32) that blocked a ray last, beyond all slots for none: the next ray is likely blocked by the same.
 */
export function shadeFan(
  nodes: usize,
  slots: usize,
  slotCount: u32,
  targets: usize,
  groups: usize,
  stack: usize,
  last: usize,
  blocked: usize,
  x: f64,
  y: f64,
  z: f64,
): void {
  const ox = f64x2.splat(x);
  const oy = f64x2.splat(y);
  const oz = f64x2.splat(z);
  const fx = f32x4.splat(<f32>x);
  const fy = f32x4.splat(<f32>y);
  const fz = f32x4.splat(<f32>z);
  const limit = f32x4.splat(<f32>ABOVE);
  let blocker = load<u32>(last);
  for (let group: usize = 0; group < groups; group++) {
    const at = targets + group * GROUP_BYTES;
    const dx0 = f64x2.sub(v128.load(at), ox);
    const dx1 = f64x2.sub(v128.load(at, 16), ox);
    const dy0 = f64x2.sub(v128.load(at, 32), oy);
    const dy1 = f64x2.sub(v128.load(at, 48), oy);
    const dz0 = f64x2.sub(v128.load(at, 64), oz);
    const dz1 = f64x2.sub(v128.load(at, 80), oz);
    const ix0 = inverse(dx0);
    const ix1 = inverse(dx1);
    const iy0 = inverse(dy0);
    const iy1 = inverse(dy1);
    const iz0 = inverse(dz0);
    const iz1 = inverse(dz1);
    const ix = four(ix0, ix1);
    const iy = four(iy0, iy1);
    const iz = four(iz0, iz1);
    let shut0 = f64x2.splat(0);
    let shut1 = f64x2.splat(0);
    let depth = stack;
    let node = nodes;
    let first = <usize>blocker;
    let end = blocker < slotCount ? first + 1 : first;
    let isDone = false;
    for (;;) {
      for (let index = first; index < end; index++) {
        const slot = slots + index * SLOT_BYTES;
        const axis = load<u32>(slot, 40);
        const plane = load<f64>(slot);
        const oa = axis === 0 ? x : axis === 1 ? y : z;
        const height = f64x2.splat(plane - oa);
        let in0: v128;
        let in1: v128;
        if (axis === 0) {
          in0 = stands(slot, f64x2.mul(height, ix0), oy, oz, dy0, dz0);
          in1 = stands(slot, f64x2.mul(height, ix1), oy, oz, dy1, dz1);
        } else if (axis === 1) {
          in0 = stands(slot, f64x2.mul(height, iy0), oz, ox, dz0, dx0);
          in1 = stands(slot, f64x2.mul(height, iy1), oz, ox, dz1, dx1);
        } else {
          in0 = stands(slot, f64x2.mul(height, iz0), ox, oy, dx0, dy0);
          in1 = stands(slot, f64x2.mul(height, iz1), ox, oy, dx1, dy1);
        }
        if (!v128.any_true(v128.or(in0, in1))) continue;
        if (load<u32>(slot, 44) === 1) {
          const sign = load<f64>(slot, 48);
          if (!((oa - plane) * sign > SKIN_M)) continue;
          const to = f64x2.splat(sign);
          const da0 = axis === 0 ? dx0 : axis === 1 ? dy0 : dz0;
          const da1 = axis === 0 ? dx1 : axis === 1 ? dy1 : dz1;
          in0 = v128.and(in0, f64x2.lt(f64x2.mul(da0, to), f64x2.splat(0)));
          in1 = v128.and(in1, f64x2.lt(f64x2.mul(da1, to), f64x2.splat(0)));
          if (!v128.any_true(v128.or(in0, in1))) continue;
        }
        shut0 = v128.or(shut0, in0);
        shut1 = v128.or(shut1, in1);
        blocker = <u32>index;
        if (i64x2.all_true(shut0) && i64x2.all_true(shut1)) {
          isDone = true;
          break;
        }
      }
      if (isDone) break;
      // Walk on to the next leaf whose box one of the rays meets.
      first = 0;
      end = 0;
      while (end === 0) {
        if (node === NONE) {
          if (depth === stack) break;
          depth -= 4;
          node = <usize>load<u32>(depth);
        }
        const open = meetsBox(node, fx, fy, fz, ix, iy, iz, limit);
        if (!v128.any_true(v128.andnot(open, i32x4.shuffle(shut0, shut1, 0, 2, 4, 6)))) {
          node = NONE;
          continue;
        }
        const count = <usize>load<u16>(node, 24);
        const link = <usize>load<u32>(node, 28);
        if (count > 0) {
          first = link;
          end = link + count;
          node = NONE;
        } else {
          store<u32>(depth, nodes + link * NODE_BYTES);
          depth += 4;
          node += NODE_BYTES;
        }
      }
      if (end === 0) break;
    }
    v128.store(blocked + group * 16, i32x4.shuffle(shut0, shut1, 0, 2, 4, 6));
  }
  store<u32>(last, blocker);
}
