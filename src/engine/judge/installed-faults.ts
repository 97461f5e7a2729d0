import type { Severity, Warning } from './assessment';
import { isLoose } from './cannot-tell';
import { faultCode, type Holds } from './claims';
import { compareWords } from './compare-words';
import { type Firmness, firmnessOf } from './firmness';
import { isOwnFault, isPlaceFault } from './hold-pairs';
import { APART_REASON, areApart } from './meets';
import { AS_INSTALLED, percent } from './number-words';
import type { PairJudgment } from './pair';
import { areWhitesAtHand, gravity, groupPairs, mergeGroups, type PairGroup } from './pair-groups';
import { faultSentence, someFaultSentence } from './pair-sentences';
import { shownVerdict } from './pair-warnings';
import { pairReason, pairWhy } from './pair-why';
import { type InstalledPair, isMajor, type JudgedPair, type PlacedColor, pairKey, placedPairKey } from './pairs';
import { atMost } from './severity';
import { componentPhrase, inDecisionOrder, joined, surfacesPhrase } from './surface-words';

/** A fault between two whites that the surfaces around make: it goes when the tint of each place is taken off. */
export interface PlaceFault {
  readonly tinted: PlacedColor;
  readonly other: PlacedColor;
  readonly mixOff: PairJudgment;
  readonly tintOff: PairJudgment;
  /** Share of plausible errors under which it is one; null while not drawn. */
  readonly holdsIn: number | null;
}

/** Findings with the same key together, in the order they came. */
export function groupedBy<T>(found: readonly T[], keyOf: (item: T) => string): T[][] {
  const groups = new Map<string, T[]>();
  for (const item of found) {
    const group = groups.get(keyOf(item));
    if (group) group.push(item);
    else groups.set(keyOf(item), [item]);
  }
  return [...groups.values()];
}

/** Findings of the same finish together. */
export const byFinish = <T extends { readonly finish: string }>(found: readonly T[]): T[][] =>
  groupedBy(found, (item) => item.finish);

/**
 * White pairs that are a fault with the mix of lights taken off and none with the whole tint taken off: two perfect whites
 * would look the same there. What the mix of lights alone does to a pair is no surface's doing and has a note of its own.
 * Opposed undertones that only the place makes are left to the surfaces' own tint findings.
 */
export const placeFaults = (pairs: readonly InstalledPair[], holds: Holds): PlaceFault[] =>
  pairs.flatMap((pair) => {
    const { a, b, mixOff, tintOff } = pair;
    if (!isMajor(a) || !isMajor(b) || !isPlaceFault(pair)) return [];
    const [tinted, other] = mixOff.faulty === 'a' ? [a, b] : [b, a];
    return [{ tinted, other, mixOff, tintOff, holdsIn: holds.installed(placedPairKey(pair))?.byPlace ?? null }];
  });

/**
 * What the finishes show in this light but not as samples: faults as they are that stay with the tint of each place taken
 * off, and whites that go together by one plausible curve and not by another.
 */
export function installedFaultWarnings(
  pairs: readonly InstalledPair[],
  samples: readonly JudgedPair[],
  holds: Holds,
): Warning[] {
  const settled = new Set(samples.filter((p) => p.verdict === 'cannot-tell' || faultCode(p.verdict)).map(keyOf));
  const unsettled = pairs.filter(
    (p) => isMajor(p.a) && isMajor(p.b) && !isInShadow(p.a) && !isInShadow(p.b) && !settled.has(keyOf(p)),
  );
  const faults = groupPairs(
    unsettled.filter(isOwnFault),
    (p) => faultCode(p.tintOff.verdict)!,
    (p) => gravity(p.tintOff),
  );
  const merged = mergeGroups(
    faults,
    ({ tintOff }) => tintOff.faulty,
    // Said alike only if it stands alike: with its name, with some name, or not at all.
    (p) => [p.tintOff.verdict, ...standingOf(p, holds), isMeasuredPair(p)].join('|'),
    (p) => gravity(p.tintOff),
  );
  return [...merged.map((group) => ownFault(group, holds)), ...openInLight(unsettled, samples, holds)];
}

/** A toe kick lies back in shadow: what other light makes of it there nobody holds against anything. Our judgment. */
const isInShadow = ({ surface }: PlacedColor): boolean => surface.surface === 'plinth';

/** How firmly some fault stands, and how firmly this one by its name. */
function standingOf(pair: InstalledPair, holds: Holds): readonly [some: Firmness, named: Firmness] {
  const standing = holds.installed(placedPairKey(pair));
  const isUnsure = !isMeasuredPair(pair) || isLoose(pair.a.color) || isLoose(pair.b.color);
  return [firmnessOf(standing?.fault ?? null), firmnessOf(standing?.same ?? null, isUnsure)];
}

