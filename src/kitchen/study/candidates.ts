import type { LaidFinish } from '../../engine/finish/types';
import type { ComponentRecord } from '../../engine/judge/assessment';
import { averageRecord } from '../../engine/judge/component-record';
import { isFitting, type SampleColor, sampleColor } from '../../engine/judge/sample-color';
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
  readonly pattern: Candidate['pattern'];
  readonly average: ComponentRecord;
  /** By surface. */
  readonly candidates: Map<SurfaceId, Candidate>;
  /** Its colors on fittings, and everywhere else. */
  readonly colors: Map<boolean, readonly SampleColor[]>;
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
        pattern: isLively(finish, laid.value) ? 'lively' : 'quiet',
        average: averageRecord(laid.value.components),
        candidates: new Map(),
        colors: new Map(),
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
    colors: knownColors(facts, surface),
    lrv: facts.average.lrv,
    notMade: whyNotOn(finish, surface),
    isTooFlat: isTooFlatFor(finish, surface),
    priceBand: finish.supply?.price_band ?? null,
    availability: finish.supply?.availability ?? null,
    pattern: facts.pattern,
  };
  facts.candidates.set(surface, made);
  return made;
}

/** A fitting's colors are judged apart; else they are the same wherever they lie. */
function knownColors({ laid, colors }: KnownFinish, surface: SurfaceId): readonly SampleColor[] {
  const isAccent = isFitting(surface);
  const made = colors.get(isAccent) ?? colorsOn(surface, laid);
  colors.set(isAccent, made);
  return made;
}

/**
 * Works out ahead of time what a finish is as a sample: all that candidates for any surface take from it alone.
 * @returns the mean of its colors; null where its color cannot be
 */
export function prepareCandidate(finish: Finish): ComponentRecord | null {
  const facts = knownFinish(finish);
  if (!facts) return null;
  for (const color of knownColors(facts, 'wall')) color.strength();
  return facts.average;
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
