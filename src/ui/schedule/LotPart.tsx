import { deliveryDifferences } from '../../kitchen/schedule/delivery-differences';
import type { ItemRecord, Lot } from '../../model/order/records';
import { Menu } from '../drawer/Menu';
import { capital } from '../words/numbers';
import { ITEM } from '../words/schedule-item';
import type { ChangeItem } from './change-item';
import { TextField } from './TextField';

const LOT = ['batch', 'shade', 'calibre', 'slabs'] as const;
const OUTCOMES = ['none', 'accepted', 'rejected'] as const;

/** The lot that was agreed, what came of it, and where the two differ. */
export function LotPart({
  record,
  change,
  today,
}: {
  readonly record: ItemRecord;
  readonly change: ChangeItem;
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
