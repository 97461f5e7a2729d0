import { useState } from 'react';
import type { ScheduleRow } from '../../kitchen/schedule/types';
import { DECISION_STEPS } from '../../model/decision-order';
import { Choices } from '../parts/Choices';
import { SCHEDULE } from '../words/schedule';
import { ExtraForm } from './ExtraForm';
import { ItemRow } from './ItemRow';
import { orderText } from './quantity-text';
import { elementText } from './row-words';
import { Sums } from './Sums';
import type { ScheduleDoors } from './schedule-props';

type Order = 'installing' | 'deciding' | 'ordering';

/** Every item on a line that opens; in the order of installing, of deciding, or of ordering. */
export function ItemList(doors: ScheduleDoors) {
  const [order, setOrder] = useState<Order>('installing');
  const [open, setOpen] = useState<string | null>(null);
  const { rows, superseded } = doors.schedule;
  return (
    <div className="items">
      <div className="items-order">
        <span className="label" aria-hidden="true">
          {SCHEDULE.order}
        </span>
        <Choices label={SCHEDULE.order} choices={SCHEDULE.orders} chosen={order} onChoose={setOrder} />
        <Sums rows={rows} />
      </div>
      <ul className="items-list" aria-label={SCHEDULE.list}>
        {inOrder(rows, order).map((row) => (
          <ItemRow
            key={row.id}
            row={row}
            doors={doors}
            isOpen={open === row.id}
            onOpen={(isOpen) => setOpen(isOpen ? row.id : null)}
          />
        ))}
      </ul>
      {doors.past === null && <ExtraForm doors={doors} onAdded={setOpen} />}
      {superseded.length > 0 && (
        <section className="items-gone" aria-label={SCHEDULE.superseded}>
          <h3>{SCHEDULE.superseded}</h3>
          <ul>
            {superseded.map((row) => (
              <li key={`${row.id} ${row.revision} ${row.item}`} className="small">
                <s>
                  <b className="tag">{row.id}</b> {elementText(row)}: {row.item}
                </s>{' '}
                <span className="quiet">
                  {SCHEDULE.supersededRow(
                    row.revision,
                    row.order && orderText({ order: row.order }),
                    row.approved?.by ?? null,
                  )}
                </span>
              </li>
            ))}
          </ul>
        </section>
      )}
    </div>
  );
}

/** After every day there is. */
const NEVER = '9999';

function inOrder(rows: readonly ScheduleRow[], order: Order): readonly ScheduleRow[] {
  if (order === 'installing') return rows;
  const key =
    order === 'ordering'
      ? (row: ScheduleRow) => row.order_by ?? NEVER
      : (row: ScheduleRow) => `${row.state === 'fixed' ? 0 : 1}${stepOf(row)}`;
  return [...rows].sort((a, b) => (key(a) < key(b) ? -1 : key(a) > key(b) ? 1 : 0));
}

/** Where a row stands in the order of deciding; what no surface shows comes last. */
function stepOf({ surfaces: [first] }: ScheduleRow): number {
  const at = DECISION_STEPS.findIndex(({ surfaces }) => first !== undefined && surfaces.includes(first));
  return at < 0 ? DECISION_STEPS.length : at;
}
