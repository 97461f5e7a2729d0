import { aboutShare } from '../../engine/judge/number-words';
import type { LightFrom, LightPart } from '../../kitchen/study/light-parts';
import { surfaceName } from '../words/engine-words';
import { capital, listed } from '../words/numbers';
import { PICTURE } from '../words/picture';
import { READING } from '../words/reading';

/** Where a part of the light comes from, as a row of a list names it. */
export const lightFromName = (from: LightFrom): string =>
  from.kind === 'direct' ? READING.direct(PICTURE.groups[from.group]) : READING.bounced(surfaceName(from.surface));

/** What a place mirrors, within a sentence. */
export const mirroredName = (from: LightFrom): string =>
  from.kind === 'direct'
    ? READING.mirroredGroup(PICTURE.groups[from.group])
    : READING.mirroredSurface(surfaceName(from.surface));

/** Sources smaller than this are left out of the sentence. */
const LEAST_SHARE = 0.1;
const MOST_SOURCES = 3;

/** "About a third of this tint comes from the floor": which light carries the tint of a point; null where it has none. */
export function tintPartsSentence(parts: readonly LightPart[]): string | null {
  const sources = parts
    .filter(({ tint_share }) => tint_share >= LEAST_SHARE)
    .sort((one, other) => other.tint_share - one.tint_share)
    .slice(0, MOST_SOURCES)
    .map(({ from, tint_share }, i) => {
      const where =
        from.kind === 'direct'
          ? READING.tintDirect(PICTURE.groups[from.group])
          : READING.tintBounced(surfaceName(from.surface));
      const share = aboutShare(tint_share);
      return i === 0
        ? `${capital(share)} ${READING.ofThisTint(where).replace(/\.$/, '')}`
        : READING.tintPart(share, where);
    });
  return sources.length === 0 ? null : `${listed(sources)}.`;
}
