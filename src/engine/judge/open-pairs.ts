import type { SurfaceId } from '../surface';
import type { Warning } from './assessment';
import { combinedUncertainty, isLoose, looseWords, provenanceReason } from './cannot-tell';
import { faultCode, type Holds, isAssurance } from './claims';
import { compareWords } from './compare-words';
import { firmnessOf } from './firmness';
import { AS_SAMPLE } from './number-words';
import { PAIR } from './pair';
import {
  areWhitesAtHand,
  gravity,
  groupPairs,
  holdsOf,
  mergeGroups,
  otherSide,
  type PairGroup,
  type SharedSide,
} from './pair-groups';
import { pairWhy } from './pair-why';
import type { JudgedPair } from './pairs';
import type { SampleColor } from './sample-color';
import { componentPhrase, inDecisionOrder, joined, sentenceCase, surfacesPhrase } from './surface-words';

/** What cannot be told of pairs as samples: one finding for each finish that is in doubt beside several, the rest pair by pair. */
export function openPairWarnings(untold: readonly JudgedPair[], holds: Holds): Warning[] {
  const asked = untold.filter((p) => faultCode(p.judgment.verdict) || isAskedAssurance(p));
  const faults = asked.filter((p) => faultCode(p.judgment.verdict));
  const doubtful = new Set(faults.flatMap((p) => looseFinish(p) ?? []));
  // What goes with the finish in doubt, or seems to, is one question with what may not.
  const absorbed = (p: JudgedPair) => faults.includes(p) || doubtful.has(looseFinish(p) ?? '');
  const groups = groupPairs(asked.filter(absorbed), () => 'cannot-tell', weight);
  const sideOf = doubtfulSide(groups);
  return [
    ...mergeGroups(groups, sideOf, () => '', weight).map((g) => openFault(g, sideOf, holds)),
    ...openAssurance(
      asked.filter((p) => !absorbed(p)),
      holds,
    ),
  ];
}

const isAskedAssurance = (p: JudgedPair): boolean => isAssurance(p.judgment.verdict) && areWhitesAtHand(p);

const weight = (p: JudgedPair): number => gravity(p.judgment);

/** The side that leaves a pair open: the more loosely known one, if only a sample settles it. */
function looseSide({ a, b }: JudgedPair): SharedSide | null {
  const side: SharedSide = b.color.uncertaintyDe00 > a.color.uncertaintyDe00 ? 'b' : 'a';
  const [own, other] = side === 'a' ? [a, b] : [b, a];
  return isLoose(own.color) && !isLoose(other.color) ? side : null;
}

function looseFinish(pair: JudgedPair): string | null {
  const side = looseSide(pair);
  return side && pair[side].color.finish;
}

/**
 * The side a question is about: the more loosely known one; else the one that is in question beside most others, so that it is
 * asked once; null where that is neither.
 */
function doubtfulSide(groups: readonly PairGroup<JudgedPair>[]): (pair: JudgedPair) => SharedSide | null {
  const times = new Map<string, number>();
  const count = (finish: string) => times.get(finish) ?? 0;
  for (const { worst } of groups) {
    const loose = looseSide(worst);
    for (const side of loose ? [worst[loose]] : [worst.a, worst.b]) {
      times.set(side.color.finish, count(side.color.finish) + 1);
    }
  }
  return (pair) => {
    const loose = looseSide(pair);
    if (loose) return loose;
    const [a, b] = [count(pair.a.color.finish), count(pair.b.color.finish)];
    return a === b ? pair.judgment.faulty : a > b ? 'a' : 'b';
  };
}

