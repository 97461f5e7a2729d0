import type { WarningCode } from '../../engine/judge/assessment';
import type { Outcome } from '../../engine/judge/relations/follows';
import { relationName } from '../../engine/judge/relations/relation-names';
import type { Relation } from '../../engine/judge/relations/types';
import { inDecisionOrder, joined, sentenceCase, surfacesPhrase } from '../../engine/judge/surface-words';
import type { SurfaceId } from '../../engine/surface';
import type { LibraryChange } from '../study/repairs/library-changes';

export interface RelationChange {
  readonly surfaces: readonly SurfaceId[];
  readonly from: string;
  readonly finish: string;
  readonly label: string;
}

/** One or two changes that mend more than they break; run as samples and as installed before they are offered. */
export interface RelationRepair {
  readonly changes: readonly RelationChange[];
  /** Relations that hold again, by id. */
  readonly mends: readonly string[];
  /** Relations that held, or were open, and break: the price. */
  readonly costs: readonly string[];
  /** Relations that were broken and are missed by much more. */
  readonly worsens: readonly string[];
  /** Relations that held and cannot be told any more. */
  readonly opens: readonly string[];
  /** How many of each count: what follows from others of the list does not. */
  readonly counts: Readonly<Record<keyof Outcome, number>>;
  /** What of the changed surfaces is decided already. */
  readonly decided: readonly SurfaceId[];
  readonly clears: readonly WarningCode[];
  /** Change and effect in plain sentences. */
  readonly text: string;
}

/** What is offered, in words. `all`: every relation it touches; `outcome`: those that count. */
export function relationRepair(
  made: readonly LibraryChange[],
  was: (surface: SurfaceId) => { readonly finish: string; readonly state: string },
  all: Outcome,
  outcome: Outcome,
  clears: readonly WarningCode[],
): RelationRepair {
  const changes = made.map(
    ({ surfaces, finish }): RelationChange => ({
      surfaces,
      from: was(surfaces[0]!).finish,
      finish: finish.id,
      label: finish.label,
    }),
  );
  const decided = inDecisionOrder(
    changes.flatMap(({ surfaces }) => surfaces).filter((s) => was(s).state === 'decided'),
  );
  const ids = (list: readonly Relation[]) => list.map(({ id }) => id);
  const { mends, costs, worsens, opens } = outcome;
  return {
    changes,
    mends: ids(all.mends),
    costs: ids(all.costs),
    worsens: ids(all.worsens),
    opens: ids(all.opens),
    counts: { mends: mends.length, costs: costs.length, worsens: worsens.length, opens: opens.length },
    decided,
    clears,
    text: [
      `${sentenceCase(joined(changes.map(({ surfaces, label }) => `${label} on ${surfacesPhrase(surfaces).text}`)))}:`,
      `mends ${counting(mends)}.`,
      costs.length === 0 ? 'Breaks none.' : `Breaks ${counting(costs)}.`,
      ...(worsens.length > 0 ? [`Makes worse ${counting(worsens)}.`] : []),
      ...(opens.length > 0 ? [`Leaves open ${counting(opens)}.`] : []),
      ...(decided.length > 0 ? [`That changes what is decided: ${surfacesPhrase(decided).text}.`] : []),
    ].join(' '),
  };
}

/** "2 (warm and cool, the edge between the floor and the fronts)". */
const counting = (list: readonly Relation[]): string => `${list.length} (${list.map(relationName).join('; ')})`;
