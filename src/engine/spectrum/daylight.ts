import { S0, S1, S2 } from './daylight-components.data';
import { emissionSpd, GRID_COUNT } from './grid';
import type { EmissionSpd } from './types';

/** Chromaticity range over which CIE 15 defines daylight, K. */
const DAYLIGHT_MIN_K = 4000;
export const DAYLIGHT_MAX_K = 25000;

/**
 * CIE daylight of a correlated colour temperature, 100 at 560 nm (CIE 15:2018, 4.1.2).
 * `cct_k` 4000-25000 K, on the present temperature scale: D65 is 6503.6 K (6500 x 1.4388 / 1.4380).
 * M1 and M2 are rounded to three decimals, as CIE 15 does; unrounded, D65 is off by up to 0.016.
 * Outside the range it throws: the caller checks input.
 */
export function daylightSpd(cct_k: number): EmissionSpd {
  const { x, y } = daylightChromaticity(cct_k);
  const m = 0.0241 + 0.2562 * x - 0.7341 * y;
  const m1 = roundTo3((-1.3515 - 1.7703 * x + 5.9114 * y) / m);
  const m2 = roundTo3((0.03 - 31.4424 * x + 30.0717 * y) / m);
  const spd = new Float64Array(GRID_COUNT);
  for (let i = 0; i < GRID_COUNT; i++) {
    // Components are tabulated at 10 nm; CIE 15 prescribes linear interpolation between them.
    const lower = i >> 1;
    const upper = (i + 1) >> 1;
    const at = (s: readonly number[]) => (s[lower]! + s[upper]!) / 2;
    spd[i] = at(S0) + m1 * at(S1) + m2 * at(S2);
  }
  return emissionSpd(spd);
}

/** Chromaticity of CIE daylight (CIE 15:2018, equations 4.7-4.9); 2 degree observer. Throws outside 4000-25000 K. */
function daylightChromaticity(cct_k: number): { readonly x: number; readonly y: number } {
  if (!(cct_k >= DAYLIGHT_MIN_K && cct_k <= DAYLIGHT_MAX_K)) {
    throw new RangeError(`CIE daylight is defined for 4000-25000 K, got ${cct_k}`);
  }
  const t = 1000 / cct_k;
  const x =
    cct_k <= 7000
      ? -4.607 * t ** 3 + 2.9678 * t ** 2 + 0.09911 * t + 0.244063
      : -2.0064 * t ** 3 + 1.9018 * t ** 2 + 0.24748 * t + 0.23704;
  return { x, y: -3 * x * x + 2.87 * x - 0.275 };
}

const roundTo3 = (value: number): number => Math.round(value * 1000) / 1000;
