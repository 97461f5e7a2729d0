import { reverseBits, sobolSecond, unitInterval } from '../light/sobol';
import type { Vec3 } from '../light/types';
import { facetDensity, reachedOfSeen, seenByBoth, unit, visibleNormal, type Widths } from './ggx';

/** A direction the eye sees mirrored: local (z along the normal), its share of the seen facets that light reaches, 0-1. */
export interface LobeRay {
  readonly direction: Vec3;
  readonly reached: number;
  /** Cosine of the angle at which the light meets the facet. */
  readonly cosine: number;
}

/**
 * Mirrored directions for an eye in local direction `toEye` (unit, z > 0), evenly spread over the facets it sees: a mean over
 * them of F(cosine) reached is the albedo, a mean of F reached L the mirrored luminance. Directions below the surface are dropped:
 * divide by `count`. Same arguments, same rays; `count` a power of 2 spreads best.
 */
export function lobeRays(widths: Widths, toEye: Vec3, count: number, seed = 0): LobeRay[] {
  const rays: LobeRay[] = [];
  // Flipped bits keep the points even (see sobol.ts); the golden ratio and the square root of 2 give unlike patterns per seed.
  const flipP = Math.imul(seed, 0x9e3779b9);
  const flipQ = Math.imul(seed, 0x6a09e667);
  for (let i = 0; i < count; i++) {
    const p = unitInterval(reverseBits(i) ^ flipP);
    const q = unitInterval(sobolSecond(i) ^ flipQ);
    const facet = visibleNormal(widths, toEye, p, q);
    const cosine = Math.min(1, toEye[0] * facet[0] + toEye[1] * facet[1] + toEye[2] * facet[2]);
    const z = 2 * cosine * facet[2] - toEye[2];
    if (z <= 0) continue;
    const direction: Vec3 = [2 * cosine * facet[0] - toEye[0], 2 * cosine * facet[1] - toEye[1], z];
    rays.push({ direction, reached: reachedOfSeen(widths, toEye, direction), cosine });
  }
  return rays;
}

/** Half the width of the sun as slopes of facets that show it: a quarter of 0.53 degrees. */
const SLOPE_OF_SUN = 0.0023;

/**
 * A narrow beam from local direction `towards` as the lobe towards `toEye` shows it: luminance per lx on the surface where the facets
 * are perfect mirrors, sr-1, and the cosine at which it meets them; null from below. A smooth mirror shows the sun's disk.
 */
export function beamInLobe(
  widths: Widths,
  toEye: Vec3,
  towards: Vec3,
): { readonly density: number; readonly cosine: number } | null {
  if (!(towards[2] > 0)) return null;
  const wide: Widths = [Math.hypot(widths[0], SLOPE_OF_SUN), Math.hypot(widths[1], SLOPE_OF_SUN)];
  const half: Vec3 = [toEye[0] + towards[0], toEye[1] + towards[1], toEye[2] + towards[2]];
  const facets = facetDensity(wide, unit(half)) * seenByBoth(wide, toEye, towards);
  return { density: facets / (4 * toEye[2] * towards[2]), cosine: Math.hypot(...half) / 2 };
}
