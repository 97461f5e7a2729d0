import type { SurfaceId } from '../surface';
import type { PairVerdict, Warning, WarningCode } from './assessment';
import { combinedUncertainty, provenanceReason } from './cannot-tell';
import { faultCode, type Holds, isAlike, isAssurance, type PairHolds } from './claims';
import { firmnessOf } from './firmness';
import { AS_SAMPLE } from './number-words';
import { PAIR } from './pair';
import { faultSentence, someFaultSentence } from './pair-sentences';
import { pairWhy } from './pair-why';
import { isMajor, type JudgedPair, type PlacedColor, pairKey } from './pairs';
import { isNearWhite, type SampleColor } from './sample-color';
import { atMost, SEVERITY_RANK } from './severity';
import { componentPhrase, inDecisionOrder, joined, sentenceCase, surfacesPhrase } from './surface-words';

/** One finding: two finishes and a code, with the worst pair of their components and every surface it shows on. */
export interface PairGroup<P> {
  readonly worst: P;
  readonly aSurfaces: readonly SurfaceId[];
  readonly bSurfaces: readonly SurfaceId[];
}

/** What grouping needs of a pair: its two sides, and how bad it is. */
export interface Groupable {
  readonly a: PlacedColor;
  readonly b: PlacedColor;
}

/** Order of gravity of two judgements with the same code; larger is worse. */
export function gravity(judgement: JudgedPair['judgement']): number {
  const n = judgement.numbers;
  const size = judgement.verdict === 'pulls-apart' ? n['hue_apart_deg']! / 1000 : Math.abs(n['d_wid'] ?? 0) / 1000;
  return (judgement.severity ? SEVERITY_RANK[judgement.severity] : -1) + Math.min(0.99, size);
}

/** Merges pairs of the same two finishes and code; `weigh` tells the worst, larger is worse. */
export function groupPairs<P extends Groupable>(
  pairs: readonly P[],
  codeOf: (pair: P) => string,
  weigh: (pair: P) => number,
): PairGroup<P>[] {
  const groups = new Map<string, P[]>();
  for (const pair of pairs) {
    const finishes = [pair.a.color.finish, pair.b.color.finish].sort();
    const key = `${codeOf(pair)}|${finishes.join('|')}`;
    const group = groups.get(key);
    if (group) group.push(pair);
    else groups.set(key, [pair]);
  }
  return [...groups.values()].map((group) => {
    const worst = group.reduce((w, p) => (weigh(p) > weigh(w) ? p : w));
    const surfacesOf = (finish: string): SurfaceId[] =>
      inDecisionOrder(
        group.flatMap((p) => [p.a, p.b].filter((c) => c.color.finish === finish).map((c) => c.surface.surface)),
      );
    return { worst, aSurfaces: surfacesOf(worst.a.color.finish), bSurfaces: surfacesOf(worst.b.color.finish) };
  });
}

/** The verdict to print for a pair, once it is known how firmly it stands. */
export function shownVerdict({ verdict }: { readonly verdict: PairVerdict }, holds: PairHolds | null): PairVerdict {
  if (verdict === 'cannot-tell' || verdict === 'none' || !holds) return verdict;
  return firmnessOf(standingOf(verdict, holds)) === 'open' ? 'cannot-tell' : verdict;
}

function standingOf(verdict: PairVerdict, holds: PairHolds): number {
  if (faultCode(verdict)) return holds.fault;
  if (isAlike(verdict)) return holds.alike;
  return verdict === 'agree' ? holds.fine : holds.same;
}

/** Warnings of the pairs on the sample basis: faults, and what cannot be told from here. */
export function pairWarnings(pairs: readonly JudgedPair[], holds: Holds): Warning[] {
  const major = pairs.filter((p) => isMajor(p.a) && isMajor(p.b));
  const shown = (p: JudgedPair) => shownVerdict(p, holds.pair(pairKey(p.a.color, p.b.color)));
  const told = major.filter((p) => faultCode(p.judgement.verdict) && shown(p) !== 'cannot-tell');
  const toldFinishes = new Set(told.map(finishPair));
  const untold = major.filter((p) => shown(p) === 'cannot-tell' && !toldFinishes.has(finishPair(p)));
  return [
    ...groupPairs(
      told,
      (p) => faultCode(p.judgement.verdict)!,
      (p) => gravity(p.judgement),
    ).map((g) => faultWarning(g, holds)),
    ...groupPairs(
      untold.filter((p) => faultCode(p.judgement.verdict)),
      () => 'cannot-tell',
      (p) => gravity(p.judgement),
    ).map((g) => openFault(g, holds)),
    ...openAssurance(
      untold.filter((p) => isAssurance(p.judgement.verdict) && areWhitesAtHand(p)),
      holds,
    ),
  ];
}

