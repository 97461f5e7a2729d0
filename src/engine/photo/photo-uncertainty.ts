import type { Provenance } from '../finish/types';
import { UNCERTAINTY_DE00 } from '../finish/uncertainty';
import type { PhotoFlag } from './flags';

export interface PhotoTrust {
  /** With a card that says no more than no card, the color counts as from a photo without one. */
  readonly provenance: Extract<Provenance, 'photo-with-card' | 'photo'>;
  /** Root mean square CIEDE2000; never below what the provenance stands for. */
  readonly uncertaintyDe00: number;
}

/** More says no more: nothing is known. It is the most a finish may be unsure by (`model/check-finish.ts`). */
const MOST_DE00 = 30;

/** How far a photographed color can be trusted: what a photo with or without a card stands for, and what its flags add. */
export function photoTrust(hasCard: boolean, flags: readonly PhotoFlag[]): PhotoTrust {
  const added = flags.map(({ addsDe00 }) => addsDe00);
  const withCard = Math.hypot(UNCERTAINTY_DE00['photo-with-card'], ...added);
  if (hasCard && withCard < UNCERTAINTY_DE00.photo) {
    return { provenance: 'photo-with-card', uncertaintyDe00: withCard };
  }
  const without = Math.hypot(UNCERTAINTY_DE00.photo, ...added);
  return { provenance: 'photo', uncertaintyDe00: Math.min(MOST_DE00, hasCard ? withCard : without) };
}
