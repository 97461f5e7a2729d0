import type { InstalledRecord } from '../../engine/judge/assessment';
import { surfaceName } from '../../engine/judge/surface-words';
import { capital, listed } from '../words/numbers';
import { aboutShare, READING, tintWord } from '../words/reading';

/** Sources smaller than this are left out of the sentence. */
const LEAST_SHARE = 0.1;

/** What a white held there would look like, and which surfaces lend the tint, in words. */
export function tintSentence(record: InstalledRecord): string {
  const [, a, b] = record.place_white_lab_d65;
  const word = tintWord(a, b);
  if (word === null) return READING.noTint;
  const white = READING.whiteThere(word);
  const sources = record.tint_from.filter((source) => source.share >= LEAST_SHARE).slice(0, 3);
  if (sources.length === 0) return `${white} ${READING.tintUnknown}`;
  const parts = sources.map(
    (source) => `${aboutShare(source.share)} from the ${surfaceName(source.surface).toLowerCase()}`,
  );
  return `${white} ${capital(READING.tintComes(listed(parts)))}`;
}
