import { emissionSpd, GRID_COUNT, wavelengthNm } from './grid';
import type { EmissionSpd } from './types';

/** Second radiation constant as colorimetry uses it, nm K (CIE 15:2018, 4.1.1). */
const C2_NM_K = 1.4388e7;

const REFERENCE_NM = 560;

/** Below, a double cannot hold the ratio of 780 nm to 380 nm; above, nothing changes any more. */
const MIN_K = 100;
const MAX_K = 1e9;

/**
 * Thermal radiation of a black body, 100 at 560 nm (Planck's law, refractive index 1).
 * `cct_k` 100-1e9 K; anything else is a bug in the caller and throws.
 */
export function planckSpd(cct_k: number): EmissionSpd {
  if (!(cct_k >= MIN_K && cct_k <= MAX_K)) throw new RangeError(`a temperature must be 100-1e9 K, got ${cct_k}`);
  const spd = new Float64Array(GRID_COUNT);
  const reference = Math.expm1(C2_NM_K / (REFERENCE_NM * cct_k));
  for (let i = 0; i < GRID_COUNT; i++) {
    const nm = wavelengthNm(i);
    spd[i] = (100 * (REFERENCE_NM / nm) ** 5 * reference) / Math.expm1(C2_NM_K / (nm * cct_k));
  }
  return emissionSpd(spd);
}
