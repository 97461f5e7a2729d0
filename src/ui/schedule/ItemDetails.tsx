import { deliveryDifferences } from '../../kitchen/schedule/delivery-differences';
import type { ScheduleRow } from '../../kitchen/schedule/types';
import { LEAD_WEEKS, SPARE_PACKS, WASTE_PERCENT } from '../../model/order/check-order';
import type { ItemRecord, Lot } from '../../model/order/records';
import { Menu } from '../drawer/Menu';
import { NumberField } from '../room/NumberField';
import { PROVENANCE_SHORT, STATE_WORDS } from '../words/finishes';
import { brief, capital } from '../words/numbers';
import { ITEM, SCHEDULE } from '../words/schedule';
import { retold } from '../words/spoken';
import { dayText } from './day-text';
import { MadeList } from './MadeList';
import { rowPrice } from './price-text';
import { SlabPlan } from './SlabPlan';
import type { ScheduleDoors } from './schedule-props';
import { TextField } from './TextField';
import { ToSettle } from './ToSettle';
import { within } from './within';

interface ItemDetailsProps {
  readonly row: ScheduleRow;
  readonly doors: ScheduleDoors;
}

const STATES = ['fixed', 'open', 'decided', 'ordered'] as const;
const LOT = ['batch', 'shade', 'calibre', 'slabs'] as const;
const OUTCOMES = ['none', 'accepted', 'rejected'] as const;

/** All there is to say of an item, and what one may say of it. */
export function ItemDetails({ row, doors }: ItemDetailsProps) {
  const { finish, quantity } = row;
  const record: ItemRecord = doors.records.find((one) => one.item === row.id && one.finish === finish) ?? {
    item: row.id,
    finish: finish ?? '',
  };
  const change = (changes: { readonly [K in keyof ItemRecord]?: ItemRecord[K] | undefined }, continues = false) =>
    doors.onRecord({ ...record, ...changes } as ItemRecord, continues);
  const isBought = finish !== null && row.state !== 'fixed';
  return (
    <>
      <ToSettle problems={row.problems} />
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
                label={quantity.slabs ? ITEM.spareSlabs : ITEM.spares}
                value={record.spare_packs ?? null}
                hint={`${quantity.order.spares}`}
                onValue={(packs) => within(packs, SPARE_PACKS, () => change({ spare_packs: Math.round(packs) }))}
                onEmpty={() => within(0, SPARE_PACKS, () => change({ spare_packs: undefined }))}
              />
            )}
          </div>
        </section>
      )}
      {isBought && <OrderPart row={row} record={record} change={change} />}
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

type Change = (changes: { readonly [K in keyof ItemRecord]?: ItemRecord[K] | undefined }, continues?: boolean) => void;

function FinishPart({ row }: { readonly row: ScheduleRow }) {
  const [color] = row.colors;
  const lines = [
    row.location && capital(retold(row.location)),
    row.size_mm && retold(`${row.size_mm.join(' × ')} mm`),
    row.thickness_mm !== null && retold(`${row.thickness_mm} mm`),
    row.lrv !== null && SCHEDULE.lrv(row.lrv.toFixed(0)),
    row.gloss_gu !== null && SCHEDULE.gloss(row.gloss_gu),
  ].filter((one): one is string => typeof one === 'string' && one !== '');
  return (
    <section className="item-part">
      <h3>{ITEM.finish}</h3>
      <p className="small">{lines.join(' · ')}</p>
      {color && (
        <p className="small">
          {SCHEDULE.color(...(color.lab_d65.map((one) => one.toFixed(1)) as [string, string, string]))}{' '}
          <span className="quiet">
            {PROVENANCE_SHORT[color.provenance]}, {SCHEDULE.off(color.uncertainty_de00.toFixed(1))}.{' '}
            {SCHEDULE.given(color.given)}.
          </span>
        </p>
      )}
      <p className="small">
        {[row.supplier ?? ITEM.notKnown, row.code].filter(Boolean).join(', ')}
        {' · '}
        {row.unit_price ? rowPrice(row.unit_price) : `${ITEM.price} ${ITEM.notKnown}`}
        {row.total && (
          <>
            {' · '}
            {SCHEDULE.total} <b>{rowPrice(row.total)}</b>
          </>
        )}
      </p>
    </section>
  );
}

function OrderPart({
  row,
  record,
  change,
}: {
  readonly row: ScheduleRow;
  readonly record: ItemRecord;
  readonly change: Change;
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

function LotPart({
  record,
  change,
  today,
}: {
  readonly record: ItemRecord;
  readonly change: Change;
  readonly today: string;
}) {
  const { lot = {}, delivery } = record;
  const differing = delivery ? deliveryDifferences(lot, delivery) : [];
  return (
    <section className="item-part item-wide">
      <h3>{ITEM.lot}</h3>
      <div className="item-fields">
        {LOT.map((name) => (
          <TextField
            key={name}
            label={ITEM[name]}
            value={lot[name] ?? ''}
            onText={(text, continues) => change({ lot: { ...lot, [name]: text } }, continues)}
          />
        ))}
      </div>
      <h3>{ITEM.delivery}</h3>
      <p className="small quiet">{ITEM.deliveryHow}</p>
      <div className="item-fields">
        <Menu
          label={ITEM.outcome}
          value={delivery?.outcome ?? 'none'}
          choices={OUTCOMES.map((one) => [one, capital(ITEM.outcomes[one])] as const)}
          onChoose={(outcome) =>
            change({ delivery: outcome === 'none' ? undefined : { on: today, ...delivery, outcome } })
          }
        />
        {delivery && (
          <>
            <TextField
              label={ITEM.deliveredOn}
              type="date"
              value={delivery.on}
              onText={(on, continues) => on !== '' && change({ delivery: { ...delivery, on } }, continues)}
            />
            <TextField
              label={ITEM.checkedBy}
              value={delivery.by ?? ''}
              onText={(by, continues) => change({ delivery: { ...delivery, by } }, continues)}
            />
            {LOT.map((name: keyof Lot) => (
              <TextField
                key={name}
                label={ITEM.came(ITEM[name])}
                value={delivery[name] ?? ''}
                onText={(text, continues) => change({ delivery: { ...delivery, [name]: text } }, continues)}
              />
            ))}
          </>
        )}
      </div>
      {differing.length > 0 && (
        <ul className="small item-differs">
          {differing.map(({ what, agreed, came }) => (
            <li key={what}>
              <b>{ITEM.differs(what, agreed, came)}</b>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}
