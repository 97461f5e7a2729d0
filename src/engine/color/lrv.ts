import { GRID_COUNT } from '../spectrum/grid';
import { lightById } from '../spectrum/lights';
import { observer10 } from '../spectrum/observers';
import { tristimulusWeights, WEIGHTS_D65_2 } from '../spectrum/tristimulus-weights';
import type { ReflectanceSpd } from '../spectrum/types';

const { rows } = tristimulusWeights(lightById('D65')!, observer10);

/** Light reflectance value, 0-100: CIE Y under D65 with the 10 degree observer (BS 8493:2008+A1:2010). */
export const lrvFromReflectance = (rho: ReflectanceSpd): number => lrvAt(rho, 0);

/** Ratio of the LRV of a surface, seen at 10 degrees, to its Y for the 2 degree observer. */
export function lrvPerY(rho: ReflectanceSpd): number {
  let y = 0;
  for (let i = 0; i < GRID_COUNT; i++) y += WEIGHTS_D65_2.rows[3 * i + 1]! * rho[i]!;
  // A measured black may be all zero; there the observers agree.
  return y > 0 ? lrvFromReflectance(rho) / (100 * y) : 1;
}

/** The same of the reflectance that begins at `at` in a column of many. */
export function lrvAt(rho: ArrayLike<number>, at: number): number {
  let y = 0;
  for (let i = 0; i < GRID_COUNT; i++) y += rows[3 * i + 1]! * rho[at + i]!;
  return 100 * y;
}
