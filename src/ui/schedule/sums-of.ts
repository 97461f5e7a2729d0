import type { ScheduleRow } from '../../kitchen/schedule/types';
import { priceWords } from '../words/price';

/** What the prices that are known come to. */
export interface Sums {
  /** One a currency: nothing is converted. */
  readonly words: readonly string[];
  readonly priced: number;
  /** Items that are bought at all. */
  readonly all: number;
}

export function sumsOf(rows: readonly ScheduleRow[]): Sums {
  const bought = rows.filter(({ state, finish, kind }) => state !== 'fixed' && (finish !== null || kind === 'extra'));
  const totals = bought.flatMap(({ total }) => total ?? []);
  const sums = new Map<string, number>();
  for (const { amount, currency } of totals) sums.set(currency ?? '', (sums.get(currency ?? '') ?? 0) + amount);
  return {
    words: [...sums].map(([currency, amount]) => priceWords({ amount, ...(currency !== '' && { currency }) })),
    priced: totals.length,
    all: bought.length,
  };
}