function openFault(
  group: PairGroup<JudgedPair>,
  sideOf: (pair: JudgedPair) => SharedSide | null,
  holds: Holds,
): Warning {
  const { a, b, judgment } = group.worst;
  const shares = group.pairs.map((p) => holdsOf(p, holds)?.same ?? null);
  return {
    code: 'cannot-tell',
    severity: judgment.severity === 'note' ? 'note' : 'visible',
    surfaces: inDecisionOrder([...group.aSurfaces, ...group.bSurfaces]),
    text: group.pairs.length > 1 ? oneAgainstMany(group, sideOf(group.worst)!) : oneAgainstOne(group),
    reason: 'Within what is known of these colors the answer may turn.',
    why: `${pairWhy(judgment, AS_SAMPLE)} ${spread([a.color, b.color])}`,
    basis: 'sample',
    holds_in: shares.includes(null) ? null : Math.max(...shares.map((x) => x!)),
  };
}

function oneAgainstOne({ worst: { a, b }, aSurfaces, bSurfaces }: PairGroup<JudgedPair>): string {
  const sides = joined([componentPhrase(a.color.role, aSurfaces).text, componentPhrase(b.color.role, bSurfaces).text]);
  return `Cannot tell from here whether ${sides} work against each other: ${provenanceReason([a.color, b.color])}. ${compareWords('by the window', aSurfaces, bSurfaces)}`;
}

function oneAgainstMany({ worst, pairs, aSurfaces, bSurfaces }: PairGroup<JudgedPair>, side: SharedSide): string {
  const [own, others]: readonly (readonly SurfaceId[])[] =
    side === 'a' ? [aSurfaces, bSurfaces] : [bSurfaces, aSurfaces];
  const who = componentPhrase(worst[side].color.role, own!);
  const with_ = componentPhrase(worst[otherSide(side)].color.role, others!).text;
  const [is, it, goes] = who.plural ? ['are', 'they', 'go'] : ['is', 'it', 'goes'];
  const compare = compareWords('by the window', own!, ...others!.map((s) => [s]));
  return pairs.every((p) => looseSide(p) !== null)
    ? `${sentenceCase(who.text)} ${is} ${looseWords(worst[side].color)}, so we cannot tell whether ${it} ${goes} with ${with_}. ${compare}`
    : `Cannot tell from here whether ${who.text} ${goes} with ${with_}: ${provenanceReason(pairs.flatMap((p) => [p.a.color, p.b.color]))}. ${compare}`;
}

/** How roughly the colors of a finding are known. */
export const spread = (colors: readonly SampleColor[]): string => {
  const most = Math.max(...colors.map((c) => c.uncertaintyDe00));
  return `The colors are known to about ${most.toFixed(1)} CIEDE2000 (root mean square), which may change the answer.`;
};

/** Whites that seem to go together but are not known well enough: one note for all of them. */
function openAssurance(pairs: readonly JudgedPair[], holds: Holds): Warning[] {
  if (pairs.length === 0) return [];
  const placed = pairs.flatMap((p) => [p.a, p.b]);
  const surfaces = inDecisionOrder(placed.map((p) => p.surface.surface));
  const colors = [...new Map(placed.map((p) => [p.color.key, p.color])).values()];
  const shares = pairs.map((p) => holdsOf(p, holds)?.fine ?? null);
  const least = shares.includes(null) ? null : Math.min(...shares.map((x) => x!));
  const likely = least === null ? pairs.every(isLikely) : firmnessOf(least) !== 'open';
  const who = surfacesPhrase(surfaces).text;
  const compare = compareWords('by the window', ...surfaces.map((s) => [s]));
  const reason = provenanceReason(colors);
  return [
    {
      code: 'cannot-tell',
      severity: 'note',
      surfaces,
      text: likely
        ? `${sentenceCase(who)} likely go together, but ${reason}. ${compare}`
        : `Cannot tell from here how the whites of ${who} sit together: ${reason}. ${compare}`,
      reason: 'By their numbers they agree, but the error of these colors may be larger than what tells whites apart.',
      why: `By their numbers they agree, ${AS_SAMPLE}. ${spread(colors)}`,
      basis: 'sample',
      holds_in: least,
    },
  ];
}

/** Before errors are drawn: by numbers the pair agrees, and errs no further than people accept. */
const isLikely = ({ a, b }: JudgedPair): boolean => combinedUncertainty(a.color, b.color) <= PAIR.acceptable;
