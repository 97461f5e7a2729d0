import { chromaOf, hueDegOf } from '../color/lab';
import type { Lab } from '../color/types';

/**
 * Relative warmth of one surface along three published warm-cool axes of CIELAB; above 0 is warmer than a neutral.
 * Where the three differ in sign (greens near 140 degrees, purples near 325) a colour is neither warm nor cool.
 */
export interface Warmth {
  /** Axis at 50 degrees: Ou, Luo, Woodcock and Wright 2004. */
  readonly w50: number;
  /** Axis at 44.4 degrees: Chang and Ou 2026, known to us second-hand; mapped to a*, b* near the neutral axis. */
  readonly w44: number;
  /** Axis at 32 degrees: Ou et al. 2018. */
  readonly w32: number;
}

const RADIANS = Math.PI / 180;
const axis = (deg: number) => [Math.cos(deg * RADIANS), Math.sin(deg * RADIANS)] as const;
const AXIS_50 = axis(50);
const AXIS_44 = axis(44.4);
const AXIS_32 = axis(32);

/** Relative warmth: the published warm-cool terms without intercept and exponent, so that it averages and subtracts. */
export function warmth(lab: Lab<'D65-2'>): Warmth {
  const along = ([cos, sin]: readonly [number, number]) => lab.a * cos + lab.b * sin;
  return { w50: along(AXIS_50), w44: along(AXIS_44), w32: along(AXIS_32) };
}

/** Warm-cool score of Ou et al. 2018; above 0 is warm. Near-neutrals all come out below 0. */
export function warmCool2018(lab: Lab<'D65-2'>): number {
  const h = hueDegOf(lab);
  const harmonic = Math.cos((h - 50) * RADIANS) + 0.16 * Math.cos((2 * h - 350) * RADIANS);
  return -0.89 + 0.052 * chromaOf(lab) * harmonic;
}

/** Warm-cool score of Ou, Luo, Woodcock and Wright 2004, part I; above 0 is warm. Near-neutrals come out below 0. */
export function warmCool2004(lab: Lab<'D65-2'>): number {
  return -0.5 + 0.02 * chromaOf(lab) ** 1.07 * Math.cos((hueDegOf(lab) - 50) * RADIANS);
}
