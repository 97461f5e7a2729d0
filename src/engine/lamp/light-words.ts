import { failure, type Result, success } from '../result';
import { LIGHT_IDS, lightById } from '../spectrum/lights';
import type { EmissionSpd } from '../spectrum/types';

/** A light by its words: the id of a CIE light ('D65', 'FL11', 'LED-B3'). The array may be shared: do not write to it. */
export function lightFromWords(words: string): Result<EmissionSpd> {
  const known = lightById(words);
  if (known) return success(known);
  return failure({
    code: 'unknown-light',
    text: `There is no light "${words}".`,
    remedy: `Use one of ${LIGHT_IDS.join(', ')}.`,
  });
}
