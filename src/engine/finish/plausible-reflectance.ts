import type { White, Xyz } from '../color/types';
import { type Result, success } from '../result';
import { reflectanceFromXyz } from '../spectrum/reflectance-from-color';
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
  if (finishClass === 'wood') {
    const sigmoid = reflectanceFromXyz(xyz, 'sigmoid', weights);
    if (sigmoid.ok) return success({ rho: sigmoid.value, source: 'sigmoid' });
  }
  const smoothest = reflectanceFromXyz(xyz, 'lhtss', weights);
  return smoothest.ok ? success({ rho: smoothest.value, source: 'lhtss' }) : smoothest;
}
