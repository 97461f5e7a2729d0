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
