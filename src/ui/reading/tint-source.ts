import type { InstalledRecord } from '../../engine/judge/assessment';
import { aboutShare } from '../../engine/judge/number-words';
import { surfaceName, tintWord } from '../words/engine-words';
import { capital, listed } from '../words/numbers';
import { READING } from '../words/reading';

/** Sources smaller than this are left out of the sentence. */
const LEAST_SHARE = 0.1;
const MOST_SOURCES = 3;

type TintedPlace = Pick<InstalledRecord, 'place_white_lab_d65' | 'tint_from_light' | 'tint_from'>;

/** What a white held there would look like, and what lends the tint, in words: the mix of lights, or surfaces. */
export function tintSentence(record: TintedPlace): string {
  const [, a, b] = record.place_white_lab_d65;
  const word = tintWord(a, b);
  if (word === null) return READING.noTint;
  const white = READING.whiteThere(word);
  const light = { name: READING.lightMix, share: record.tint_from_light };
  const surfaces = record.tint_from.map(({ surface, share }) => ({
    name: READING.mirroredSurface(surfaceName(surface)),
    share,
  }));
  const sources = [light, ...surfaces]
    .filter(({ share }) => share >= LEAST_SHARE)
    .sort((one, other) => other.share - one.share)
    .slice(0, MOST_SOURCES);
  if (sources.length === 0) return `${white} ${READING.tintUnknown}`;
  const parts = sources.map(({ name, share }) => READING.tintShare(aboutShare(share), name));
  return `${white} ${capital(READING.tintComes(listed(parts)))}`;
}
