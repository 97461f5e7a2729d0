import { FLUORESCENT_ILLUMINANTS } from './fluorescent-illuminants.data';
import { emissionSpd } from './grid';
import { LED_ILLUMINANTS } from './led-illuminants.data';
import { STANDARD_ILLUMINANTS } from './standard-illuminants.data';
import type { EmissionSpd } from './types';

const LIGHTS: ReadonlyMap<string, EmissionSpd> = new Map(
  [STANDARD_ILLUMINANTS, FLUORESCENT_ILLUMINANTS, LED_ILLUMINANTS].flatMap((table) =>
    Object.entries(table).map(([id, values]) => [id, emissionSpd(values)] as const),
  ),
);

/** Every light known by name, in the order of CIE 15: A, C, D50-D75, FL1-FL12, LED-B1 to LED-V2. */
export const LIGHT_IDS: readonly string[] = [...LIGHTS.keys()];

/**
 * Relative spectral power of a CIE illuminant by its name (case as printed: 'D65', 'FL11', 'LED-B3'); null if unknown.
 * Scale as tabulated; use `perLux` for absolute figures. The array is shared: do not write to it.
 */
export function lightById(id: string): EmissionSpd | null {
  return LIGHTS.get(id) ?? null;
}

export { daylightSpd } from './daylight';
export { perLux } from './per-lux';
export { planckSpd } from './planck';
