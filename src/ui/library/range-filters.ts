import type { Provenance } from '../../engine/finish/types';
import { codeOf } from '../../model/merge-finishes';
import type { Finish } from '../../model/project';
import { type FinishFilters, filterCount, fits, lrvRange, NO_FILTERS, passes } from '../drawer/finish-filters';
import { nameOf, nearLrv } from './near-lrv';
import { sortByPrice } from './price-order';

/** What is shown of a library that one looks after. */
export interface RangeFilters extends FinishFilters {
  readonly provenance: Provenance | 'all';
}

export const NO_RANGE_FILTERS: RangeFilters = { ...NO_FILTERS, provenance: 'all' };

/** How many filters are set, the search apart. */
export const rangeFilterCount = (filters: RangeFilters): number =>
  filterCount(filters) + (filters.provenance === 'all' ? 0 : 1);

/** The finishes that pass, in their order. */
export function filterRange(finishes: readonly Finish[], filters: RangeFilters): readonly Finish[] {
  const { from, to } = lrvRange(filters.lrvFrom, filters.lrvTo);
  const bare = { ...filters, search: '', lrvFrom: '', lrvTo: '' };
  const isInLrv = (finish: Finish) => {
    if (from === 0 && to === 100) return true;
    const lrv = nearLrv(finish);
    return lrv === null || (lrv >= from && lrv <= to);
  };
  return finishes.filter(
    (finish) =>
      passes(finish, bare) &&
      (filters.provenance === 'all' || finish.provenance === filters.provenance) &&
      isInLrv(finish) &&
      fits(finish, filters.search),
  );
}

export const RANGE_ORDERS = ['library', 'name', 'code', 'lrv', 'sheen', 'price', 'lead'] as const;
export type RangeOrder = (typeof RANGE_ORDERS)[number];

const collator = new Intl.Collator('en-US', { numeric: true, sensitivity: 'base' });

/** In another order; what has no value to sort by comes last either way. Equal ones stay as they were. */
export function sortRange(finishes: readonly Finish[], order: RangeOrder, isDown: boolean): readonly Finish[] {
  if (order === 'library') return isDown ? finishes.toReversed() : finishes;
  if (order === 'price') return sortByPrice(finishes, isDown);
  const keyed = finishes.map((finish) => ({ finish, key: KEYS[order](finish) }));
  const sign = isDown ? -1 : 1;
  return keyed
    .sort((a, b) => {
      if (a.key === null || b.key === null) return Number(a.key === null) - Number(b.key === null);
      return sign * compare(a.key, b.key);
    })
    .map(({ finish }) => finish);
}

const compare = (a: string | number, b: string | number): number =>
  typeof a === 'number' && typeof b === 'number' ? a - b : collator.compare(String(a), String(b));

const KEYS: { readonly [O in Exclude<RangeOrder, 'library' | 'price'>]: (finish: Finish) => string | number | null } = {
  name: nameOf,
  code: codeOf,
  lrv: nearLrv,
  sheen: ({ gloss_gu }) => gloss_gu,
  lead: ({ supply }) => supply?.lead_time_weeks ?? null,
};

/** The tags of a library, in order, each once. */
export const tagsOf = (finishes: readonly Finish[]): readonly string[] =>
  [...new Set(finishes.flatMap(({ tags }) => tags ?? []))].sort(collator.compare);
