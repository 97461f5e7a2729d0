import { GRID_COUNT, GRID_STEP_NM } from '../spectrum/grid';
import type { Observer } from '../spectrum/observers';
import { LUMENS_PER_WATT } from '../spectrum/per-lux';
import type { EmissionSpd, ReflectanceSpd } from '../spectrum/types';
import type { White, Xyz } from './types';

/**
 * Tristimulus values of a surface under a light, perfect diffuser Y = 100 (CIE 15:2018, 7.1; 5 nm sums).
 * The caller names the white the light and observer stand for, e.g. `xyzFromReflectance<'D65-2'>(rho, d65, observer2)`.
 */
export function xyzFromReflectance<W extends White = 'setting-2'>(
  rho: ReflectanceSpd,
  light: EmissionSpd,
  observer: Observer,
): Xyz<W> {
  let x = 0;
  let y = 0;
  let z = 0;
  let perfect = 0;
  for (let i = 0; i < GRID_COUNT; i++) {
    const power = light[i]!;
    const reflected = power * rho[i]!;
    x += reflected * observer.x[i]!;
    y += reflected * observer.y[i]!;
    z += reflected * observer.z[i]!;
    perfect += power * observer.y[i]!;
  }
  return { x: (x / perfect) * 100, y: (y / perfect) * 100, z: (z / perfect) * 100 };
}

/**
 * Absolute tristimulus values of a spectrum given per nm (683 lm/W x 5 nm x sum): Y is lx for an irradiance in
 * W m-2 nm-1, cd m-2 for a radiance in W m-2 sr-1 nm-1.
 */
export function xyzFromEmission<W extends White = 'setting-2'>(spd: EmissionSpd, observer: Observer): Xyz<W> {
  let x = 0;
  let y = 0;
  let z = 0;
  for (let i = 0; i < GRID_COUNT; i++) {
    x += spd[i]! * observer.x[i]!;
    y += spd[i]! * observer.y[i]!;
    z += spd[i]! * observer.z[i]!;
  }
  const scale = LUMENS_PER_WATT * GRID_STEP_NM;
  return { x: x * scale, y: y * scale, z: z * scale };
}

const PERFECT_DIFFUSER = new Float64Array(GRID_COUNT).fill(1) as ReflectanceSpd;

/** Tristimulus values of the perfect diffuser under a light, Y = 100: the white point of that light. */
export function whiteOf<W extends White = 'setting-2'>(light: EmissionSpd, observer: Observer): Xyz<W> {
  return xyzFromReflectance<W>(PERFECT_DIFFUSER, light, observer);
}
