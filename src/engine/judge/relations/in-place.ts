import type { SurfaceId } from '../../surface';
import { firmnessOf } from '../firmness';
import type { JudgedSurface } from '../input';
import { surfacesTint, withoutTint } from '../place-tint';
import { plausibleDraws } from '../plausible-draws';
import { recolored } from '../sample-color';
import { mainReading } from '../view-weights';
import { DRAWS, shareWhere } from './draw-schemes';
import { readClaim } from './rules';
import type { SeenScheme } from './seen-scheme';
import type { InPlace, Relation, RelationCheck } from './types';

/**
 * How relations stand with the colors that surfaces read in their places, in the setting of the readings: the mix of lights and the
 * mean tint of all that is seen taken off, as for the balance. By id; a relation of a surface without a reading is left out, and so
 * are edges, which are rated by the light reflectance of samples.
 */
export function inPlace(checks: readonly RelationCheck[], scheme: SeenScheme): ReadonlyMap<string, InPlace> {
  const dark = new Set(scheme.placed.flatMap(({ surface, installed }) => (installed ? [] : [surface.surface])));
  const isRead = ({ kind, surfaces }: Relation) =>
    kind !== 'edge' && !(OF_ALL.includes(kind) ? isSeen(scheme, dark) : surfaces.some((surface) => dark.has(surface)));
  const wanted = checks.filter(({ relation }) => isRead(relation));
  if (wanted.length === 0) return new Map();
  const cast = meanTint(scheme);
  const drawn: SeenScheme[] = [];
  for (const { placed } of plausibleDraws(scheme.placed, DRAWS, 1)) {
    let next = 0;
    const surfaces = scheme.surfaces.map((surface) => ({
      ...surface,
      colors: surface.colors.map((seen) => {
        const { color, installed } = placed[next++]!;
        return installed ? { ...seen, color: recolored(color, withoutTint(installed.mixOff, cast)) } : seen;
      }),
    }));
    drawn.push({ ...scheme, surfaces });
  }
  return new Map(
    wanted.map(({ relation }) => {
      const holds_in = shareWhere(drawn, (one) => readClaim(relation.claim, one, relation.numbers)?.holds ?? false);
      const isSure = firmnessOf(Math.max(holds_in, 1 - holds_in)) !== 'open';
      return [relation.id, { stands: isSure ? (holds_in > 0.5 ? 'holds' : 'breaks') : 'cannot-tell', holds_in }];
    }),
  );
}

/** These are read from all surfaces, not only from those they name. */
const OF_ALL: readonly Relation['kind'][] = ['balance', 'pattern'];

const isSeen = ({ views }: SeenScheme, surfaces: ReadonlySet<SurfaceId>): boolean =>
  [...surfaces].some((surface) => views.get(surface)?.some((share) => share > 0));

/** a*, b* of a white in the places that are seen, from the surfaces around alone, by how much one sees of each. */
function meanTint({ placed, views }: SeenScheme): { readonly a: number; readonly b: number } {
  let [a, b, total] = [0, 0, 0];
  for (const surface of new Set<JudgedSurface>(placed.map((one) => one.surface))) {
    const reading = mainReading(surface);
    const shares = views.get(surface.surface);
    if (!reading || !shares) continue;
    const weight = shares.reduce((sum, x) => sum + x, 0) / shares.length;
    const { white } = surfacesTint(reading);
    a += weight * white.a;
    b += weight * white.b;
    total += weight;
  }
  return total > 0 ? { a: a / total, b: b / total } : { a: 0, b: 0 };
}
