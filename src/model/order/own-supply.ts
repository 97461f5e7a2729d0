import type { Price } from '../price';
import type { Finish, Supply } from '../project';
import type { ItemPrice, ItemRecord } from './records';

/** A finish as it is bought for one item: with the supplier, code, pack and price that were agreed for it, where those differ. */
export function asBought(finish: Finish, record: ItemRecord | undefined): Finish {
  const { supplier, code, unit, price } = record ?? {};
  if (supplier === undefined && code === undefined && unit === undefined && price === undefined) return finish;
  const { pack, price: listed, ...rest } = finish.supply ?? {};
  const supply: Supply = {
    ...rest,
    // A number alone says how much is in the finish's own pack, and nothing of another one.
    ...(unit === undefined && pack !== undefined && { pack }),
    ...(price === undefined && listed && !(unit !== undefined && isForPack(listed)) && { price: listed }),
    ...(price && isForPart(price) && { price }),
    ...(supplier !== undefined && { supplier }),
    ...(code !== undefined && { code }),
    ...(unit !== undefined && { unit }),
  };
  return { ...finish, supply };
}

/** What the finish's own pack costs, which says nothing of another one. */
const isForPack = ({ per }: Price): boolean => per === undefined || per === 'pack';

/** A price for all of it leaves none for a part. */
const isForPart = (price: ItemPrice): price is ItemPrice & Price => price.per !== 'all';
