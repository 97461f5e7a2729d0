import type { EmissionSpd, ReflectanceSpd } from './types';

/** CIE 15: 380-780 nm at 5 nm is enough for tristimulus values of surface colours. */
export const GRID_START_NM = 380;
export const GRID_END_NM = 780;
export const GRID_STEP_NM = 5;
export const GRID_COUNT = 81;

/** Wavelength in nm of grid sample `i`. */
export const wavelengthNm = (i: number): number => GRID_START_NM + i * GRID_STEP_NM;

/** Brands 81 values as a reflectance. A wrong count is a bug in the caller, so it throws. */
export function reflectanceSpd(values: ArrayLike<number>): ReflectanceSpd {
  return onGrid(values) as ReflectanceSpd;
}

/** Brands 81 values as an emission. A wrong count is a bug in the caller, so it throws. */
export function emissionSpd(values: ArrayLike<number>): EmissionSpd {
  return onGrid(values) as EmissionSpd;
}

function onGrid(values: ArrayLike<number>): Float64Array {
  if (values.length !== GRID_COUNT) throw new RangeError(`expected ${GRID_COUNT} samples, got ${values.length}`);
  return Float64Array.from(values);
}
