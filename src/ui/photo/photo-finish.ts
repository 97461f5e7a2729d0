import type { ComponentRole, FinishClass } from '../../engine/finish/types';
import { UNCERTAINTY_DE00 } from '../../engine/finish/uncertainty';
import type { FinishPattern } from '../../engine/pattern/types';
import type { PhotoReading } from '../../engine/photo/read-sample';
import type { Finish } from '../../model/project';

/** How several colors are spread, in the words of the form. */
export type PhotoPattern = 'veined' | 'fleck' | 'cloud' | 'grain';
export const PHOTO_PATTERNS: readonly PhotoPattern[] = ['veined', 'fleck', 'cloud', 'grain'];

/** Usual sizes, mm, to begin with: common practice, no source. */
export const USUAL_MM: { readonly [P in PhotoPattern]: number } = { veined: 250, fleck: 6, cloud: 80, grain: 0 };

/** What a sample of a class most often shows; common practice, no source. */
export function usualPattern(finishClass: FinishClass): PhotoPattern {
  if (finishClass === 'wood' || finishClass === 'vinyl' || finishClass === 'laminate') return 'grain';
  if (finishClass === 'stone') return 'veined';
  return finishClass === 'glazed' || finishClass === 'porcelain' ? 'cloud' : 'fleck';
}

/** What the form adds to what the photo says. */
export interface PhotoEntry {
  readonly id: string;
  readonly name: string;
  readonly class: FinishClass;
  readonly gloss_gu: number;
  readonly pattern: PhotoPattern;
  readonly size_mm: number;
  readonly piece_mm: Finish['piece_mm'];
}

const ROLES: { readonly [P in PhotoPattern]: ComponentRole } = {
  veined: 'vein',
  fleck: 'fleck',
  cloud: 'cloud',
  grain: 'grain',
};

const tenth = (value: number): number => Math.round(10 * value) / 10 + 0;

/** A finish of the colors of a photographed sample. It holds numbers only. */
export function photoFinish(reading: PhotoReading, entry: PhotoEntry): Finish {
  const { colors, provenance } = reading;
  const shares = wholeShares(colors.map(({ share }) => share));
  const uncertainty = tenth(reading.uncertaintyDe00);
  return {
    id: entry.id,
    label: `${entry.name}, ${entry.id}`,
    class: entry.class,
    gloss_gu: entry.gloss_gu,
    components: colors.map(({ lab }, i) => ({
      role: i === 0 ? 'base' : ROLES[entry.pattern],
      share: shares[i]!,
      color: {
        kind: 'lab',
        lab: [Math.min(100, Math.max(0, tenth(lab.l))), tenth(lab.a), tenth(lab.b)],
        illuminant: 'D65',
        observer_deg: 2,
      },
    })),
    pattern: colors.length > 1 ? patternOf(entry) : { kind: 'plain' },
    variation: 'V0',
    ...(entry.piece_mm && { piece_mm: entry.piece_mm }),
    provenance,
    ...(uncertainty > UNCERTAINTY_DE00[provenance] && { uncertainty_de00: uncertainty }),
  };
}

function patternOf({ pattern, size_mm }: PhotoEntry): FinishPattern {
  switch (pattern) {
    case 'veined':
      return { kind: 'veined', spacing_mm: size_mm, direction_deg: 20 };
    case 'fleck':
      return { kind: 'fleck', size_mm };
    case 'cloud':
      return { kind: 'cloud', size_mm };
    case 'grain':
      return { kind: 'grain' };
  }
}

/** Shares to half a hundredth: more digits would claim what a photo cannot know. The first takes the rest. */
function wholeShares(shares: readonly number[]): readonly number[] {
  const rest = shares.slice(1).map((share) => Math.max(1, Math.round(share * 200)));
  return [200 - rest.reduce((sum, share) => sum + share, 0), ...rest].map((share) => share / 200);
}
