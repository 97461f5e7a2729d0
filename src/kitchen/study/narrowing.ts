import type { Relation } from '../../engine/judge/shortlist/relations';
import type { Standing } from '../../engine/judge/shortlist/standing';
import type { SurfaceId } from '../../engine/surface';
import { decisionOrder } from '../../model/decision-order';
import { decisionPath } from '../../model/decision-path';
import type { Option, Project } from '../../model/project';
import type { Meetings } from './meetings';
import { rankSamples } from './shortlist-samples';

/** What the settled decisions leave of the library for surfaces that are still open. Counts of finishes, as samples. */
export interface Narrowing {
  readonly surfaces: readonly SurfaceId[];
  /** Made for the place. */
  readonly of: number;
  /** Not turned down by anything settled. */
  readonly left: number;
  /** Each settled decision that takes some out of what those before it leave, in decision order. */
  readonly by: readonly { readonly surfaces: readonly SurfaceId[]; readonly takes: number }[];
}

/** For every group of open surfaces what is left of the library; yields after each, so that a worker can listen. */
export function* narrowings(
  project: Project,
  option: Option,
  present: readonly SurfaceId[],
  meetings?: Meetings,
): Generator<null, readonly Narrowing[]> {
  const order = decisionOrder(option);
  const found: Narrowing[] = [];
  for (const { groups } of decisionPath(option, present).steps) {
    for (const { surfaces, state } of groups) {
      if (state !== 'open') continue;
      const ranking = rankSamples(project, option.id, surfaces[0]!, { present, ...(meetings ? { meetings } : {}) });
      if (ranking.ok) found.push(narrowed(surfaces, ranking.value.standings, order));
      yield null;
    }
  }
  return found;
}

/** Each finish that goes is counted with the earliest decision that turns it down. */
function narrowed(
  surfaces: readonly SurfaceId[],
  standings: readonly Standing[],
  order: readonly SurfaceId[],
): Narrowing {
  const made = standings.filter(({ candidate }) => candidate.notMade === null);
  // The same finish with another grout is another decision.
  const takes = new Map<Relation['held'], { surfaces: readonly SurfaceId[]; takes: number }>();
  const rank = (relation: Relation): number => Math.min(...relation.held.surfaces.map((one) => order.indexOf(one)));
  let gone = 0;
  for (const { relations } of made) {
    const rejecting = relations.filter(({ bearing }) => bearing === 'rejects');
    if (rejecting.length === 0) continue;
    gone++;
    const first = rejecting.reduce((best, one) => (rank(one) < rank(best) ? one : best));
    const known = takes.get(first.held) ?? { surfaces: first.held.surfaces, takes: 0 };
    takes.set(first.held, { ...known, takes: known.takes + 1 });
  }
  const by = [...takes.values()].sort(
    (x, y) =>
      Math.min(...x.surfaces.map((s) => order.indexOf(s))) - Math.min(...y.surfaces.map((s) => order.indexOf(s))),
  );
  return { surfaces, of: made.length, left: made.length - gone, by };
}
