import { emissionSpd, GRID_COUNT, wavelengthNm } from '../spectrum/grid';
import type { EmissionSpd } from '../spectrum/types';
import {
  MIXED_GAS_ABSORPTION,
  OZONE_ABSORPTION,
  SOLAR_IRRADIANCE,
  SOLAR_NM,
  WATER_ABSORPTION,
} from './solar-spectrum.data';

const RADIANS = Math.PI / 180;

/** What a cloudless atmosphere holds. */
export interface Atmosphere {
  /** Optical thickness of the aerosol at 500 nm. */
  readonly aerosol500: number;
  /** Angstrom's exponent: how that thickness falls with wavelength. */
  readonly angstrom: number;
  /** atm cm. */
  readonly ozone: number;
  /** Precipitable water, cm. */
  readonly water: number;
}

/**
 * Exponent of the rural aerosol of Bird and Riordan; ozone and water of the US standard atmosphere. The amount of aerosol is
 * our judgment: the clear air in which the whole beam dims by the IES extinction of 0.21 per air mass.
 */
const CLEAR_AIR: Atmosphere = { aerosol500: 0.1, angstrom: 1.14, ozone: 0.34, water: 1.42 };

/** Height of the ozone layer over the radius of the earth (Bird and Riordan, equation 2-10). */
const OZONE_HEIGHT = 22 / 6370;

/**
 * Relative optical air mass at sea level: F. Kasten, A. Young, Applied Optics 28 (1989) 4735. Defined from the horizon
 * up (37.9); below it the value at the horizon is held.
 */
export function airMass(elevation_deg: number): number {
  const h = Math.max(0, elevation_deg);
  return 1 / (Math.sin(h * RADIANS) + 0.50572 * (h + 6.07995) ** -1.6364);
}

/**
 * Spectral irradiance of a plane that faces the sun by its beam alone, W m-2 nm-1, sun at its mean distance, sea level:
 * SPCTRAL2 of R. Bird and C. Riordan (1984, 1986), direct part, between its tabulated wavelengths linear in every factor.
 * Below the horizon it is the spectrum of a sun at the horizon.
 */
export function sunBeamSpectrum(elevation_deg: number, air: Atmosphere = CLEAR_AIR): EmissionSpd {
  const mass = airMass(elevation_deg);
  const sine = Math.sin(Math.max(0, elevation_deg) * RADIANS);
  const ozoneMass = (1 + OZONE_HEIGHT) / Math.sqrt(sine * sine + 2 * OZONE_HEIGHT);
  const spd = new Float64Array(GRID_COUNT);
  for (let i = 0; i < GRID_COUNT; i++) {
    const nm = wavelengthNm(i);
    const squared_um = (nm / 1000) ** 2;
    const rayleigh = mass / (squared_um * squared_um * (115.6406 - 1.335 / squared_um));
    const aerosol = air.aerosol500 * (nm / 500) ** -air.angstrom * mass;
    const ozone = tableAt(OZONE_ABSORPTION, nm) * air.ozone * ozoneMass;
    const wet = tableAt(WATER_ABSORPTION, nm) * air.water * mass;
    const water = (0.2385 * wet) / (1 + 20.07 * wet) ** 0.45;
    const mixed = tableAt(MIXED_GAS_ABSORPTION, nm) * mass;
    const oxygen = (1.41 * mixed) / (1 + 118.93 * mixed) ** 0.45;
    spd[i] = tableAt(SOLAR_IRRADIANCE, nm) * Math.exp(-rayleigh - aerosol - ozone - water - oxygen);
  }
  return emissionSpd(spd);
}

function tableAt(values: readonly number[], nm: number): number {
  let k = 1;
  while (SOLAR_NM[k]! < nm) k++;
  const from = SOLAR_NM[k - 1]!;
  return values[k - 1]! + ((values[k]! - values[k - 1]!) * (nm - from)) / (SOLAR_NM[k]! - from);
}
