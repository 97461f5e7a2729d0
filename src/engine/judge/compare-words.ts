import type { SurfaceId } from '../surface';
import { surfacesPhrase } from './surface-words';

/** Counters and floors lie, and so do their samples; all else stands. */
const FLAT: readonly SurfaceId[] = ['counter', 'island-counter', 'floor'];

/** Where samples show what was asked: as samples by daylight, as installed in the light in question. */
type Where = 'by the window' | 'in this light';

/**
 * How to compare samples: "upright", "lying flat", or each the way it will lie or stand (common practice, no source: a sample
 * is judged in the plane it will have).
 * @param groups one for each sample, the surfaces it is for
 */
export function compareWords(where: Where, ...groups: readonly (readonly SurfaceId[])[]): string {
  const surfaces = groups.flat();
  const flat = surfaces.filter((s) => FLAT.includes(s));
  const upright = surfaces.filter((s) => !FLAT.includes(s));
  const these = groups.length === 2 ? 'Compare these two samples' : 'Compare the samples';
  if (flat.length === 0) return `${these}, upright, ${where}.`;
  if (upright.length === 0) return `${these}, lying flat, ${where}.`;
  return `${these} ${where}, ${surfacesPhrase(flat).text} lying flat, ${surfacesPhrase(upright).text} upright.`;
}
