import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import '../../seed';
import { meaningOfHeading } from '../../../src/io/sheet/field-of-heading';
import { PRICE_UNITS } from '../../../src/model/price';
import type { Supply } from '../../../src/model/project';
import { importOf } from './sample-files';

// Headings and cells as price lists have them in five languages: common practice, no source. Codes of currencies: ISO 4217.

/** What is kept of rows whose prices stand in one column, and what is told. */
function pricesOf(heading: string, cells: readonly string[]) {
  const rows = cells.map((cell, i) => `P${i}\t50\t0\t0\t${cell}`);
  const { kept, refused, notices } = importOf(`code\tL*\ta*\tb*\t${heading}\n${rows.join('\n')}`);
  expect(refused).toEqual([]);
  return {
    supplies: kept.map(({ finish }): Supply => finish.supply ?? {}),
    prices: kept.map(({ finish }) => finish.supply?.price ?? null),
    told: kept.map(({ notices: one }) => one.map(({ code }) => code)),
    notices: notices.map(({ code }) => code),
  };
}

const priceOf = (heading: string, cell: string) => pricesOf(heading, [cell]).prices[0];

it.each([
  ['Price', {}],
  ['price', {}],
  ['Price (USD/ft2)', { currency: 'USD', per: 'ft2' }],
  ['Price per sq. ft. (US$)', { currency: 'USD', per: 'ft2' }],
  ['Unit price', {}],
  ['List price £', { currency: 'GBP' }],
  ['RRP', {}],
  ['RRP (£/m²)', { currency: 'GBP', per: 'm2' }],
  ['MSRP $/gal', { currency: 'USD', per: 'gal' }],
  ['Price/m2', { per: 'm2' }],
  ['price_per_m2', { per: 'm2' }],
  ['Price each', { per: 'piece' }],
  ['Price CAD per linear foot', { currency: 'CAD', per: 'ft' }],
  ['Price 2026 (EUR)', { currency: 'EUR' }],
  ['Preis €/m²', { currency: 'EUR', per: 'm2' }],
  ['Preis (€ / qm)', { currency: 'EUR', per: 'm2' }],
  ['Preis pro Stück', { per: 'piece' }],
  ['Preis je lfd. m', { per: 'm' }],
  ['Quadratmeterpreis', { per: 'm2' }],
  ['Stückpreis in EUR', { currency: 'EUR', per: 'piece' }],
  ['Listenpreis', {}],
  ['UVP', {}],
  ['UVP inkl. MwSt.', {}],
  ['VK-Preis brutto', {}],
  ['EK netto', {}],
  ['EK', {}],
  ['Preis CHF/L', { currency: 'CHF', per: 'L' }],
  ['Prix TTC au m²', { per: 'm2' }],
  ['Prix public HT (€)', { currency: 'EUR' }],
  ['Tarif €/ml', { currency: 'EUR', per: 'm' }],
  ['Prix la boîte', { per: 'pack' }],
  ['Precio', {}],
  ['PVP', {}],
  ['Precio €/m2 (IVA incl.)', { currency: 'EUR', per: 'm2' }],
  ['Precio por caja', { per: 'pack' }],
  ['Prezzo al mq', { per: 'm2' }],
  ['Prezzo di listino €', { currency: 'EUR' }],
  ['Prezzo a lastra', { per: 'slab' }],
  ['€/m²', { currency: 'EUR', per: 'm2' }],
])('“%s” is a price', (heading, said) => {
  expect(meaningOfHeading(heading)?.field).toBe('price');
  expect(priceOf(heading, '34,50')).toEqual({ amount: 34.5, ...said });
});

it.each([
  'Enterprise',
  'Spring',
  'Price group',
  'Preisgruppe',
  'Priority',
  'Separate',
  'Freight cost center',
  '€',
  '$$',
  'EUR',
])('“%s” is no price', (heading) => {
  expect(meaningOfHeading(heading)?.field).not.toBe('price');
});

