import { surfaceName } from '../../engine/judge/surface-words';
import type { Caution } from '../../model/cautions';
import { integer } from './numbers';

/** Cautions in plain words; local codes, appliance manuals and licensed trades decide. */
export const CAUTION_WORDS = {
  title: 'Before you order',
  dust: 'Never cut or sand this counter on site yourself: the dust harms the lungs for good. Have it cut wet by an equipped shop. Engineered stone is not allowed in some countries.',
  heat: 'Check the cooktop manual for clearance to what burns; it overrides this drawing.',
  slip: 'Ask for the wet slip value of this floor. The scales cannot be converted into one another.',
  glare: 'A polished top facing a window mirrors it. Look at a large sample there at noon.',
  lowVision: (a: string, b: string, difference: string) =>
    `Edges may be hard to see for some eyes: ${a} and ${b} differ by only ${difference} LRV.`,
  planning: 'Planning aid only. Local codes, appliance manuals and licensed trades decide.',
  screen: 'A screen is not a sample. Check physical samples in the room before you order.',
} as const;

/** A caution in a sentence or two. */
export function cautionText(caution: Caution): string {
  if (caution.code !== 'low-vision') return CAUTION_WORDS[caution.code];
  const [a, b] = caution.surfaces.map((surface) => surfaceName(surface).toLowerCase());
  return CAUTION_WORDS.lowVision(a!, b!, integer(caution.stepLrv));
}
