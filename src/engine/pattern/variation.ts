import { mulberry32 } from '../random';
import type { Variation } from './types';

/**
 * Spread between pieces as one standard deviation in CIEDE2000 units, per aesthetic class of ANSI A137.1.
 * The classes are words in the standard; the numbers are this project's choice.
 */
export const VARIATION_SIGMA_DE00: { readonly [V in Variation]: number } = { V0: 0.2, V1: 0.5, V2: 1, V3: 2.5, V4: 5 };

/**
 * Relative change of luminance that makes one CIEDE2000 unit. From L* = 116 Y^(1/3) - 16 follows
 * dL* = (L* + 16) / 3 dlnY; divided by the lightness weight S_L of CIEDE2000 it is 22.0, 22.2, 22.1 units per dlnY at
 * L* 50, 70, 90. So 0.045 holds within 2 % from L* 50 to 95; at L* 37 the same gain makes two thirds of it.
 */
export const GAIN_PER_DE00 = 0.045;

/** Standard deviation of the lightness gain between pieces of a variation class. */
export function gainSigma(variation: Variation): number {
  return VARIATION_SIGMA_DE00[variation] * GAIN_PER_DE00;
}

/**
 * `count` values of mean 0 and standard deviation 1, normally spread (the middle of each of `count` equal parts of
 * the normal distribution), in seeded order: the spread is right even for a few pieces.
 */
export function spreadOverPieces(count: number, seed: number): Float64Array {
  const z = new Float64Array(count);
  if (count < 2) return z;
  let sum2 = 0;
  for (let i = 0; i < count; i++) {
    z[i] = normalQuantile((i + 0.5) / count);
    sum2 += z[i]! * z[i]!;
  }
  const scale = 1 / Math.sqrt(sum2 / count);
  const random = mulberry32(seed);
  for (let i = 0; i < count; i++) z[i]! *= scale;
  for (let i = count - 1; i > 0; i--) {
    const j = Math.floor(random() * (i + 1));
    const held = z[i]!;
    z[i] = z[j]!;
    z[j] = held;
  }
  return z;
}

/** Inverse of the normal distribution, Abramowitz and Stegun 26.2.23 (absolute error below 4.5e-4). */
function normalQuantile(p: number): number {
  const q = Math.min(p, 1 - p);
  const t = Math.sqrt(-2 * Math.log(q));
  const x =
    t - (2.515517 + 0.802853 * t + 0.010328 * t * t) / (1 + 1.432788 * t + 0.189269 * t * t + 0.001308 * t * t * t);
  return p < 0.5 ? -x : x;
}
