import type { ScheduleRow } from '../../kitchen/schedule/types';
import type { ItemPrice, ItemRecord } from '../../model/order/records';
import { PRICE_UNITS } from '../../model/price';
import type { Supply } from '../../model/project';
import { Menu } from '../drawer/Menu';
import { PRICE } from '../words/price';
import { ITEM } from '../words/schedule-item';
import type { ChangeItem } from './change-item';
import { PriceFields } from './PriceFields';
import { TextField } from './TextField';

interface SupplyPartProps {
  readonly row: ScheduleRow;
  /** How the finish itself is sold; what is typed here is said of this item alone. */
  readonly listed: Supply;
  readonly record: ItemRecord;
  readonly change: ChangeItem;
}

const SOLD = 'sold';

/** From whom an item comes, in what it is sold, and what it was offered for. */
export function SupplyPart({ row, listed, record, change }: SupplyPartProps) {
  const { price } = record;
  const text = (name: 'supplier' | 'code' | 'unit', label: string) => (
    <TextField
      label={label}
      value={record[name] ?? ''}
      hint={listed[name] ?? ITEM.notKnown}
      onText={(value, continues) => change({ [name]: value === '' ? undefined : value }, continues)}
    />
  );
  // What is offered for all of it is offered for it as it is now.
  const priced = ({ of: _, ...price }: ItemPrice): ItemPrice =>
    price.per === 'all' ? { ...price, of: row.spec } : price;
  return (
    <section className="item-part">
      <h3>{ITEM.supply}</h3>
      <div className="item-fields">
        {text('supplier', ITEM.supplier)}
        {text('code', ITEM.code)}
        {row.kind !== 'count' && text('unit', ITEM.soldAs)}
        <PriceFields<ItemPrice>
          price={price}
          usual={listed.price}
          hint={row.unit_price ? String(row.unit_price.amount) : ITEM.notKnown}
          onPrice={(next) => change({ price: next && priced(next) })}
        />
        {price && (
          <Menu
            label={PRICE.unit}
            value={price.per ?? SOLD}
            choices={[
              ['all', ITEM.priceOfAll],
              [SOLD, ITEM.priceOfSold],
              ...PRICE_UNITS.map((unit) => [unit, PRICE.units[unit]] as const),
            ]}
            onChoose={(per) => {
              const { per: _, ...rest } = price;
              change({ price: priced(per === SOLD ? rest : { ...rest, per }) });
            }}
          />
        )}
      </div>
    </section>
  );
}
