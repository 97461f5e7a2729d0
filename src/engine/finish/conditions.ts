import { failure, type Result, success } from '../result';
import { LIGHT_IDS, lightById } from '../spectrum/lights';
import { observer2, observer10 } from '../spectrum/observers';
import { type TristimulusWeights, tristimulusWeights } from '../spectrum/tristimulus-weights';
import type { Conditions } from './given-color';

/** What a colour is stated under in this product, and taken to be given under where nothing else is said. */
export const D65_AT_2: Conditions = { illuminant: 'D65', observer_deg: 2 };

export const sameConditions = (a: Conditions, b: Conditions): boolean =>
  a.illuminant === b.illuminant && a.observer_deg === b.observer_deg;

/** 'D65, 2°'. */
export const conditionsWords = ({ illuminant, observer_deg }: Conditions): string => `${illuminant}, ${observer_deg}°`;

/**
 * Tristimulus weights of the light and observer a colour is given under, from our own 5 nm tables of CIE 15; the white is
 * theirs, too. Problems: 'unknown-illuminant', 'unknown-observer'.
 */
export function weightsUnder({ illuminant, observer_deg }: Conditions): Result<TristimulusWeights> {
  const light = lightById(illuminant);
  if (!light) {
    return failure({
      code: 'unknown-illuminant',
      text: `"${illuminant}" is no CIE light that is known here.`,
      remedy: `Use one of ${LIGHT_IDS.join(', ')}.`,
    });
  }
  if (observer_deg !== 2 && observer_deg !== 10) {
    return failure({
      code: 'unknown-observer',
      text: `There is no CIE observer of ${observer_deg}°.`,
      remedy: 'Use 2 or 10, as the instrument was set.',
    });
  }
  return success(tristimulusWeights(light, observer_deg === 2 ? observer2 : observer10));
}
