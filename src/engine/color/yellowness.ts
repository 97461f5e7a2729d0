import type { Xyz } from './types';

/** White and observer that the yellowness index has coefficients for. */
export type YellownessBasis = keyof typeof COEFFICIENTS;

/** Cx, Cz of ASTM E313-20, table 1. A perfect diffuser gets 0 by them. */
const COEFFICIENTS = {
  'C-2': [1.2769, 1.0592],
  'C-10': [1.2871, 1.0781],
  'D65-2': [1.2985, 1.1335],
  'D65-10': [1.3013, 1.1498],
} as const;

/**
 * Yellowness index of ASTM E313-20; bluish whites are below 0. Compares samples of one material within `yellownessHolds`.
 * `basis` names white and observer of `xyz`; null for black, which has none.
 */
export function yellownessE313<W extends YellownessBasis>(xyz: Xyz<W>, basis: W): number | null {
  const [cx, cz] = COEFFICIENTS[basis];
  return xyz.y > 0 ? (100 * (cx * xyz.x - cz * xyz.z)) / xyz.y : null;
}
