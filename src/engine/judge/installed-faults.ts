import type { Severity, Warning } from './assessment';
import { faultCode } from './claims';
import { AS_INSTALLED } from './number-words';
import type { PairJudgement } from './pair';
import { faultSentence } from './pair-sentences';
import { gravity, groupPairs } from './pair-warnings';
import { pairWhy } from './pair-why';
import { type InstalledPair, isMajor, type JudgedPair, type PlacedColor, pairKey } from './pairs';
import { inDecisionOrder } from './surface-words';

/** A fault between two whites that the surfaces around make: it goes when the tint of each place is taken off. */
export interface PlaceFault {
  readonly tinted: PlacedColor;
  readonly other: PlacedColor;
  readonly mixOff: PairJudgement;
  readonly tintOff: PairJudgement;
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
export const placeFaults = (pairs: readonly InstalledPair[]): PlaceFault[] =>
  pairs.flatMap(({ a, b, mixOff, tintOff }) => {
    if (!isMajor(a) || !isMajor(b)) return [];
    // Notes are ceilings: nobody holds a finish against them.
    if (mixOff.faulty === null || mixOff.severity === 'note' || faultCode(tintOff.verdict)) return [];
    const [tinted, other] = mixOff.faulty === 'a' ? [a, b] : [b, a];
    return [{ tinted, other, mixOff, tintOff }];
  });

/**
 * Faults that the finishes show in this light but not as samples: a fault as it is, and still one with the tint of each
 * place taken off. Resting on guessed spectra they are visible at most, and said with "may".
 */
export function installedFaultWarnings(pairs: readonly InstalledPair[], samples: readonly JudgedPair[]): Warning[] {
  const settled = new Set(
    samples
      .filter((p) => p.verdict === 'cannot-tell' || faultCode(p.verdict))
      .map((p) => pairKey(p.a.color, p.b.color)),
  );
  const charged = pairs.filter(
    (p) =>
      isMajor(p.a) &&
      isMajor(p.b) &&
      faultCode(p.raw.verdict) &&
      faultCode(p.tintOff.verdict) &&
      !settled.has(pairKey(p.a.color, p.b.color)),
  );
  return groupPairs(
    charged,
    (p) => faultCode(p.tintOff.verdict)!,
    (p) => gravity(p.tintOff),
  ).map((group) => {
    const { a, b, tintOff } = group.worst;
    const measured = [a, b].every((c) => c.surface.finish.components.every((x) => x.spectrumSource === 'measured'));
    const severity: Severity = !measured && tintOff.severity === 'grave' ? 'visible' : tintOff.severity!;
    const sentence = faultSentence(tintOff, a.color, group.aSurfaces, b.color, group.bSurfaces, !measured);
    return {
      code: faultCode(tintOff.verdict)!,
      severity,
      surfaces: inDecisionOrder([...group.aSurfaces, ...group.bSurfaces]),
      text: `In this light, ${sentence.charAt(0).toLowerCase()}${sentence.slice(1)}`,
      why: `${pairWhy(tintOff, AS_INSTALLED)} The tint of each place is taken off.`,
      basis: 'installed',
      holds_in: null,
    };
  });
}
