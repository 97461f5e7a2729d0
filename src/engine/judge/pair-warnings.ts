import type { PairVerdict, Warning } from './assessment';
import { isLoose } from './cannot-tell';
import { faultCode, type Holds, isAlike, type PairHolds } from './claims';
import { type Firmness, firmnessOf } from './firmness';
import { APART_REASON, areApart } from './meets';
import { AS_SAMPLE, percent } from './number-words';
import { openPairWarnings, spread } from './open-pairs';
import { type Groupable, gravity, groupPairs, holdsOf, mergeGroups, type PairGroup } from './pair-groups';
import { faultSentence, someFaultSentence } from './pair-sentences';
import { pairReason, pairWhy } from './pair-why';
import { isMajor, type JudgedPair, pairKey } from './pairs';
import { atMost } from './severity';
import { inDecisionOrder } from './surface-words';

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
  const told = major.filter((p) => faultCode(p.judgment.verdict) && shown(p) !== 'cannot-tell');
  const toldFinishes = new Set(told.map(finishPair));
  const untold = major.filter((p) => shown(p) === 'cannot-tell' && !toldFinishes.has(finishPair(p)));
  const faults = groupPairs(
    told,
    (p) => faultCode(p.judgment.verdict)!,
    (p) => gravity(p.judgment),
  );
  const named = (p: JudgedPair) => firmnessInName(p, holds);
  const merged = mergeGroups(
    faults,
    // Where the name of the fault is open, so is which side suffers.
    (p) => (named(p) === 'open' ? null : p.judgment.faulty),
    (p) => `${p.judgment.verdict}|${named(p)}`,
    (p) => gravity(p.judgment),
  );
  return [...merged.map((g) => faultWarning(g, holds)), ...openPairWarnings(untold, holds)];
}

const finishPair = (p: JudgedPair): string => [p.a.color.finish, p.b.color.finish].sort().join('|');

/** How firmly a fault stands under its own name: flatly only if the colors are known better than loosely, or were drawn. */
function firmnessInName(p: JudgedPair, holds: Holds): Firmness {
  return firmnessOf(holdsOf(p, holds)?.same ?? null, isLooseFinding(p));
}

const isLooseFinding = ({ a, b }: Groupable): boolean => isLoose(a.color) || isLoose(b.color);

function faultWarning(group: PairGroup<JudgedPair>, holds: Holds): Warning {
  const { a, b, judgment } = group.worst;
  const standing = holdsOf(group.worst, holds);
  const named = firmnessInName(group.worst, holds);
  const isUnsure = named === 'open' || (!standing && isLooseFinding(group.worst));
  const found = {
    code: faultCode(judgment.verdict)!,
    severity: isUnsure ? atMost('visible', judgment.severity!) : judgment.severity!,
    surfaces: inDecisionOrder([...group.aSurfaces, ...group.bSurfaces]),
    reason: `${pairReason(judgment)}${areApart(group.worst) ? APART_REASON : ''}`,
    basis: 'sample' as const,
  };
  const sides = [a.color, group.aSurfaces, b.color, group.bSurfaces] as const;
  if (standing && named === 'open') {
    // Some fault stands, but not this name for it.
    return {
      ...found,
      text: someFaultSentence(standing.faults, judgment, ...sides),
      why: `${pairWhy(judgment, AS_SAMPLE)} ${spread([a.color, b.color])} Some fault stands in ${percent(standing.fault)} of the tries.`,
      holds_in: standing.same,
    };
  }
  return {
    ...found,
    text: faultSentence(judgment, ...sides, named !== 'firm'),
    why: pairWhy(judgment, AS_SAMPLE),
    holds_in: standing && Math.min(...group.pairs.map((p) => holdsOf(p, holds)!.same)),
  };
}
