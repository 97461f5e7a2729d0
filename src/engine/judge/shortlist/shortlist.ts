import { SURFACES } from '../../surface';
import { faultCode } from '../claims';
import { inDecisionOrder } from '../surface-words';
import type { InPlace } from './in-place';
import {
  besideOf,
  heldWords,
  orderWords,
  placedWords,
  rejectionReason,
  stepReasons,
  stepsOf,
  wishesTold,
} from './reasons';
import { heldFinishes } from './relations';
import { type Standing, standingOf, withPlaces, withWishes } from './standing';
import type {
  AcceptedFinish,
  Candidate,
  HeldSurface,
  RankStep,
  RejectedFinish,
  RejectionCode,
  Shortlist,
  ShortlistPlace,
} from './types';
import type { Wish } from './wish';

export interface ShortlistAsked {
  readonly project: string;
  readonly option: string;
  readonly candidates: readonly Candidate[];
  /** What is settled around the place. */
  readonly held: readonly HeldSurface[];
  /** All that lies around it, open surfaces, too: only wishes that name a surface look at it. */
  readonly around: readonly HeldSurface[];
  readonly place: ShortlistPlace;
  /** What lies on the surface now. */
  readonly laid: string;
}

/** The candidates of a place, each held against what is settled. */
export interface Ranking {
  readonly asked: ShortlistAsked;
  readonly held: readonly HeldSurface[];
  readonly standings: readonly Standing[];
}

/** Holds every candidate as a sample against what is settled. */
export function holdCandidates(asked: ShortlistAsked): Ranking {
  const held = [...asked.held].sort((x, y) => SURFACES.indexOf(x.surface) - SURFACES.indexOf(y.surface));
  const finishes = heldFinishes(held);
  const standings = asked.candidates.map((one) => standingOf(one, held, finishes, asked.place, asked.around));
  return { asked, held, standings };
}

/** The same under other wishes, without holding anything anew. */
export function wishing({ asked, held, standings }: Ranking, wishes: readonly Wish[]): Ranking {
  return {
    asked: { ...asked, place: { ...asked.place, wishes } },
    held,
    standings: standings.map((one) => withWishes(one, wishes, asked.around)),
  };
}

/** The candidates that nothing turns down, in rank order. */
export const acceptedOf = ({ asked, standings }: Ranking): Standing[] =>
  standings
    .filter(({ candidate, rejectedBy }) => candidate.notMade === null && rejectedBy === null)
    .sort(inRankOrder(stepsOf(asked.place)));

const inRankOrder = (steps: readonly RankStep[]) => (x: Standing, y: Standing) =>
  steps.reduce((found, step) => found || compare(x.levels[step], y.levels[step]), 0) ||
  byText(x.candidate.finish.id, y.candidate.finish.id);

/**
 * Every candidate accepted in rank order, or rejected with the deciding reason. The order is lexical: a later step counts only where all
 * before it are even; no step is weighed against another. Order and names of finishes, and the order of surfaces, change nothing but the
 * last tie.
 * @param seen what candidates show in their place, setting by setting; the others are judged as samples
 */
export function shortlist(ranking: Ranking, seen: ReadonlyMap<string, readonly InPlace[]> = new Map()): Shortlist {
  const { asked, held, standings } = ranking;
  const { place, laid } = asked;
  const after: Ranking = {
    ...ranking,
    standings: standings.map((one) => withPlaces(one, seen.get(one.candidate.finish.id) ?? [])),
  };
  const [surface] = place.surfaces;
  return {
    project: asked.project,
    option: asked.option,
    surface: surface!,
    surfaces: place.surfaces,
    held_against: held.map((one) => ({
      surface: one.surface,
      finish: one.finish.id,
      label: one.finish.label,
      state: one.state,
    })),
    held_words: heldWords(held),
    order: orderWords(place),
    accepted: acceptedRows(acceptedOf(after), place, held.length > 0, laid),
    rejected: after.standings
      .filter(({ candidate, rejectedBy }) => candidate.notMade !== null || rejectedBy !== null)
      .map((one) => rejectedRow(one, place, laid))
      .sort((x, y) => CODES.indexOf(x.code) - CODES.indexOf(y.code) || byText(x.finish, y.finish)),
  };
}

const CODES: readonly RejectionCode[] = ['white-looks-dirty', 'too-yellow', 'undertones-pull-apart', 'not-made-for-it'];

const byText = (x: string, y: string): number => (x < y ? -1 : x > y ? 1 : 0);

function acceptedRows(
  sorted: readonly Standing[],
  place: ShortlistPlace,
  isAnythingHeld: boolean,
  laid: string,
): AcceptedFinish[] {
  const steps = stepsOf(place);
  return sorted.map((one, i) => {
    const placedBy = differing(steps, one, sorted[i === 0 ? 1 : i - 1]);
    const said = stepReasons(one, place, isAnythingHeld);
    const isAgainst = one.group !== 'clear' || one.materials.length > 0;
    // That nothing clashes is what its heading says: what sets it apart comes first.
    const isContrastFirst = placedBy === 'contrast' || said.agreement === null;
    const first: RankStep = isAgainst ? 'clashes' : isContrastFirst && said.contrast ? 'contrast' : 'agreement';
    const texts = [said[first], ...steps.filter((step) => step !== first).map((step) => said[step])];
    return {
      finish: one.candidate.finish.id,
      label: one.candidate.finish.label,
      rank: i + 1,
      group: one.group,
      placed_by: placedBy,
      reasons: [...texts.filter((text) => text !== null), placedWords(placedBy, i === 0)],
      wishes: wishesTold(one, place),
      basis: one.places.length > 0 ? 'installed' : 'sample',
      judged_in: one.places.map(({ setting }) => setting),
      failed_in: failedIn(one),
      beside: besideOf(one),
      is_laid: one.candidate.finish.id === laid,
    };
  });
}

/** The first step in which two differ; `color` where none does, or there is no other. */
const differing = (steps: readonly RankStep[], one: Standing, other: Standing | undefined): RankStep =>
  (other && steps.find((step) => compare(one.levels[step], other.levels[step]) !== 0)) ?? 'color';

function compare(x: readonly number[], y: readonly number[]): number {
  for (let i = 0; i < x.length; i++) if (x[i] !== y[i]) return x[i]! - y[i]!;
  return 0;
}

const failedIn = ({ places }: Standing): string[] =>
  places.flatMap(({ setting, faults }) => (faults.length > 0 ? [setting] : []));

function rejectedRow(one: Standing, place: ShortlistPlace, laid: string): RejectedFinish {
  const { candidate, rejectedBy, relations } = one;
  const { finish, notMade } = candidate;
  const rejecting = relations.filter(({ bearing }) => bearing === 'rejects');
  const told = rejectedBy && rejectionReason(rejectedBy, place.surfaces);
  return {
    finish: finish.id,
    label: finish.label,
    code: rejectedBy ? codeOf(rejectedBy) : 'not-made-for-it',
    reason: told ?? notMade!,
    basis: one.places.length > 0 ? 'installed' : 'sample',
    failed_in: failedIn(one),
    beside:
      rejectedBy && 'fault' in rejectedBy
        ? inDecisionOrder(rejectedBy.fault.surfaces)
        : inDecisionOrder(rejecting.flatMap(({ held }) => held.surfaces)),
    is_laid: finish.id === laid,
  };
}

const codeOf = (by: NonNullable<Standing['rejectedBy']>): RejectionCode =>
  faultCode('fault' in by ? by.fault.pair.tintOff.verdict : by.judgment.verdict) as RejectionCode;
