import type { ScheduleRow } from '../../kitchen/schedule/types';
import { LEAD_WEEKS } from '../../model/order/check-order';
import type { ItemRecord } from '../../model/order/records';
import { NumberField } from '../room/NumberField';
import { brief } from '../words/numbers';
import { ITEM } from '../words/schedule-item';
import type { ChangeItem } from './change-item';
import { dayText } from './day-text';
import { TextField } from './TextField';
import { within } from './within';

/** When an item is needed, how long it takes to come, and when it was ordered. */
export function OrderPart({
  row,
  record,
  change,
}: {
  readonly row: ScheduleRow;
  readonly record: ItemRecord;
  readonly change: ChangeItem;
}) {
  return (
    <section className="item-part">
      <h3>{ITEM.ordering}</h3>
      <div className="item-fields">
        <NumberField
          label={ITEM.lead}
          unit={ITEM.weeks}
          value={record.lead_time_weeks ?? null}
          hint={row.lead_time_weeks === null ? ITEM.notKnown : brief(row.lead_time_weeks)}
          onValue={(weeks) =>
            within(weeks, [LEAD_WEEKS[0], LEAD_WEEKS[1], ITEM.weeks], () => change({ lead_time_weeks: weeks }))
          }
          onEmpty={() => within(0, LEAD_WEEKS, () => change({ lead_time_weeks: undefined }))}
        />
        <TextField
          label={ITEM.neededOn}
          type="date"
          value={record.needed_on ?? ''}
          onText={(needed_on, continues) => change({ needed_on }, continues)}
        />
        <TextField
          label={ITEM.orderedOn}
          type="date"
          value={record.ordered_on ?? ''}
          onText={(ordered_on, continues) => change({ ordered_on }, continues)}
        />
      </div>
      {!record.needed_on && row.needed_on && <p className="small quiet">{ITEM.neededByJob(dayText(row.needed_on))}</p>}
    </section>
  );
}
