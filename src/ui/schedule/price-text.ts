import type { ScheduleRow } from '../../kitchen/schedule/types';
import type { PriceUnit } from '../../model/price';
import { priceWords } from '../words/price';

type RowPrice = NonNullable<ScheduleRow['unit_price'] | ScheduleRow['total']>;

/** A price or a total of a row: "$60.00 / m²", "$49.00". */
export function rowPrice(price: RowPrice): string {
  const { amount, currency } = price;
  const per = 'per' in price ? (price.per as PriceUnit | null) : null;
  return priceWords({ amount, ...(currency && { currency }), ...(per && { per }) });
}
