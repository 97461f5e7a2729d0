import type { PatternFact } from '../../engine/judge/relations/seen-scheme';
import type { SurfaceId } from '../../engine/surface';
import { isEmpty } from '../../model/empty-surface';
import { figureSizeMm } from '../../model/figure-size';
import type { Finish, Option } from '../../model/project';

/** The patterns of an option's finishes, by surface. */
export function patternsOf(option: Option, library: ReadonlyMap<string, Finish>): ReadonlyMap<SurfaceId, PatternFact> {
  const facts = new Map<SurfaceId, PatternFact>();
  for (const [surface, { finish }] of Object.entries(option.scheme)) {
    const found = isEmpty({ finish }) ? undefined : library.get(finish);
    if (found) facts.set(surface as SurfaceId, { kind: found.pattern.kind, scale_mm: figureSizeMm(found) });
  }
  return facts;
}
