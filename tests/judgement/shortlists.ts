import type { LaidFinish } from '../../src/engine/finish/types';
import { averageRecord } from '../../src/engine/judge/component-record';
import { sampleColor } from '../../src/engine/judge/sample-color';
import { holdCandidates, shortlist } from '../../src/engine/judge/shortlist/shortlist';
import type { Candidate, HeldSurface, Shortlist, ShortlistPlace } from '../../src/engine/judge/shortlist/types';
import type { DecisionState, SurfaceId } from '../../src/engine/surface';
import { finish } from './finishes';

type Given = string | LaidFinish;
const laidOf = (given: Given): LaidFinish => (typeof given === 'string' ? finish(given) : given);

export function candidate(given: Given, surface: SurfaceId, more: Partial<Candidate> = {}): Candidate {
  const of = laidOf(given);
  return {
    finish: of,
    colors: of.components.map((_, i) => sampleColor(surface, of, i)),
    lrv: averageRecord(of.components).lrv,
    notMade: null,
    isTooFlat: false,
    priceBand: null,
    availability: null,
    pattern: 'quiet',
    ...more,
  };
}

export function held(surface: SurfaceId, given: Given, state: DecisionState = 'decided'): HeldSurface {
  const { finish: of, colors, lrv } = candidate(given, surface);
  return { surface, finish: of, colors, lrv, state };
}

/** Ranks finishes for a surface against what is held. */
export function listed(
  surfaces: SurfaceId | readonly SurfaceId[],
  finishes: readonly (Given | Candidate)[],
  against: readonly HeldSurface[],
  place: Partial<ShortlistPlace> = {},
): Shortlist {
  const all = typeof surfaces === 'string' ? [surfaces] : surfaces;
  return shortlist(
    holdCandidates({
      project: 'test',
      option: 'test',
      candidates: finishes.map((one) => (typeof one !== 'string' && 'colors' in one ? one : candidate(one, all[0]!))),
      held: against,
      around: against,
      place: { surfaces: all, wishes: [], contrastFirst: false, ...place },
      laid: '',
    }),
  );
}

/** Where a finish stands: its group, or the code that turns it down. */
export const whereIs = ({ accepted, rejected }: Shortlist, id: string): string =>
  accepted.find((row) => row.finish === id)?.group ?? rejected.find((row) => row.finish === id)?.code ?? 'nowhere';

export const acceptedIds = ({ accepted }: Shortlist): string[] => accepted.map((row) => row.finish);
