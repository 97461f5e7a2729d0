import type { LaidFinish } from '../../engine/finish/types';
import { averageRecord } from '../../engine/judge/component-record';
import { type SampleColor, sampleColor } from '../../engine/judge/sample-color';
import type { Candidate, HeldSurface } from '../../engine/judge/shortlist/types';
import type { SurfaceId } from '../../engine/surface';
import { isTooFlatFor } from '../../model/finish-candidates';
import { whyNotOn } from '../../model/not-made-for';
import type { Finish, Placement } from '../../model/project';
import { layFinish } from './lay-finish';

/** From this step of L* on between its colors a pattern is seen from across the kitchen. Our judgment. */
const LIVELY_STEP = 10;
/** Smaller shares are hair lines. */
const LIVELY_SHARE = 0.05;

interface KnownFinish {
  readonly laid: LaidFinish;
  readonly lrv: number;
  readonly pattern: Candidate['pattern'];
  /** By surface. */
  readonly candidates: Map<SurfaceId, Candidate>;
}

const known = new WeakMap<Finish, KnownFinish | null>();

/** What a finish is as a sample, worked out once; null where its color cannot be. */
function knownFinish(finish: Finish): KnownFinish | null {
  const before = known.get(finish);
  if (before !== undefined) return before;
  const laid = layFinish(new Map([[finish.id, finish]]), AS_SAMPLE(finish.id));
  const made: KnownFinish | null = laid.ok
    ? {
        laid: laid.value,
        lrv: averageRecord(laid.value.components).lrv,
        pattern: isLively(finish, laid.value) ? 'lively' : 'quiet',
        candidates: new Map(),
      }
    : null;
  known.set(finish, made);
  return made;
}

const AS_SAMPLE = (finish: string): Placement => ({ finish, state: 'open', laying: { layout: 'plain' } });

function isLively({ variation }: Finish, { components }: LaidFinish): boolean {
  const seen = components.filter(({ share }) => share >= LIVELY_SHARE).map(({ labD65 }) => labD65.l);
  return variation === 'V3' || variation === 'V4' || Math.max(...seen) - Math.min(...seen) >= LIVELY_STEP;
}

/** A finish as a candidate for a surface, worked out once; null where its color cannot be. */
export function candidateOf(finish: Finish, surface: SurfaceId): Candidate | null {
  const facts = knownFinish(finish);
  if (!facts) return null;
  const before = facts.candidates.get(surface);
  if (before) return before;
  const made: Candidate = {
    finish: facts.laid,
    colors: colorsOn(surface, facts.laid),
    lrv: facts.lrv,
    notMade: whyNotOn(finish, surface),
    isTooFlat: isTooFlatFor(finish, surface),
    priceBand: finish.supply?.price_band ?? null,
    availability: finish.supply?.availability ?? null,
    pattern: facts.pattern,
  };
  facts.candidates.set(surface, made);
  return made;
}

/** A surface as it is laid. */
export const heldSurface = (surface: SurfaceId, placement: Placement, finish: LaidFinish): HeldSurface => ({
  surface,
  finish,
  state: placement.state,
  colors: colorsOn(surface, finish),
  lrv: averageRecord(finish.components).lrv,
});

const colorsOn = (surface: SurfaceId, finish: LaidFinish): readonly SampleColor[] =>
  finish.components.map((_, i) => sampleColor(surface, finish, i));
