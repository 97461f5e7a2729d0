import type { SurfaceId } from '../surface';
import type { Holds, PairHolds } from './claims';
import { areApart } from './meets';
import { type JudgedPair, type PlacedColor, pairKey } from './pairs';
import { isNearWhite } from './sample-color';
import { SEVERITY_RANK } from './severity';
import { inDecisionOrder } from './surface-words';

/** One finding: two finishes and a code, with the worst pair of their components and every surface it shows on. */
export interface PairGroup<P> {
  readonly worst: P;
  /** The worst of every two finishes in it. */
  readonly pairs: readonly P[];
  readonly aSurfaces: readonly SurfaceId[];
  readonly bSurfaces: readonly SurfaceId[];
}

/** What grouping needs of a pair: its two sides, and how bad it is. */
export interface Groupable {
  readonly a: PlacedColor;
  readonly b: PlacedColor;
}

/** Order of gravity of two judgments with the same code; larger is worse. */
export function gravity(judgment: JudgedPair['judgment']): number {
  const n = judgment.numbers;
  const size = judgment.verdict === 'pulls-apart' ? n['hue_apart_deg']! / 1000 : Math.abs(n['d_wid'] ?? 0) / 1000;
  return (judgment.severity ? SEVERITY_RANK[judgment.severity] : -1) + Math.min(0.99, size);
}

/**
 * Merges pairs of the same two finishes and code; `weigh` tells the worst, larger is worse. What is apart is left out where
 * the same is to be said of surfaces that are not.
 */
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
  return [...groups.values()].map((all) => {
    const near = all.filter((p) => !areApart(p));
    const group = near.length > 0 ? near : all;
    const worst = group.reduce((w, p) => (weigh(p) > weigh(w) ? p : w));
    const surfacesOf = (finish: string): SurfaceId[] =>
      inDecisionOrder(
        group.flatMap((p) => [p.a, p.b].filter((c) => c.color.finish === finish).map((c) => c.surface.surface)),
      );
    return {
      worst,
      pairs: [worst],
      aSurfaces: surfacesOf(worst.a.color.finish),
      bSurfaces: surfacesOf(worst.b.color.finish),
    };
  });
}

/** The side of a pair that several findings have in common. */
export type SharedSide = 'a' | 'b';

/**
 * Groups that say the same of one finish against several become one, with the surfaces of all the others.
 * @param sharedOf which side is that finish; null keeps a group apart
 * @param kindOf what is said: only groups of one kind merge
 * @param weigh tells the worst, larger is worse
 */
export function mergeGroups<P extends Groupable>(
  groups: readonly PairGroup<P>[],
  sharedOf: (pair: P) => SharedSide | null,
  kindOf: (pair: P) => string,
  weigh: (pair: P) => number,
): PairGroup<P>[] {
  const merged = new Map<string, PairGroup<P>[]>();
  groups.forEach((group, i) => {
    const shared = sharedOf(group.worst);
    const own = shared && group.worst[shared].color;
    const other = shared && group.worst[otherSide(shared)].color;
    // "The veins of" stands for one finish only.
    const key =
      own && other!.role === 'base'
        ? `${kindOf(group.worst)}|${own.finish}|${own.role}|${areApart(group.worst)}`
        : `${i}`;
    merged.set(key, [...(merged.get(key) ?? []), group]);
  });
  return [...merged.values()].map((same) => {
    const [first] = same;
    if (same.length === 1) return first!;
    const worst = same.map((g) => g.worst).reduce((w, p) => (weigh(p) > weigh(w) ? p : w));
    const shared = sharedOf(worst)!;
    const surfaces = (isShared: boolean) =>
      inDecisionOrder(same.flatMap((g) => ((sharedOf(g.worst) === 'a') === isShared ? g.aSurfaces : g.bSurfaces)));
    const [own, others] = [surfaces(true), surfaces(false)];
    return {
      worst,
      pairs: same.flatMap((g) => g.pairs),
      aSurfaces: shared === 'a' ? own : others,
      bSurfaces: shared === 'a' ? others : own,
    };
  });
}

export const otherSide = (side: SharedSide): SharedSide => (side === 'a' ? 'b' : 'a');

/** Whites that people see against each other; a ceiling is out of reach. */
export const areWhitesAtHand = (p: Groupable): boolean =>
  [p.a, p.b].every((c) => isNearWhite(c.color) && c.surface.surface !== 'ceiling') && !areApart(p);

/** How firmly a pair of samples stands; null while not drawn. */
export const holdsOf = (p: JudgedPair, holds: Holds): PairHolds | null => holds.pair(pairKey(p.a.color, p.b.color));
