import type { AssessedSurface, InstalledRecord } from '../../engine/judge/assessment';

/** A smaller part of the view than this is an edge nobody looks at. */
const LEAST_SHARE = 0.005;

/** The ways a surface faces that one sees, most seen first; at least the most seen, where none shows in the overviews. */
export function seenPlaces({ installed }: AssessedSurface): readonly InstalledRecord[] {
  const places = [...installed].sort((a, b) => b.view_share - a.view_share);
  return places.filter((place, index) => index === 0 || place.view_share >= LEAST_SHARE);
}
