import type { Lot } from '../../model/order/records';

/** Something of a lot that came otherwise than agreed. */
export interface LotDifference {
  readonly what: string;
  readonly agreed: string;
  readonly came: string;
}

const NAMES: { readonly [K in keyof Lot]-?: string } = {
  batch: 'Batch',
  shade: 'Shade',
  calibre: 'Calibre',
  slabs: 'Slab numbers',
};

/** What of a delivery is not as agreed, as far as both were written down. */
export const deliveryDifferences = (lot: Lot = {}, delivery: Lot): readonly LotDifference[] =>
  (Object.keys(NAMES) as (keyof Lot)[]).flatMap((name) => {
    const [agreed, came] = [lot[name]?.trim(), delivery[name]?.trim()];
    return agreed && came && agreed !== came ? [{ what: NAMES[name], agreed, came }] : [];
  });
