import { emissionSpd, GRID_COUNT, GRID_STEP_NM } from './grid';
import { observer2 } from './observers';
import type { EmissionSpd } from './types';

/** Maximum spectral luminous efficacy, lm/W (SI definition of the candela, rounded as CIE 15 does). */
export const LUMENS_PER_WATT = 683;

/** Photometric integral of a spectrum given per nm: lx from W m-2 nm-1, cd m-2 from W m-2 sr-1 nm-1. */
function photometricFromSpd(spd: EmissionSpd): number {
  let sum = 0;
  for (let i = 0; i < GRID_COUNT; i++) sum += spd[i]! * observer2.y[i]!;
  return LUMENS_PER_WATT * GRID_STEP_NM * sum;
}

/**
 * The same spectrum scaled to one lux: W m-2 nm-1 per lx, so that 683 x 5 nm x sum(S V) = 1.
 * A spectrum without visible power cannot be scaled and throws: it is a bug in the caller.
 */
export function perLux(spd: EmissionSpd): EmissionSpd {
  const lux = photometricFromSpd(spd);
  if (!(lux > 0)) throw new RangeError('a light without visible power cannot be scaled to one lux');
  return emissionSpd(spd.map((power) => power / lux));
}
