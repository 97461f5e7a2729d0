import { chromaticityFromXyz } from './chromaticity';
import type { Xyz } from './types';
import { C_2, C_10, D50_2, D50_10, D65_2, D65_10 } from './whites';

/** White and observer that whiteness is defined for: CIE 15 has D65, ASTM E313 adds C and D50. */
export type WhitenessBasis = 'D65-2' | 'D65-10' | 'C-2' | 'C-10' | 'D50-2' | 'D50-10';

/** Why whiteness and tint say nothing of a sample. */
export type WhitenessLimit = 'w-below-40' | 'w-above-5y-280' | 'too-green' | 'too-red';

export interface CieWhiteness {
  /** Whiteness W: perfect diffuser 100, bluish whites above. */
  readonly w: number;
  /** Tint T: above 0 greenish, below 0 reddish. */
  readonly tint: number;
  /** Whether the two may be used; if not, `why` has the limits that are passed. */
  readonly holds: boolean;
  readonly why: readonly WhitenessLimit[];
}

const WHITES: { readonly [W in WhitenessBasis]: Xyz<W> } = {
  'D65-2': D65_2,
  'D65-10': D65_10,
  'C-2': C_2,
  'C-10': C_10,
  'D50-2': D50_2,
  'D50-10': D50_10,
};

/**
 * CIE whiteness and tint (CIE 15:2018, 9.4; ASTM E313-20), with the limits within which they compare whites. `xyz` with Y = 100
 * for the perfect diffuser, under the white and for the observer `basis` names; null for black, which has no chromaticity, and for what is no number.
 * The limits are those CIE 15 gives for D65; under C and D50, for which E313 has the same coefficients (from memory), taking
 * them over is our judgment. `white` may be another printed white of the basis, for comparison with a worked example.
 */
export function cieWhiteness<W extends WhitenessBasis>(
  xyz: Xyz<W>,
  basis: W,
  white: Xyz<W> = WHITES[basis] as Xyz<W>,
): CieWhiteness | null {
  if (!(xyz.y > 0)) return null;
  const sample = chromaticityFromXyz(xyz);
  const neutral = chromaticityFromXyz(white);
  const toBlue = neutral.x - sample.x;
  const toPurple = neutral.y - sample.y;
  const w = xyz.y + 800 * toBlue + 1700 * toPurple;
  const tint = (basis.endsWith('-10') ? 900 : 1000) * toBlue - 650 * toPurple;
  if (!Number.isFinite(w + tint)) return null;
  const limits: readonly [WhitenessLimit, boolean][] = [
    ['w-below-40', w <= 40],
    ['w-above-5y-280', w >= 5 * xyz.y - 280],
    ['too-green', tint >= 2],
    ['too-red', tint <= -4],
  ];
  const why = limits.filter(([, isPassed]) => isPassed).map(([limit]) => limit);
  return { w, tint, holds: why.length === 0, why };
}
