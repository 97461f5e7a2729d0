import { PAIR } from '../../engine/judge/pair';
import { sentenceCase, surfacesPhrase } from '../../engine/judge/surface-words';
import type { SurfaceId } from '../../engine/surface';
import { type LaidSurfaceOfLook, STAND_IN_DE00 } from './lay-look';

/** Up to this far, CIEDE2000, a stand-in passes for a shade of the same color. Our judgment, no source. */
const SHADE_DE00 = 5;

/** How far a stand-in is from the look's color, CIEDE2000, in words. */
function nearness(de00: number): string {
  if (de00 <= PAIR.acceptable) return 'as good as the same';
  if (de00 <= SHADE_DE00) return 'close, another shade';
  return 'not close, clearly another color';
}

/** What of a look could not be laid as it is, one sentence for each finish: what stands in and how far it is, or what stays instead. */
export function laidSentences(laid: readonly LaidSurfaceOfLook[]): readonly string[] {
  const groups = new Map<string, { readonly one: LaidSurfaceOfLook; readonly surfaces: SurfaceId[] }>();
  for (const one of laid) {
    if (one.how === 'same') continue;
    const key = JSON.stringify([one.how, one.finish, one.de00]);
    const group = groups.get(key) ?? { one, surfaces: [] };
    group.surfaces.push(one.surface);
    groups.set(key, group);
  }
  return [...groups.values()].map(({ one, surfaces }) => {
    const { text } = surfacesPhrase(surfaces);
    if (one.how === 'nearest') {
      return `${sentenceCase(text)}: ${one.label} is nearest in the library, ${one.de00.toFixed(1)} CIEDE2000 away, ${nearness(one.de00)}.`;
    }
    const far =
      one.how === 'none' && one.nearest !== null && one.de00 !== null
        ? ` (nearest is ${one.nearest}, ${one.de00.toFixed(0)} CIEDE2000 away; ${STAND_IN_DE00} would do)`
        : '';
    return `${sentenceCase(text)}: nothing in the library is near the look${far}, so nothing was laid. ${one.label} is still there, and relations are judged with it.`;
  });
}