it.each([
  ['49.90', { amount: 49.9 }],
  ['49,90', { amount: 49.9 }],
  ['1.249,00 €', { amount: 1249, currency: 'EUR' }],
  ['€ 1,249.00', { amount: 1249, currency: 'EUR' }],
  ['1 249,00 €', { amount: 1249, currency: 'EUR' }],
  ['1 249,50 €', { amount: 1249.5, currency: 'EUR' }],
  ["CHF 1'249.50", { amount: 1249.5, currency: 'CHF' }],
  ['1.249.000', { amount: 1_249_000 / 1 }],
  ['£34.50/m2', { amount: 34.5, currency: 'GBP', per: 'm2' }],
  ['£34.50 per m²', { amount: 34.5, currency: 'GBP', per: 'm2' }],
  ['$ 12 per sq ft', { amount: 12, currency: 'USD', per: 'ft2' }],
  ['$12.50/sf', { amount: 12.5, currency: 'USD', per: 'ft2' }],
  ['US$ 8 / lin. ft.', { amount: 8, currency: 'USD', per: 'ft' }],
  ['C$ 12', { amount: 12, currency: 'CAD' }],
  ['12 CAD/sq. ft.', { amount: 12, currency: 'CAD', per: 'ft2' }],
  ['CHF 45.-', { amount: 45, currency: 'CHF' }],
  ['Fr. 45.—', { amount: 45, currency: 'CHF' }],
  ['45,- €', { amount: 45, currency: 'EUR' }],
  ['45,-- EUR / Stk.', { amount: 45, currency: 'EUR', per: 'piece' }],
  ['89 €/Paket', { amount: 89, currency: 'EUR', per: 'pack' }],
  ['34,90 € pro qm inkl. 19 % MwSt.', { amount: 34.9, currency: 'EUR', per: 'm2' }],
  ['34,90 € TTC le m²', { amount: 34.9, currency: 'EUR', per: 'm2' }],
  ['9,50 € el kg', { amount: 9.5, currency: 'EUR', per: 'kg' }],
  ['62 €/5L', null],
  ['249 zł', { amount: 249, currency: 'PLN' }],
  ['0', { amount: 0 }],
  ['.99', { amount: 0.99 }],
  ['12 each', { amount: 12, per: 'piece' }],
  ['40 - 60 €', null],
  ['from 40', null],
  ['-5', null],
  ['€ -5', null],
  ['12 kg', null],
  ['12 x 24', null],
  ['2.000.001', null],
  ['cheap-ish', null],
  ['249 kr', null],
])('a cell “%s”', (cell, price) => {
  const { prices, told } = pricesOf('Price', [cell]);
  if (price && price.amount > 1_000_000) expect([prices, told]).toEqual([[null], [['cell-left-out']]]);
  else expect([prices, told]).toEqual([[price], price ? [[]] : [['cell-left-out']]]);
});

it.each([
  'on request',
  'POA',
  'auf Anfrage',
  'a. A.',
  'sur devis',
  'Prix sur demande',
  'a consultar',
  'su richiesta',
  '-',
  'n/a',
])('“%s” is no price, and nothing to look at', (cell) => {
  expect(pricesOf('Price', ['49.90', cell])).toMatchObject({ prices: [{ amount: 49.9 }, null], told: [[], []] });
});

describe('a mark that could part thousands or decimals', () => {
  it('is told by the other cells of the column', () => {
    expect(pricesOf('Preis', ['49,90', '1.249', '899']).prices).toEqual([
      { amount: 49.9 },
      { amount: 1249 },
      { amount: 899 },
    ]);
    expect(pricesOf('Price', ['49.90', '1,249']).prices).toEqual([{ amount: 49.9 }, { amount: 1249 }]);
    expect(pricesOf('Price', ['49.90', '1.249']).prices[1]).toEqual({ amount: 1.249 });
    expect(pricesOf('Preis', ['1.249', '2.100']).prices).toEqual([{ amount: 1249 }, { amount: 2100 }]);
    expect(pricesOf('Price', ['0.125']).prices).toEqual([{ amount: 0.125 }]);
  });

  it('is said where nothing tells it', () => {
    expect(pricesOf('Preis €', ['1.249', '2.100']).notices).toContain('thousands');
    expect(pricesOf('Preis €', ['1.249', '49,90']).notices).not.toContain('thousands');
  });
});

describe('bands and prices', () => {
  it('are told apart by the cells of the column', () => {
    expect(pricesOf('price', ['$$', '$', '$$$']).supplies).toEqual([
      { price_band: '$$' },
      { price_band: '$' },
      { price_band: '$$$' },
    ]);
    expect(pricesOf('Preis', ['niedrig', 'hoch']).supplies).toEqual([{ price_band: '$' }, { price_band: '$$$' }]);
    expect(pricesOf('price', ['1', '2', '3']).supplies).toEqual([
      { price_band: '$' },
      { price_band: '$$' },
      { price_band: '$$$' },
    ]);
    expect(pricesOf('Price group', ['1', '2', '3']).supplies[1]).toEqual({ price_band: '$$' });
    expect(pricesOf('price', ['1', '2', '12']).prices).toEqual([{ amount: 1 }, { amount: 2 }, { amount: 12 }]);
    expect(pricesOf('Price USD', ['1', '2', '3']).prices[2]).toEqual({ amount: 3, currency: 'USD' });
    expect(pricesOf('Price level', ['49,90 €', '12 €']).prices[1]).toEqual({ amount: 12, currency: 'EUR' });
  });

  it('numbers beyond 3 under a group stay groups that are not known', () => {
    expect(pricesOf('Preisgruppe', ['2', '4'])).toMatchObject({
      supplies: [{ price_band: '$$' }, {}],
      told: [[], ['cell-left-out']],
    });
  });

  it('that stray into the other column are kept all the same', () => {
    expect(pricesOf('Price', ['49.90', '$$', 'low']).supplies).toEqual([
      { price: { amount: 49.9 } },
      { price_band: '$$' },
      { price_band: '$' },
    ]);
    expect(pricesOf('Price group', ['2', 'x', '€ 40']).supplies[2]).toEqual({ price: { amount: 40, currency: 'EUR' } });
  });
});

