import type { Problem } from '../engine/result';
import { type Bounds, checkNumber } from './check-number';

/** What a price is for. Square and running feet, U.S. gallons; a pack, a slab and a piece are those of the finish. */
export const PRICE_UNITS = ['m2', 'ft2', 'm', 'ft', 'L', 'gal', 'kg', 'piece', 'pack', 'slab'] as const;
export type PriceUnit = (typeof PRICE_UNITS)[number];

/** A price as its source gives it. Nothing is said of tax, and nothing is ever converted. */
export interface Price {
  readonly amount: number;
  /** ISO 4217, three capitals; absent where the source does not say. */
  readonly currency?: string;
  /** Absent: for one of what it is sold by (`Supply.unit`). */
  readonly per?: PriceUnit;
}

/** No finish costs more; a mistyped code would. */
export const PRICE_AMOUNT: Bounds = [0, 1_000_000, ''];

export function checkPrice({ amount, currency }: Pick<Price, 'amount' | 'currency'>, path: string): readonly Problem[] {
  const isCode = currency === undefined || /^[A-Z]{3}$/.test(currency);
  return [...checkNumber(amount, PRICE_AMOUNT, `${path}.amount`), ...(isCode ? [] : [noCurrency(currency, path)])];
}

const noCurrency = (currency: string, path: string): Problem => ({
  code: 'no-currency',
  text: `${path}.currency is "${currency}", no code of a currency.`,
  at: { path: `${path}.currency` },
  remedy: 'Write three capital letters (ISO 4217), like USD, GBP or EUR.',
});

/** Whether amounts can be held against each other: only in the same currency, for the same. */
export const isSameKind = (a: Price, b: Price): boolean => a.currency === b.currency && a.per === b.per;
