import type { Finish } from '../../model/project';
import { type Chosen, NONE_CHOSEN } from './choose-rows';
import { filterRange, NO_RANGE_FILTERS, type RangeFilters, type RangeOrder, sortRange } from './range-filters';

/** How a library is looked through, and what is chosen of it. */
export interface RangeLook {
  readonly filters: RangeFilters;
  readonly order: RangeOrder;
  readonly isDown: boolean;
  readonly chosen: Chosen;
  /** The finish that keys start from; null: the first. */
  readonly active: string | null;
  /** The list takes the focus when it comes. */
  readonly takesFocus: boolean;
}

export const START_OF_RANGE: RangeLook = {
  filters: NO_RANGE_FILTERS,
  order: 'library',
  isDown: false,
  chosen: NONE_CHOSEN,
  active: null,
  takesFocus: false,
};

export const shownOf = (
  finishes: readonly Finish[],
  { filters, order, isDown }: Pick<RangeLook, 'filters' | 'order' | 'isDown'>,
): readonly Finish[] => sortRange(filterRange(finishes, filters), order, isDown);
