import type { ScheduleRow } from '../../kitchen/schedule/types';
import { SPARE_PACKS, WASTE_PERCENT } from '../../model/order/check-order';
import { recordOfItem } from '../../model/order/record-of';
import type { ItemRecord } from '../../model/order/records';
import { Menu } from '../drawer/Menu';
import { NumberField } from '../room/NumberField';
import { STATE_WORDS } from '../words/finishes';
import { capital } from '../words/numbers';
import { ITEM } from '../words/schedule-item';
import { retold } from '../words/spoken';
import type { ChangeItem } from './change-item';
import { FinishPart } from './FinishPart';
import { LotPart } from './LotPart';
import { MadeList } from './MadeList';
import { OrderPart } from './OrderPart';
import { SlabPlan } from './SlabPlan';
import { SupplyPart } from './SupplyPart';
import type { ScheduleDoors } from './schedule-props';
import { TextField } from './TextField';
import { ToSettle } from './ToSettle';
import { within } from './within';

interface ItemDetailsProps {
  readonly row: ScheduleRow;
  readonly doors: ScheduleDoors;
}

const SPARES = { slab: 'spareSlabs', panel: 'sparePanels' } as const;

const STATES = ['fixed', 'open', 'decided', 'ordered'] as const;

/** All there is to say of an item, and what one may say of it. */
export function ItemDetails({ row, doors }: ItemDetailsProps) {
  const { finish, quantity } = row;
  const record: ItemRecord = recordOfItem(row, finish, doors.records) ?? { item: row.id, finish: finish ?? '' };
  const change: ChangeItem = (changes, continues = false) =>
    doors.onRecord({ ...record, ...changes } as ItemRecord, continues);
  const isBought = finish !== null && row.state !== 'fixed';
  return (
    <>
      {/* That no price is known stands with the supply. */}
      <ToSettle problems={row.problems.filter(({ code }) => code !== 'no-price')} />
      {finish !== null && <FinishPart row={row} />}
      {quantity && (
        <section className="item-part">
          <h3>{ITEM.quantity}</h3>
          <ul className="small">
            {quantity.rests_on.map((text) => (
              <li key={text}>{retold(text)}</li>
            ))}
          </ul>
          {!quantity.slabs && quantity.parts.length > 0 && <MadeList parts={quantity.parts} />}
          {quantity.slabs && <SlabPlan slabs={quantity.slabs} />}
          <div className="item-fields">
            {!quantity.slabs && row.kind !== 'count' && row.kind !== 'fronts' && (
              <NumberField
                label={ITEM.wastePercent}
                unit={ITEM.percent}
                value={record.waste_percent ?? null}
                hint={`${quantity.waste_percent}`}
                onValue={(waste_percent) => within(waste_percent, WASTE_PERCENT, () => change({ waste_percent }))}
                onEmpty={() => within(0, WASTE_PERCENT, () => change({ waste_percent: undefined }))}
              />
            )}
            {quantity.order.packs !== null && (
              <NumberField
                label={quantity.slabs ? ITEM[SPARES[quantity.slabs.noun]] : ITEM.spares}
                value={record.spare_packs ?? null}
                hint={`${quantity.order.spares}`}
                onValue={(packs) => within(packs, SPARE_PACKS, () => change({ spare_packs: Math.round(packs) }))}
                onEmpty={() => within(0, SPARE_PACKS, () => change({ spare_packs: undefined }))}
              />
            )}
          </div>
        </section>
      )}
      {isBought && (
        <div className="item-column">
          <SupplyPart row={row} listed={doors.library.get(finish)?.supply ?? {}} record={record} change={change} />
          <OrderPart row={row} record={record} change={change} />
        </div>
      )}
      {isBought && <LotPart record={record} change={change} today={doors.today} />}
      <section className="item-part">
        <h3>{ITEM.approval}</h3>
        <div className="item-fields">
          {finish !== null && row.kind !== 'grout' && (
            <Menu
              label={ITEM.state}
              value={row.state}
              choices={STATES.map((state) => [state, capital(STATE_WORDS[state])] as const)}
              onChoose={(state) => doors.onState(row, state)}
            />
          )}
          {finish !== null && (
            <TextField
              label={ITEM.approvedBy}
              value={record.approved?.by ?? ''}
              onText={(by, continues) =>
                change(
                  {
                    approved:
                      by.trim() === '' ? undefined : { on: record.approved?.on ?? doors.today, by, of: row.spec },
                  },
                  continues,
                )
              }
            />
          )}
          {record.approved && (
            <TextField
              label={ITEM.approvedOn}
              type="date"
              value={record.approved.on}
              onText={(on, continues) => on !== '' && change({ approved: { ...record.approved!, on } }, continues)}
            />
          )}
        </div>
        {record.approved && row.approved === null && (
          <button
            type="button"
            className="button button-outlined"
            onClick={() => change({ approved: { ...record.approved!, on: doors.today, of: row.spec } })}
          >
            {ITEM.approveAnew(record.approved.by)}
          </button>
        )}
        <p className="small quiet">{ITEM.approvalMeans}</p>
        {finish !== null && (
          <TextField
            label={ITEM.note}
            lines={2}
            value={record.note ?? ''}
            onText={(note, continues) => change({ note }, continues)}
          />
        )}
      </section>
      {row.care.length + row.cautions.length > 0 && (
        <section className="item-part">
          <h3>{ITEM.cautions}</h3>
          <ul className="small">
            {[...row.cautions, ...row.care].map((text) => (
              <li key={text}>{retold(text)}</li>
            ))}
          </ul>
        </section>
      )}
    </>
  );
}
