import type { ScheduleRow } from '../../kitchen/schedule/types';
import { priceWords } from '../words/price';
import { SCHEDULE } from '../words/schedule';

/** What the prices that are known come to, each currency by itself: nothing is converted, and what has no price is counted. */
export function Sums({ rows }: { readonly rows: readonly ScheduleRow[] }) {
  const bought = rows.filter(({ state, finish, kind }) => state !== 'fixed' && (finish !== null || kind === 'extra'));
  const priced = bought.flatMap(({ total }) => total ?? []);
  if (priced.length === 0) return <p className="small quiet items-sums">{SCHEDULE.noSums}</p>;
  const sums = new Map<string, number>();
  for (const { amount, currency } of priced) {
    const name = currency ?? '';
    sums.set(name, (sums.get(name) ?? 0) + amount);
  }
  const words = [...sums].map(([currency, amount]) => priceWords({ amount, ...(currency !== '' && { currency }) }));
  return (
    <p className="small items-sums">
      {SCHEDULE.sums}: <b>{words.join(' + ')}</b>{' '}
      <span className="quiet">({SCHEDULE.sumOf(priced.length, bought.length)})</span>
    </p>
  );
}
