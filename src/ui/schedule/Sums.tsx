import type { ScheduleRow } from '../../kitchen/schedule/types';
import { SCHEDULE } from '../words/schedule';
import { sumsOf } from './sums-of';

/** What the prices that are known come to, and how many items have none. */
export function Sums({ rows }: { readonly rows: readonly ScheduleRow[] }) {
  const { words, priced, all } = sumsOf(rows);
  if (priced === 0) return <p className="small quiet items-sums">{SCHEDULE.noSums}</p>;
  return (
    <p className="small items-sums">
      {SCHEDULE.sums}: <b>{words.join(' + ')}</b> <span className="quiet">({SCHEDULE.sumOf(priced, all)})</span>
    </p>
  );
}
