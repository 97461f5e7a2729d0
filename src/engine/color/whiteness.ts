import { chromaticityFromXyz } from './chromaticity';
import type { Lab, White, Xyz } from './types';
import { D65_2 } from './whites';

/**
 * CIE whiteness W (CIE 15:2018, 9.4): perfect diffuser 100. Meaningful only where `cieWhitenessHolds` says so.
 * `white` may be another printed D65 white, for comparison with a worked example.
 */
export function cieWhiteness(xyz: Xyz<'D65-2'>, white: Xyz<'D65-2'> = D65_2): number {
  const sample = chromaticityFromXyz(xyz);
  const neutral = chromaticityFromXyz(white);
  return xyz.y + 800 * (neutral.x - sample.x) + 1700 * (neutral.y - sample.y);
}

/** CIE tint T for the 2 degree observer: above 0 greenish, below 0 reddish. Same limits as `cieWhiteness`. */
export function cieTint(xyz: Xyz<'D65-2'>, white: Xyz<'D65-2'> = D65_2): number {
  const sample = chromaticityFromXyz(xyz);
  const neutral = chromaticityFromXyz(white);
  return 1000 * (neutral.x - sample.x) - 650 * (neutral.y - sample.y);
}

/** Whether whiteness and tint may be used for a sample: 40 < W < 5 Y - 280 and -4 < T < 2 (CIE 15:2018, 9.4). */
export function cieWhitenessHolds(xyz: Xyz<'D65-2'>, white: Xyz<'D65-2'> = D65_2): boolean {
  const w = cieWhiteness(xyz, white);
  const t = cieTint(xyz, white);
  return w > 40 && w < 5 * xyz.y - 280 && t > -4 && t < 2;
}

/** Coefficients Cx, Cz of ASTM E313-20, table 1. */
const E313 = {
  'C-2': [1.2769, 1.0592],
  'D65-2': [1.2985, 1.1335],
  'D65-10': [1.3013, 1.1498],
} as const;

/**
 * ASTM E313 yellowness index. For whites and yellows (Munsell hues 2.5GY to 2.5Y); says nothing of a pink or a green.
 * `conditions` names the white the tristimulus values were computed under.
 */
export function yellownessE313<W extends keyof typeof E313 = 'D65-2'>(
  xyz: Xyz<W>,
  conditions: W = 'D65-2' as W,
): number {
  const [cx, cz] = E313[conditions];
  return (100 * (cx * xyz.x - cz * xyz.z)) / xyz.y;
}

/** Stensby whiteness (Soap and Chemical Specialties, 1968): calls a pinkish white whiter. No published limits. */
export const stensby = (lab: Lab<White>): number => lab.l - 3 * lab.b + 3 * lab.a;

/**
 * Whiteness index for dentistry, WID (Perez et al. 2016, Dental Materials 32, 461; coefficients from memory).
 * Works at every lightness; differences of 0.72 are just seen, 2.60 just accepted.
 */
export const wid = (lab: Lab<'D65-2'>): number => 0.511 * lab.l - 2.324 * lab.a - 1.1 * lab.b;
