import type { Price, PriceUnit } from '../../model/price';
import type { Supply } from '../../model/project';
import { localeNow, spoken } from './spoken';

/** Words of prices. What a source says of a price is said, and nothing else: no tax, no other currency. */
export const PRICE = spoken({
  /** Behind an amount. */
  per: {
    m2: 'm²',
    ft2: 'sq ft',
    m: 'm',
    ft: 'ft',
    L: 'L',
    gal: 'gal',
    kg: 'kg',
    piece: 'piece',
    pack: 'pack',
    slab: 'slab',
  } satisfies { readonly [U in PriceUnit]: string },
  /** To choose from. */
  units: {
    m2: 'Square meter',
    ft2: 'Square foot',
    m: 'Meter run',
    ft: 'Foot run',
    L: 'Liter',
    gal: 'US gallon',
    kg: 'Kilogram',
    piece: 'Piece',
    pack: 'Pack',
    slab: 'Slab',
  } satisfies { readonly [U in PriceUnit]: string },
  asSold: 'As it is sold',
  amount: 'Price',
  currency: 'Currency',
  currencyHint: 'USD, EUR',
  unit: 'Price is for',
  notAmount: 'Price: give one amount, like 34.50.',
  notCurrency: 'Currency: give its three letters, like USD, GBP or EUR.',
  apart: (kind: string, others: number) =>
    `In order: prices ${kind}. ${others === 1 ? 'One' : others} in another currency or for another unit ${others === 1 ? 'stands' : 'stand'} apart below: nothing is converted.`,
  /** Bands in words: a sign would be that of one currency. */
  bands: { $: 'Low price', $$: 'Middle price', $$$: 'High price' } satisfies {
    readonly [B in NonNullable<Supply['price_band']>]: string;
  },
  kind: (currency: string, per: string) =>
    [currency && `in ${currency}`, per && `for each ${per}`].filter(Boolean).join(' ') || 'without a currency',
} as const);

/** Digits of an amount at most: some prices have more than their currency has coins. */
const MOST_DIGITS = 4;

/** "€34.50 / m²", "$1,249.00", "12.00". */
export function priceWords({ amount, currency, per }: Price): string {
  const style = currency ? ({ style: 'currency', currency } as const) : ({ minimumFractionDigits: 2 } as const);
  const money = new Intl.NumberFormat(localeNow(), { ...style, maximumFractionDigits: MOST_DIGITS }).format(amount);
  return per ? `${money} / ${PRICE.per[per]}` : money;
}

/** The price where there is one, else its band; null where nothing is said. */
export const priceOrBand = (supply: Supply | undefined): string | null =>
  supply?.price ? priceWords(supply.price) : supply?.price_band ? bandWords(supply.price_band) : null;

/** A band in words: "Low price". */
export const bandWords = (band: string): string => PRICE.bands[band as NonNullable<Supply['price_band']>];

/** What prices of one kind are in: "in EUR for each m²". */
export const priceKindWords = ({ currency = '', per }: Price): string =>
  PRICE.kind(currency, per ? PRICE.per[per] : '');
