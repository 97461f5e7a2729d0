import { useState } from 'react';
import type { ScheduleRow } from '../../kitchen/schedule/types';
import { EXTRA_AMOUNT, LEAD_WEEKS } from '../../model/order/check-order';
import type { ExtraItem } from '../../model/order/records';
import { FITTING_STAGES } from '../../model/order/stages';
import { Menu } from '../drawer/Menu';
import { NumberField } from '../room/NumberField';
import { SCHEDULE } from '../words/schedule';
import { ITEM } from '../words/schedule-item';
import { PriceFields } from './PriceFields';
import type { ScheduleDoors } from './schedule-props';
import { TextField } from './TextField';
import { ToSettle } from './ToSettle';
import { within } from './within';

interface ExtraFormProps {
  readonly doors: ScheduleDoors;
  readonly onAdded: (id: string) => void;
}

/** By which something is ordered that no surface shows. */
export function ExtraForm({ doors, onAdded }: ExtraFormProps) {
  const [what, setWhat] = useState('');
  const add = () => {
    const id = `X${Math.max(0, ...doors.extras.map((extra) => Number(extra.id.slice(1)))) + 1}`;
    doors.onExtra({ id, what: what.trim(), stage: 'fittings' }, false);
    setWhat('');
    onAdded(id);
  };
  return (
    <form
      className="extra-form"
      onSubmit={(event) => {
        event.preventDefault();
        if (what.trim() !== '') add();
      }}
    >
      <TextField label={ITEM.newExtra} value={what} onText={setWhat} />
      <button type="submit" className="button button-outlined" disabled={what.trim() === ''}>
        {SCHEDULE.add}
      </button>
    </form>
  );
}

/** What may be said of such a thing. */
export function ExtraFields({ row, doors }: { readonly row: ScheduleRow; readonly doors: ScheduleDoors }) {
  const extra = doors.extras.find((one) => one.id === row.id);
  if (!extra) return null;
  const change = (changes: { readonly [K in keyof ExtraItem]?: ExtraItem[K] | undefined }, continues = false) =>
    doors.onExtra({ ...extra, ...changes } as ExtraItem, continues);
  const text = (name: 'where' | 'unit' | 'supplier' | 'code' | 'note', label: string) => (
    <TextField label={label} value={extra[name] ?? ''} onText={(value, on) => change({ [name]: value }, on)} />
  );
  return (
    <section className="item-part item-wide">
      <ToSettle problems={row.problems} />
      <div className="item-fields">
        <TextField
          label={ITEM.what}
          value={extra.what}
          onText={(what, on) => what.trim() !== '' && change({ what }, on)}
        />
        {text('where', ITEM.where)}
        <NumberField
          label={ITEM.amount}
          value={extra.quantity ?? null}
          onValue={(quantity) => within(quantity, EXTRA_AMOUNT, () => change({ quantity }))}
          onEmpty={() => within(0, EXTRA_AMOUNT, () => change({ quantity: undefined }))}
        />
        {text('unit', ITEM.unit)}
        <PriceFields price={extra.price} onPrice={(price) => change({ price })} />
        {text('supplier', ITEM.supplier)}
        {text('code', ITEM.code)}
        <Menu
          label={ITEM.stage}
          value={extra.stage}
          choices={FITTING_STAGES.map((stage) => [stage, SCHEDULE.stages[stage]] as const)}
          onChoose={(stage) => change({ stage })}
        />
        <NumberField
          label={ITEM.lead}
          unit={ITEM.weeks}
          value={extra.lead_time_weeks ?? null}
          onValue={(weeks) =>
            within(weeks, [LEAD_WEEKS[0], LEAD_WEEKS[1], ITEM.weeks], () => change({ lead_time_weeks: weeks }))
          }
          onEmpty={() => within(0, LEAD_WEEKS, () => change({ lead_time_weeks: undefined }))}
        />
        <TextField
          label={ITEM.orderedOn}
          type="date"
          value={extra.ordered_on ?? ''}
          onText={(ordered_on, on) => change({ ordered_on }, on)}
        />
        {text('note', ITEM.note)}
      </div>
      <button type="button" className="button button-plain" onClick={() => doors.onRemoveExtra(row.id)}>
        {ITEM.remove}
      </button>
    </section>
  );
}
