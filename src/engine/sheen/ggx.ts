import type { Vec3 } from '../light/types';

// The microfacet distribution of Trowbridge and Reitz (1975), called GGX by B. Walter et al., Microfacet models for refraction
// through rough surfaces (2007), with the height-correlated masking of E. Heitz, Understanding the masking-shadowing function
// (2014). `alpha` is the width of the slopes, 0 = smooth. Directions are local: z along the normal.

/** Microfacets per solid angle of their normal, sr-1; `cosine` between that and the surface's normal. Alpha above 0. */
export function facetDensity(alpha: number, cosine: number): number {
  const a2 = alpha * alpha;
  // 1 - (1 - a2) cos^2 without the cancellation near the normal.
  const d = (1 - cosine) * (1 + cosine) + a2 * cosine * cosine;
  return a2 / (Math.PI * d * d);
}

/** Smith's Lambda: hidden over visible area of facets towards a direction of that cosine. */
function hiddenShare(alpha: number, cosine: number): number {
  const tan2 = (1 - cosine * cosine) / (cosine * cosine);
  return (Math.sqrt(1 + alpha * alpha * tan2) - 1) / 2;
}

/** Share of the facets that both directions see (G2), 0-1. */
export const seenByBoth = (alpha: number, cosineA: number, cosineB: number): number =>
  1 / (1 + hiddenShare(alpha, cosineA) + hiddenShare(alpha, cosineB));

/** Of the facets that the eye sees, the share that the light reaches (G2 / G1), 0-1: the weight of a sampled direction. */
export function reachedOfSeen(alpha: number, cosineEye: number, cosineLight: number): number {
  const eye = 1 + hiddenShare(alpha, cosineEye);
  return eye / (eye + hiddenShare(alpha, cosineLight));
}

/**
 * Normal of one of the facets that `toEye` (unit, z > 0) sees; `p` and `q` in 0-1 spread over all of them by visible area:
 * J. Dupuy and A. Benyoub, Sampling visible GGX normals with spherical caps (2023).
 */
export function visibleNormal(alpha: number, toEye: Vec3, p: number, q: number): Vec3 {
  const [ex, ey, ez] = unit([alpha * toEye[0], alpha * toEye[1], toEye[2]]);
  const z = (1 - q) * (1 + ez) - ez;
  const radius = Math.sqrt(Math.max(0, 1 - z * z));
  const turn = 2 * Math.PI * p;
  return unit([alpha * (radius * Math.cos(turn) + ex), alpha * (radius * Math.sin(turn) + ey), Math.max(1e-9, z + ez)]);
}

/** Density over solid angle, sr-1, with which mirrored directions of `visibleNormal` fall on `towards` (z > 0). Alpha above 0. */
export function mirroredDensity(alpha: number, toEye: Vec3, towards: Vec3): number {
  const half = [toEye[0] + towards[0], toEye[1] + towards[1], toEye[2] + towards[2]] as const;
  const facets = facetDensity(alpha, half[2] / Math.hypot(...half));
  return facets / (4 * toEye[2] * (1 + hiddenShare(alpha, toEye[2])));
}

function unit([x, y, z]: Vec3): Vec3 {
  const length = Math.sqrt(x * x + y * y + z * z);
  return [x / length, y / length, z / length];
}
