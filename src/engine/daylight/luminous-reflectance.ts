import { GRID_COUNT } from '../spectrum/grid';
import { observer2 } from '../spectrum/observers';
import type { EmissionSpd, ReflectanceSpd } from '../spectrum/types';

/** Part of the light, by lumens, that a reflectance sends back from a given light; 0-1 (CIE 15, 2 degree observer). */
export function luminousReflectance(rho: ReflectanceSpd, light: EmissionSpd): number {
  let [back, all] = [0, 0];
  for (let i = 0; i < GRID_COUNT; i++) {
    const luminous = light[i]! * observer2.y[i]!;
    back += luminous * rho[i]!;
    all += luminous;
  }
  return back / all;
}
