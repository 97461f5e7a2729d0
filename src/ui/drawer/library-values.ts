import type { FinishClass } from '../../engine/finish/types';
import type { Finish } from '../../model/project';

/** What there is to choose from in a library. */
export interface LibraryValues {
  readonly classes: readonly FinishClass[];
  readonly prices: readonly string[];
  readonly availabilities: readonly string[];
}

export const libraryValues = (finishes: readonly Finish[]): LibraryValues => ({
  classes: distinct(finishes.map((finish) => finish.class)),
  prices: [...distinct(finishes.map((finish) => finish.supply?.price_band))].sort(),
  availabilities: distinct(finishes.map((finish) => finish.supply?.availability)),
});

const distinct = <T>(values: readonly (T | undefined)[]): readonly T[] =>
  [...new Set(values)].filter((value) => value !== undefined);