/** Whites that people hold against each other; a ceiling is out of reach. */
export const areWhitesAtHand = (p: Groupable): boolean =>
  [p.a, p.b].every((c) => isNearWhite(c.color) && c.surface.surface !== 'ceiling');

const finishPair = (p: JudgedPair): string => [p.a.color.finish, p.b.color.finish].sort().join('|');

const holdsOf = (p: JudgedPair, holds: Holds): PairHolds | null => holds.pair(pairKey(p.a.color, p.b.color));

function faultWarning(group: PairGroup<JudgedPair>, holds: Holds): Warning {
  const { a, b, judgement } = group.worst;
  const standing = holdsOf(group.worst, holds);
  const named = firmnessOf(standing?.same ?? null);
  const code = faultCode(judgement.verdict)!;
  if (standing && named === 'open') {
    // Some fault stands, but not this name for it.
    return {
      code,
      severity: atMost('visible', judgement.severity!),
      surfaces: inDecisionOrder([...group.aSurfaces, ...group.bSurfaces]),
      text: someFaultSentence(standing.faults, judgement, a.color, group.aSurfaces, b.color, group.bSurfaces),
      why: `${pairWhy(judgement, AS_SAMPLE)} ${spread([a.color, b.color])}`,
      basis: 'sample',
      holds_in: standing.fault,
    };
  }
  return {
    code,
    severity: judgement.severity!,
    surfaces: inDecisionOrder([...group.aSurfaces, ...group.bSurfaces]),
    text: faultSentence(judgement, a.color, group.aSurfaces, b.color, group.bSurfaces, named !== 'firm'),
    why: pairWhy(judgement, AS_SAMPLE),
    basis: 'sample',
    holds_in: standing?.same ?? null,
  };
}

function openFault(group: PairGroup<JudgedPair>, holds: Holds): Warning {
  const { a, b, judgement } = group.worst;
  const sides = joined([
    componentPhrase(a.color.role, group.aSurfaces).text,
    componentPhrase(b.color.role, group.bSurfaces).text,
  ]);
  return {
    code: 'cannot-tell',
    severity: judgement.severity === 'note' ? 'note' : 'visible',
    surfaces: inDecisionOrder([...group.aSurfaces, ...group.bSurfaces]),
    text: `Cannot tell from here whether ${sides} work against each other: ${provenanceReason([a.color, b.color])}. ${COMPARE}`,
    why: `${pairWhy(judgement, AS_SAMPLE)} ${spread([a.color, b.color])}`,
    basis: 'sample',
    holds_in: holdsOf(group.worst, holds)?.fault ?? null,
  };
}

const COMPARE = 'Compare the samples upright, by the window.';

const spread = (colors: readonly SampleColor[]): string => {
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
  const likely = least === null ? pairs.every(isLikely) : least >= 0.5;
  const who = surfacesPhrase(surfaces).text;
  const reason = provenanceReason(colors);
  const code: WarningCode = 'cannot-tell';
  return [
    {
      code,
      severity: 'note',
      surfaces,
      text: likely
        ? `${sentenceCase(who)} likely go together, but ${reason}. ${COMPARE}`
        : `Cannot tell from here how the whites of ${who} sit together: ${reason}. ${COMPARE}`,
      why: `By their numbers they agree, ${AS_SAMPLE}. ${spread(colors)}`,
      basis: 'sample',
      holds_in: least,
    },
  ];
}

/** Before errors are drawn: by numbers the pair agrees, and errs no further than people accept. */
const isLikely = ({ a, b }: JudgedPair): boolean => combinedUncertainty(a.color, b.color) <= PAIR.acceptable;
