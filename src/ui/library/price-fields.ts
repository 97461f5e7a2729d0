import { failure, type Result, success } from '../../engine/result';
import { type PriceCell, priceInCell } from '../../io/sheet/price-cell';
import { checkPrice, type Price, type PriceUnit } from '../../model/price';
import { PRICE } from '../words/price';

/** A price as the form shows it. */
export interface PriceFields {
  readonly amount: string;
  readonly currency: string;
  readonly per: PriceUnit | '';
}

export const priceFields = (price: Price | undefined): PriceFields => ({
  amount: price ? amountText(price.amount) : '',
  currency: price?.currency ?? '',
  per: price?.per ?? '',
});

/** With the coins of most currencies, unless it is whole or has more digits. */
const amountText = (amount: number): string =>
  Number.isInteger(amount) || Number(amount.toFixed(2)) !== amount ? String(amount) : amount.toFixed(2);

/** The price as typed, undefined where none is; "€34.50/m²" in the field of the amount says the rest, too. */
export function typedPrice({ amount, currency, per }: PriceFields): Result<Price | undefined> {
  const typed = amount.trim();
  if (typed === '') return success(undefined);
  // Points part decimals here, whatever follows them.
  const read: PriceCell | null = /^\d*\.?\d+$/.test(typed)
    ? { is: 'price', amount: Number(typed), said: {}, mark: null }
    : priceInCell(typed, { mark: null, hasCurrency: currency !== '' });
  if (read?.is !== 'price') return wrong(PRICE.notAmount);
  const code = currency.trim().toUpperCase() || read.said.currency;
  const unit = per || read.said.per;
  const price = { amount: read.amount, ...(code && { currency: code }), ...(unit && { per: unit }) };
  const [problem] = checkPrice(price, PRICE.amount);
  return problem ? wrong(problem.code === 'no-currency' ? PRICE.notCurrency : PRICE.notAmount) : success(price);
}

const wrong = (text: string): Result<never> => failure({ code: 'out-of-range', text, remedy: '' });
