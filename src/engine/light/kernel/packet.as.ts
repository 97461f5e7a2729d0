// AssemblyScript. What packets of four rays have in common.

const NEARLY_ZERO: f64 = 1e-12;
/** Of rect-bvh.ts. */
export const SKIN_M: f64 = 0.002;
export const NODE_BYTES: usize = 32;
export const SLOT_BYTES: usize = 64;
export const GROUP_BYTES: usize = 96;
/** What a distance grows by before it is rounded to f32 and must not be less than it was. */
export const ABOVE: f64 = 1.000001;

/** 1 / d, of what is not nearly zero. */
export function inverse(d: v128): v128 {
  const eps = f64x2.splat(NEARLY_ZERO);
  return f64x2.div(f64x2.splat(1), v128.bitselect(d, eps, f64x2.gt(f64x2.abs(d), eps)));
}

/** Two vectors of two f64 as one of four f32. */
export function four(a: v128, b: v128): v128 {
  return i32x4.shuffle(f32x4.demote_f64x2_zero(a), f32x4.demote_f64x2_zero(b), 0, 1, 4, 5);
}

/** Of four rays from f with inverse directions i: which meet a node's box before them and not beyond `limit`. */
export function meetsBox(node: usize, fx: v128, fy: v128, fz: v128, ix: v128, iy: v128, iz: v128, limit: v128): v128 {
  const x0 = f32x4.mul(f32x4.sub(v128.load32_splat(node), fx), ix);
  const y0 = f32x4.mul(f32x4.sub(v128.load32_splat(node, 4), fy), iy);
  const z0 = f32x4.mul(f32x4.sub(v128.load32_splat(node, 8), fz), iz);
  const x1 = f32x4.mul(f32x4.sub(v128.load32_splat(node, 12), fx), ix);
  const y1 = f32x4.mul(f32x4.sub(v128.load32_splat(node, 16), fy), iy);
  const z1 = f32x4.mul(f32x4.sub(v128.load32_splat(node, 20), fz), iz);
  const near = f32x4.pmax(f32x4.pmax(f32x4.pmin(x0, x1), f32x4.pmin(y0, y1)), f32x4.pmin(z0, z1));
  const far = f32x4.pmin(f32x4.pmin(f32x4.pmax(x0, x1), f32x4.pmax(y0, y1)), f32x4.pmax(z0, z1));
  return v128.and(v128.and(f32x4.le(near, far), f32x4.gt(far, f32x4.splat(0))), f32x4.le(near, limit));
}
