import type { FinishClass } from '../../engine/finish/types';
import type { Finish } from '../../model/project';

/** What there is to choose from in a library. */
export interface LibraryValues {
  readonly classes: readonly FinishClass[];
  readonly prices: readonly string[];
  readonly availabilities: readonly string[];
  readonly tags: readonly string[];
}

const known = new WeakMap<readonly Finish[], LibraryValues>();

/** Worked out once per list. */
export function libraryValues(finishes: readonly Finish[]): LibraryValues {
  const before = known.get(finishes);
  if (before) return before;
  const made: LibraryValues = {
    classes: distinct(finishes.map((finish) => finish.class)),
    prices: [...distinct(finishes.map((finish) => finish.supply?.price_band))].sort(),
    availabilities: distinct(finishes.map((finish) => finish.supply?.availability)),
    tags: [...distinct(finishes.flatMap((finish) => finish.tags ?? []))].sort(),
  };
  known.set(finishes, made);
  return made;
}

const distinct = <T>(values: readonly (T | undefined)[]): readonly T[] =>
  [...new Set(values)].filter((value) => value !== undefined);
