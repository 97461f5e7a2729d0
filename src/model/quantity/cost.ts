import type { Price, PriceUnit } from '../price';
import { type Measure, type SizeOfOne, toMeasure } from './measures';
import type { Order } from './order';

/** Why there is no cost: no price is known; the price is for something the order cannot be told in. */
export type NoCost = 'no-price' | 'other-unit';

/** What an order costs, in the currency of its price where that says one; or why that cannot be told. */
export type Cost =
  | { readonly amount: number; readonly currency?: string }
  | { readonly amount: null; readonly reason: NoCost };

/** Price times what is bought: whole packs where packs are known. Nothing is said of tax, and no currency is converted. */
export function costOf(price: Price | undefined, order: Order, one: SizeOfOne = {}): Cost {
  if (!price) return { amount: null, reason: 'no-price' };
  const billed = billedQuantity(price.per, order, one);
  if (billed === null) return { amount: null, reason: 'other-unit' };
  return { amount: price.amount * billed, ...(price.currency !== undefined && { currency: price.currency }) };
}

/** How many of what the price is for; a price for nothing in particular is for one of what the finish is sold by. */
function billedQuantity(per: PriceUnit | undefined, order: Order, one: SizeOfOne): number | null {
  if (per === 'pack') return order.packs;
  if (per !== undefined) return toMeasure(order.bought, order.measure, per satisfies Measure, one);
  if (!order.pack) return null;
  return order.pack.container === null ? order.bought : order.packs;
}
