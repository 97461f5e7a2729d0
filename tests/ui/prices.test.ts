import { afterEach, expect, it } from 'vitest';
import type { Candidate } from '../../src/engine/judge/shortlist/types';
import { isMet } from '../../src/engine/judge/shortlist/wishes';
import type { Price } from '../../src/model/price';
import type { Finish, Supply } from '../../src/model/project';
import { priceFields, typedPrice } from '../../src/ui/library/price-fields';
import { pricesApart, sortByPrice } from '../../src/ui/library/price-order';
import { leadTime } from '../../src/ui/words/lead-time';
import { PRICE, priceKindWords, priceOrBand, priceWords } from '../../src/ui/words/price';
import { setManner } from '../../src/ui/words/spoken';

afterEach(() => setManner({ words: 'us', unit: 'mm' }));

const finish = (id: string, supply?: Supply) => ({ id, supply }) as Finish;
const priced = (id: string, amount: number, currency?: string, per?: Price['per']) =>
  finish(id, { price: { amount, ...(currency && { currency }), ...(per && { per }) } });
const ids = (finishes: readonly Finish[]) => finishes.map(({ id }) => id).join(' ');

it('says a price with its currency and what it is for, and nothing it does not know', () => {
  expect(priceWords({ amount: 1249, currency: 'EUR', per: 'm2' })).toBe('€1,249.00 / m²');
  expect(priceWords({ amount: 12.5, currency: 'USD', per: 'ft2' })).toBe('$12.50 / sq ft');
  expect(priceWords({ amount: 1.249, currency: 'GBP', per: 'kg' })).toBe('£1.249 / kg');
  expect(priceWords({ amount: 34.5 })).toBe('34.50');
  expect(priceWords({ amount: 900, currency: 'JPY' })).toBe('¥900');
  expect(priceOrBand({ price: { amount: 5, currency: 'USD' }, price_band: '$$' })).toBe('$5.00');
  expect([priceOrBand({ price_band: '$$' }), priceOrBand({}), priceOrBand(undefined)]).toEqual([
    'Middle price',
    null,
    null,
  ]);
});

it('is never turned into another unit or currency by the words and units chosen', () => {
  setManner({ words: 'uk', unit: 'in' });
  expect(priceWords({ amount: 1249, currency: 'EUR', per: 'm2' })).toBe('€1,249.00 / m²');
  expect(priceWords({ amount: 12.5, currency: 'USD', per: 'm' })).toBe('US$12.50 / m');
  expect(PRICE.units.L).toBe('Litre');
  expect(PRICE.units.m2).toBe('Square metre');
});

it('sorts only what is in one currency for one unit; others stand apart, then bands, then what has none', () => {
  const all = [
    finish('none'),
    priced('e9', 9, 'EUR', 'm2'),
    priced('usd', 1, 'USD', 'm2'),
    finish('band2', { price_band: '$$' }),
    priced('e2', 2, 'EUR', 'm2'),
    priced('piece', 1, 'EUR', 'piece'),
    finish('band1', { price_band: '$' }),
    priced('e5', 5, 'EUR', 'm2'),
  ];
  expect(ids(sortByPrice(all, false))).toBe('e2 e5 e9 usd piece band1 band2 none');
  expect(ids(sortByPrice(all, true))).toBe('e9 e5 e2 usd piece band2 band1 none');
  const apart = pricesApart(all)!;
  expect(PRICE.apart(priceKindWords(apart.first), apart.others)).toBe(
    'In order: prices in EUR for each m². 2 in another currency or for another unit stand apart below: nothing is converted.',
  );
  expect(pricesApart(all.filter(({ id }) => /^e|^band/.test(id)))).toBeNull();
});

it('takes a price as typed, and gives it back', () => {
  const typed = (amount: string, currency = '', per: Price['per'] | '' = '') => {
    const read = typedPrice({ amount, currency, per });
    return read.ok ? (read.value ?? null) : read.problem.text;
  };
  expect(typed('')).toBeNull();
  expect(typed('34,50', 'eur', 'm2')).toEqual({ amount: 34.5, currency: 'EUR', per: 'm2' });
  expect(typed('€34.50/m²')).toEqual({ amount: 34.5, currency: 'EUR', per: 'm2' });
  expect(typed('1,249')).toEqual({ amount: 1249 });
  expect(typed('1.249')).toEqual({ amount: 1.249 });
  expect([typed('cheap'), typed('40-60'), typed('-1'), typed('2000000')]).toEqual(Array(4).fill(PRICE.notAmount));
  expect(typed('5', 'euros')).toBe(PRICE.notCurrency);
  for (const price of [{ amount: 1.249 }, { amount: 0, currency: 'USD', per: 'slab' }, undefined] as const) {
    expect(typedPrice(priceFields(price))).toEqual({ ok: true, value: price });
  }
});

it('does not take “not in stock” for a wish of “in stock”', () => {
  const met = (availability: string, words: string) =>
    isMet({ kind: 'availability', words }, { availability } as Candidate, []);
  expect([met('In stock', 'in stock'), met('Not in stock', 'in stock'), met('Not available', 'available')]).toEqual([
    true,
    false,
    false,
  ]);
  expect([met('In stock, 3 days', 'In stock'), met('Not in stock', 'not in stock')]).toEqual([true, true]);
});

it('lead times are said as one says them', () => {
  expect([0.5, 1, 2, 2.5, 3.25, 1000].map(leadTime)).toEqual([
    'half a week',
    '1 week',
    '2 weeks',
    '2½ weeks',
    '3.25 weeks',
    '1,000 weeks',
  ]);
});