it('takes currency and unit from columns of their own where the cell says none', () => {
  const { kept } = importOf(
    'code,hex,price,currency,price unit\nA,#777777,12.50,€,m²\nB,#777777,$9,GBP,Stück\nC,#777777,8,,',
  );
  expect(kept.map(({ finish }) => finish.supply?.price)).toEqual([
    { amount: 12.5, currency: 'EUR', per: 'm2' },
    { amount: 9, currency: 'USD', per: 'piece' },
    { amount: 8 },
  ]);
});

it('takes what customers pay before what a shop pays, and says so of the latter', () => {
  const both = importOf('code,hex,EK netto,UVP\nA,#777777,20.50,49.90');
  expect(both.kept[0]!.finish.supply?.price).toEqual({ amount: 49.9 });
  expect(both.notices.map(({ code }) => code)).not.toContain('purchase-price');
  expect(pricesOf('EK netto', ['20,50']).notices).toEqual(
    expect.arrayContaining(['purchase-price', 'tax-not-kept', 'no-currency']),
  );
});

it('says what it took for granted: which dollar, that no currency is said, that tax is not kept', () => {
  expect(pricesOf('Price', ['$12', '$9']).notices).toContain('dollar-as-usd');
  expect(pricesOf('Price $', ['12']).notices).toContain('dollar-as-usd');
  expect(pricesOf('Price USD', ['12']).notices).not.toContain('dollar-as-usd');
  expect(pricesOf('Price', ['12']).notices).toContain('no-currency');
  expect(pricesOf('Price £', ['12']).notices).not.toContain('no-currency');
  expect(pricesOf('Prix TTC', ['12 €']).notices).toContain('tax-not-kept');
  expect(pricesOf('Prix', ['12 €']).notices).not.toContain('tax-not-kept');
});

it('finds prices in a table without headings by their currency', () => {
  const { kept } = importOf('A-1,Oat,#d9cfbb,€ 12.50\nA-2,Slate,#445566,€ 8');
  expect(kept.map(({ finish }) => finish.supply?.price?.amount)).toEqual([12.5, 8]);
});

// A price written in any usual way is that price.
it('reads amounts back in whatever way they are written', () => {
  const written = fc
    .record({
      cents: fc.integer({ min: 0, max: 99_999_999 }),
      comma: fc.boolean(),
      parts: fc.constantFrom('', 'mark', ' ', "'"),
      currency: fc.constantFrom(
        ['€', 'EUR'],
        ['EUR', 'EUR'],
        ['£', 'GBP'],
        ['CHF', 'CHF'],
        ['US$', 'USD'],
        ['', undefined],
      ),
      isBefore: fc.boolean(),
      per: fc.constantFrom(
        ['/m²', 'm2'],
        [' per sq ft', 'ft2'],
        ['/Stück', 'piece'],
        [' / box', 'pack'],
        ['', undefined],
      ),
    })
    .map(({ cents, comma, parts, currency: [sign, currency], isBefore, per: [unit, per] }) => {
      const mark = comma ? ',' : '.';
      const part = parts === 'mark' ? (comma ? '.' : ',') : parts;
      const whole = String(Math.floor(cents / 100)).replace(/\B(?=(\d{3})+$)/g, part);
      const digits = `${whole}${mark}${String(cents % 100).padStart(2, '0')}`;
      const cell = `${isBefore ? `${sign} ${digits}` : `${digits} ${sign}`}${unit}`.trim();
      return { cell, price: { amount: cents / 100, ...(currency && { currency }), ...(per && { per }) } };
    });
  fc.assert(
    fc.property(fc.array(written, { minLength: 1, maxLength: 8 }), (all) => {
      expect(
        pricesOf(
          'Price',
          all.map(({ cell }) => cell),
        ).prices,
      ).toEqual(all.map(({ price }) => price));
    }),
    { numRuns: 100 },
  );
});

it('never refuses a row and never makes an amount that is none, whatever stands there', () => {
  const piece = fc.constantFrom(
    '1',
    '249',
    ',',
    '.',
    '€',
    '$',
    '/',
    'm2',
    'per',
    ' ',
    '-',
    'EUR',
    "'",
    'ft',
    'x',
    '00',
    'inkl.',
    '(',
    '%',
  );
  fc.assert(
    fc.property(fc.array(piece, { maxLength: 8 }), fc.array(piece, { maxLength: 4 }), (cell, heading) => {
      const { prices } = pricesOf(`Price ${heading.join('')}`.replaceAll('\t', ''), [cell.join('')]);
      const [price] = prices;
      if (!price) return;
      expect(price.amount).toBeGreaterThanOrEqual(0);
      expect(price.amount).toBeLessThanOrEqual(1_000_000);
      if (price.per) expect(PRICE_UNITS).toContain(price.per);
    }),
    { numRuns: 300 },
  );
});
