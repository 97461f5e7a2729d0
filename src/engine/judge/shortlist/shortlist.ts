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
  ShortlistHead,
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
  const steps = holdInSteps(asked, asked.candidates);
  let step = steps.next();
  for (; !step.done; step = steps.next());
  return step.value;
}

/**
 * The same in steps; yields after each candidate that was held anew.
 * @param candidates the candidates of `asked`, as they come; one that is not there yet is waited for
 * @param known standings of candidates held against the very same before
 */
export function* holdInSteps(
  asked: Omit<ShortlistAsked, 'candidates'>,
  candidates: Iterable<Candidate>,
  known: ReadonlyMap<Candidate, Standing> = new Map(),
): Generator<null, Ranking> {
  const held = [...asked.held].sort((x, y) => SURFACES.indexOf(x.surface) - SURFACES.indexOf(y.surface));
  const finishes = heldFinishes(held);
  const standings: Standing[] = [];
  for (const one of candidates) {
    const before = known.get(one);
    standings.push(before ?? standingOf(one, held, finishes, asked.place, asked.around));
    if (!before) yield null;
  }
  return { asked: { ...asked, candidates: standings.map(({ candidate }) => candidate) }, held, standings };
}

/** The same under other wishes, without holding anything anew. */
export function wishing(ranking: Ranking, wishes: readonly Wish[]): Ranking {
  const { asked, held, standings } = ranking;
  if (wishes.length === 0 && asked.place.wishes.length === 0) return ranking;
  return {
    asked: { ...asked, place: { ...asked.place, wishes } },
    held,
    standings: standings.map((one) => withWishes(one, wishes, asked.around)),
  };
}

/**
 * A ranking in order, with what was seen in place. What is said of a candidate is made when it is asked for: of a large library only a
 * few are ever read.
 */
export interface Ordered {
  readonly asked: ShortlistAsked;
  readonly held: readonly HeldSurface[];
  readonly accepted: readonly Standing[];
  readonly rejected: readonly Standing[];
}

/**
 * The candidates in order. It is lexical: a later step counts only where all before it are even; no step is weighed against another.
 * Order and names of finishes, and the order of surfaces, change nothing but the last tie.
 * @param seen what candidates show in their place, setting by setting; the others are judged as samples
 */
export function inOrder(ranking: Ranking, seen: ReadonlyMap<string, readonly InPlace[]> = new Map()): Ordered {
  const { asked, held } = ranking;
  const after = {
    ...ranking,
    standings:
      seen.size === 0
        ? ranking.standings
        : ranking.standings.map((one) => withPlaces(one, seen.get(one.candidate.finish.id) ?? [])),
  };
  const rejected = after.standings.filter((one) => !isAccepted(one));
  const codes = new Map(rejected.map((one) => [one, CODES.indexOf(codeOf(one))]));
  const isOthers = othersThan(asked.place);
  rejected.sort(
    (x, y) =>
      codes.get(x)! - codes.get(y)! ||
      isOthers(x) - isOthers(y) ||
      byText(x.candidate.finish.id, y.candidate.finish.id),
  );
  return { asked, held, accepted: acceptedOf(after), rejected };
}

const isAccepted = ({ candidate, rejectedBy }: Standing): boolean => candidate.notMade === null && rejectedBy === null;

/** 0 for what comes first among equals, 1 for the others. */
const othersThan =
  ({ own }: ShortlistPlace) =>
  ({ candidate }: Standing): number =>
    own && !own.has(candidate.finish.id) ? 1 : 0;

/** The candidates that nothing turns down, in rank order. */
export function acceptedOf({ asked, standings }: Ranking): Standing[] {
  const steps = stepsOf(asked.place);
  const isOthers = othersThan(asked.place);
  const levelsOf = (one: Standing) =>
    steps.flatMap((step) => (step === 'color' ? [isOthers(one), ...one.levels.color] : one.levels[step]));
  const rows = standings.filter(isAccepted).map((one) => ({ one, levels: levelsOf(one) }));
  rows.sort((x, y) => compare(x.levels, y.levels) || byText(x.one.candidate.finish.id, y.one.candidate.finish.id));
  return rows.map(({ one }) => one);
}

/** Every candidate accepted in rank order, or rejected with the deciding reason, see `inOrder`. */
export function shortlist(ranking: Ranking, seen?: ReadonlyMap<string, readonly InPlace[]>): Shortlist {
  const ordered = inOrder(ranking, seen);
  return {
    project: ranking.asked.project,
    option: ranking.asked.option,
    ...headOf(ordered),
    accepted: ordered.accepted.map((_, i) => acceptedRow(ordered, i)),
    rejected: ordered.rejected.map((_, i) => rejectedRow(ordered, i)),
  };
}

/** What is said of a list as a whole. */
export function headOf({ asked: { place }, held }: Ordered): ShortlistHead {
  const [surface] = place.surfaces;
  return {
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
  };
}

const CODES: readonly RejectionCode[] = ['white-looks-dirty', 'too-yellow', 'undertones-pull-apart', 'not-made-for-it'];

const byText = (x: string, y: string): number => (x < y ? -1 : x > y ? 1 : 0);

/** The accepted candidate at a place of the order, in words. */
export function acceptedRow({ asked: { place, laid }, held, accepted }: Ordered, i: number): AcceptedFinish {
  const one = accepted[i]!;
  const steps = stepsOf(place);
  const placedBy = differing(steps, one, accepted[i === 0 ? 1 : i - 1]);
  const said = stepReasons(one, place, held.length > 0);
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

/** The candidate turned down at a place of the order, in words. */
export function rejectedRow({ asked: { place, laid }, rejected }: Ordered, i: number): RejectedFinish {
  const one = rejected[i]!;
  const { candidate, rejectedBy, relations } = one;
  const { finish, notMade } = candidate;
  const rejecting = relations.filter(({ bearing }) => bearing === 'rejects');
  const told = rejectedBy && rejectionReason(rejectedBy, place.surfaces);
  return {
    finish: finish.id,
    label: finish.label,
    code: codeOf(one),
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

/** Why a candidate is turned down. */
export const codeOf = ({ rejectedBy: by }: Standing): RejectionCode =>
  by === null
    ? 'not-made-for-it'
    : (faultCode('fault' in by ? by.fault.pair.tintOff.verdict : by.judgment.verdict) as RejectionCode);
