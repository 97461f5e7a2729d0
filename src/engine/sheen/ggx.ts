import type { Vec3 } from '../light/types';

// The microfacet distribution of Trowbridge and Reitz (1975), called GGX by B. Walter et al., Microfacet models for refraction
// through rough surfaces (2007), stretched along one axis, with the height-correlated masking of E. Heitz, Understanding the
// masking-shadowing function in microfacet-based BRDFs (2014). Directions are local unit vectors: z along the normal.

/** Widths alpha of the facets' slopes along x and along y, 0 = smooth. Equal ones make the lobe the same on all sides. */
export type Widths = readonly [x: number, y: number];

/** Microfacets per solid angle of their normal, sr-1. Widths above 0. */
export function facetDensity([ax, ay]: Widths, [x, y, z]: Vec3): number {
  const d = (x * x * ay) / ax + (y * y * ax) / ay + ax * ay * z * z;
  return (ax * ay) / (Math.PI * d * d);
}

/** Smith's Lambda: hidden over visible area of facets towards a direction. */
function hiddenShare([ax, ay]: Widths, [x, y, z]: Vec3): number {
  return (Math.sqrt(1 + ((ax * x) ** 2 + (ay * y) ** 2) / (z * z)) - 1) / 2;
}

/** Share of the facets that both directions see (G2), 0-1. */
export const seenByBoth = (widths: Widths, a: Vec3, b: Vec3): number =>
  1 / (1 + hiddenShare(widths, a) + hiddenShare(widths, b));

/** Of the facets that the eye sees, the share that the light reaches (G2 / G1), 0-1: the weight of a sampled direction. */
export function reachedOfSeen(widths: Widths, toEye: Vec3, towards: Vec3): number {
  const eye = 1 + hiddenShare(widths, toEye);
  return eye / (eye + hiddenShare(widths, towards));
}

/**
 * Normal of one of the facets that `toEye` (unit, z > 0) sees; `p` and `q` in 0-1 spread over all of them by visible area:
 * J. Dupuy and A. Benyoub, Sampling visible GGX normals with spherical caps (2023).
 */
export function visibleNormal([ax, ay]: Widths, toEye: Vec3, p: number, q: number): Vec3 {
  const [ex, ey, ez] = unit([ax * toEye[0], ay * toEye[1], toEye[2]]);
  const z = (1 - q) * (1 + ez) - ez;
  const radius = Math.sqrt(Math.max(0, 1 - z * z));
  const turn = 2 * Math.PI * p;
  return unit([ax * (radius * Math.cos(turn) + ex), ay * (radius * Math.sin(turn) + ey), Math.max(1e-9, z + ez)]);
}

/** Density over solid angle, sr-1, with which mirrored directions of `visibleNormal` fall on `towards` (z > 0). Widths above 0. */
export function mirroredDensity(widths: Widths, toEye: Vec3, towards: Vec3): number {
  const facet = unit([toEye[0] + towards[0], toEye[1] + towards[1], toEye[2] + towards[2]]);
  return facetDensity(widths, facet) / (4 * toEye[2] * (1 + hiddenShare(widths, toEye)));
}

export function unit([x, y, z]: Vec3): Vec3 {
  const length = Math.sqrt(x * x + y * y + z * z);
  return [x / length, y / length, z / length];
}
