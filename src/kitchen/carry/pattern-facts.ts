import type { PatternFact } from '../../engine/judge/relations/seen-scheme';
import type { SurfaceId } from '../../engine/surface';
import { isEmpty } from '../../model/empty-surface';
import type { Finish, Option } from '../../model/project';

/** Size of a finish's figure, mm: distance of veins, size of flecks, width of boards; null where it has none. */
export function patternScaleMm({ pattern }: Finish): number | null {
  switch (pattern.kind) {
    case 'plain':
    case 'brushed':
      return null;
    case 'veined':
      return pattern.spacing_mm;
    case 'grain':
      return pattern.board_mm ? Math.min(...pattern.board_mm) : null;
    default:
      return pattern.size_mm;
  }
}

/** The patterns of an option's finishes, by surface. */
export function patternsOf(option: Option, library: ReadonlyMap<string, Finish>): ReadonlyMap<SurfaceId, PatternFact> {
  const facts = new Map<SurfaceId, PatternFact>();
  for (const [surface, { finish }] of Object.entries(option.scheme)) {
    const found = isEmpty({ finish }) ? undefined : library.get(finish);
    if (found) facts.set(surface as SurfaceId, { kind: found.pattern.kind, scale_mm: patternScaleMm(found) });
  }
  return facts;
}