function ownFault(group: PairGroup<InstalledPair>, holds: Holds): Warning {
  const { a, b, tintOff } = group.worst;
  const standing = holds.installed(placedPairKey(group.worst));
  const measured = isMeasuredPair(group.worst);
  const [some, named] = standingOf(group.worst, holds);
  const sides = [a.color, group.aSurfaces, b.color, group.bSurfaces] as const;
  const text =
    some === 'open'
      ? `Cannot tell whether ${phrases(group)} work against each other in this light: ${reasonOf(measured)}. ${compareWords('in this light', group.aSurfaces, group.bSurfaces)}`
      : named === 'open'
        ? inThisLight(someFaultSentence(standing!.faults, tintOff, ...sides))
        : inThisLight(faultSentence(tintOff, ...sides, named !== 'firm'));
  const isDrawnOrFirm = standing !== null || named === 'firm';
  const graveAtMost: Severity = measured && named !== 'open' && isDrawnOrFirm ? 'grave' : 'visible';
  const shares = group.pairs.map((p) => holds.installed(placedPairKey(p))?.same ?? null);
  return {
    code: some === 'open' ? 'cannot-tell' : faultCode(tintOff.verdict)!,
    severity: atMost(graveAtMost, tintOff.severity!),
    surfaces: inDecisionOrder([...group.aSurfaces, ...group.bSurfaces]),
    text,
    reason: `${pairReason(tintOff)}${areApart(group.worst) ? APART_REASON : ''}${measured ? '' : ' What this light makes of a finish is guessed from its color.'}`,
    why: `${pairWhy(tintOff, AS_INSTALLED)} The tint of each place is taken off.${measured ? '' : ` ${GUESSED}`}`,
    basis: 'installed',
    holds_in: shares.includes(null) ? null : Math.min(...shares.map((x) => x!)),
  };
}

const isMeasuredPair = ({ a, b }: InstalledPair): boolean => isMeasured(a) && isMeasured(b);

const isMeasured = ({ surface }: PlacedColor): boolean =>
  surface.finish.components.every((c) => c.spectrumSource === 'measured');

const phrases = ({ worst: { a, b }, aSurfaces, bSurfaces }: PairGroup<InstalledPair>): string =>
  joined([componentPhrase(a.color.role, aSurfaces).text, componentPhrase(b.color.role, bSurfaces).text]);

const inThisLight = (sentence: string): string =>
  `In this light, ${sentence.charAt(0).toLowerCase()}${sentence.slice(1)}`;

const reasonOf = (measured: boolean): string =>
  measured ? 'they stand too close to the limit' : 'the color of a sample does not say what other light makes of it';

/** Ends the reason of a finding that rests on curves made up for a color. */
const GUESSED = 'The spectra are guessed from the colors, so it was tried with the curves that such colors may have.';

/** Whites that go together as samples and by the nominal curves, but not by all plausible ones: one note for all. */
function openInLight(pairs: readonly InstalledPair[], samples: readonly JudgedPair[], holds: Holds): Warning[] {
  const said = new Set(samples.filter((p) => shownVerdict(p, holds.pair(keyOf(p))) === 'cannot-tell').map(keyOf));
  const isOpen = (share: number) => firmnessOf(share) === 'open';
  const open = pairs.filter((p) => {
    const standing = holds.installed(placedPairKey(p));
    return standing && !isOwnFault(p) && areWhitesAtHand(p) && isOpen(standing.fineByCurves) && !said.has(keyOf(p));
  });
  if (open.length === 0) return [];
  const surfaces = inDecisionOrder(open.flatMap((p) => [p.a.surface.surface, p.b.surface.surface]));
  const who = surfacesPhrase(surfaces).text;
  const least = Math.min(...open.map((p) => holds.installed(placedPairKey(p))!.fine));
  const leastByCurves = Math.min(...open.map((p) => holds.installed(placedPairKey(p))!.fineByCurves));
  const reason = reasonOf(open.every((p) => isMeasured(p.a) && isMeasured(p.b)));
  return [
    {
      code: 'cannot-tell',
      severity: 'note',
      surfaces,
      text: `Cannot tell how the whites of ${who} sit together in this light: ${reason}. ${compareWords('in this light', ...surfaces.map((s) => [s]))}`,
      reason: 'As samples they agree; whether they do in this light, their colors alone do not say.',
      why:
        `As samples they agree; in this light they do in ${percent(leastByCurves)} of the curves that such colors may have, ` +
        `${AS_INSTALLED}.`,
      basis: 'installed',
      holds_in: least,
    },
  ];
}

const keyOf = (p: Pick<JudgedPair, 'a' | 'b'>): string => pairKey(p.a.color, p.b.color);
