import type { White, Xyz } from '../color/types';
import { failure, type Result, success } from '../result';
import { GRID_COUNT } from '../spectrum/grid';
import { outsideSolid, writeReflectance } from '../spectrum/reflectance-from-color';
import { type TristimulusWeights, WEIGHTS_D65_2 } from '../spectrum/tristimulus-weights';
import type { ReflectanceSpd } from '../spectrum/types';
import type { FinishClass } from './types';

export interface PlausibleReflectance {
  readonly rho: ReflectanceSpd;
  readonly source: 'lhtss' | 'sigmoid';
}

/**
 * The curve a colour of this class is computed with: exactly the colour under the light and observer of `weights`.
 * Woods have one edge, which the sigmoid has, too (0.2 CIEDE2000 from measured woods under other lights, LHTSS 0.7);
 * where it finds none, and for all else, LHTSS. Problem: 'outside-object-color-solid'.
 */
export function plausibleReflectance(
  xyz: Xyz<White>,
  finishClass: FinishClass,
  weights: TristimulusWeights = WEIGHTS_D65_2,
): Result<PlausibleReflectance> {
  const rho = new Float64Array(GRID_COUNT) as ReflectanceSpd;
  const source = writePlausibleReflectance(xyz, finishClass, rho, 0, weights);
  return source ? success({ rho, source }) : failure(outsideSolid(xyz));
}

/** The same, written into `out` from `at` on. Null where no surface has the colour; what is there then means nothing. */
export function writePlausibleReflectance(
  xyz: Xyz<White>,
  finishClass: FinishClass,
  out: Float64Array,
  at: number,
  weights: TristimulusWeights = WEIGHTS_D65_2,
): PlausibleReflectance['source'] | null {
  if (finishClass === 'wood' && writeReflectance(xyz, 'sigmoid', out, at, weights)) return 'sigmoid';
  return writeReflectance(xyz, 'lhtss', out, at, weights) ? 'lhtss' : null;
}
