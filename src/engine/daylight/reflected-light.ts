import { emissionSpd, GRID_COUNT } from '../spectrum/grid';
import { perLux } from '../spectrum/per-lux';
import type { EmissionSpd, ReflectanceSpd } from '../spectrum/types';
import { luminousReflectance } from './luminous-reflectance';

/** A light and how much of it falls on something. Spectrum per lux. */
export interface LightPart {
  readonly spectrum: EmissionSpd;
  readonly lx: number;
}

/** What something sends back. */
export interface ReflectedLight {
  /** Per lux. */
  readonly spectrum: EmissionSpd;
  /** Luminous reflectance under the light that falls on it, 0-1. */
  readonly reflectance: number;
}

/** Light after a diffuse reflection. In the dark, spectrum and reflectance are those under the first part. */
export function reflectLight(parts: readonly [LightPart, ...LightPart[]], rho: ReflectanceSpd): ReflectedLight {
  const isDark = !parts.some(({ lx }) => lx > 0);
  const sum = new Float64Array(GRID_COUNT);
  for (const { spectrum, lx } of parts) {
    for (let i = 0; i < GRID_COUNT; i++) sum[i]! += lx * spectrum[i]!;
  }
  const light = isDark ? parts[0].spectrum : emissionSpd(sum);
  return {
    spectrum: perLux(emissionSpd(light.map((power, i) => power * rho[i]!))),
    reflectance: luminousReflectance(rho, light),
  };
}
