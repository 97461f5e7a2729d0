import { describe, expect, it } from 'vitest';
import type { ItemRecord } from '../../src/model/order/records';
import { withoutProgress } from '../../src/model/order/without-progress';
import { codes, demoAfter, OPTION, rowIn, scheduled } from './schedule';

const demo = demoAfter();

/** The demo with something agreed for the backsplash: its tile is listed in boxes of 1 m2, three of which are bought. */
const agreed = (record: Partial<ItemRecord>) =>
  demoAfter({
    kind: 'set-item',
    option: OPTION,
    record: { item: 'BS1', finish: 'TL-01', ...record },
  });
const row = (record: Partial<ItemRecord>) => rowIn(scheduled(agreed(record)), 'BS1');

describe('what was agreed for one item', () => {
  it('comes before what its finish says, field by field', () => {
    expect(row({ supplier: 'Tile yard' })).toMatchObject({ supplier: 'Tile yard', code: 'DEMO-TL-01' });
    expect(row({ code: 'TY 7' })).toMatchObject({ supplier: 'Demo supplier B', code: 'TY 7' });
  });

  // 1.81 m2 net and 10 % waste are 1.99 m2: 4 boxes of half a square meter, and one for repairs.
  it('packs of another size are counted anew', () => {
    expect(row({}).quantity!.order.packs).toBe(3);
    expect(row({ unit: 'box of 0.5 m2' }).quantity!.order.packs).toBe(5);
  });

  it('a price is for one of what is bought, for a measure, or for all of it', () => {
    const price = (per?: NonNullable<ItemRecord['price']>['per']) =>
      row({ price: { amount: 40, currency: 'EUR', ...(per && { per }) } });
    expect(codes(row({}))).toContain('no-price');
    expect(price().total).toEqual({ amount: 120, currency: 'EUR' });
    expect(price('m2').total).toEqual({ amount: 120, currency: 'EUR' });
    expect(price('all').total).toEqual({ amount: 40, currency: 'EUR' });
    expect(price('all').unit_price).toBeNull();
    expect(codes(price('all'))).not.toContain('no-price');
    expect(codes(price('slab'))).toContain('price-for-other-unit');
  });

  it('a price of the listed pack says nothing of another pack, one of a measure does', () => {
    const listed = (per: 'pack' | 'm2') => {
      const supply = {
        ...demo.library.find(({ id }) => id === 'TL-01')!.supply,
        price: { amount: 50, currency: 'EUR', per },
      };
      const item = { item: 'BS1', finish: 'TL-01', unit: 'box of 0.5 m2' };
      return rowIn(
        scheduled(
          demoAfter(
            { kind: 'edit-finish', finish: 'TL-01', changes: { supply } },
            { kind: 'set-item', option: OPTION, record: item },
          ),
        ),
        'BS1',
      );
    };
    expect([listed('pack').total, codes(listed('pack'))]).toEqual([null, expect.arrayContaining(['no-price'])]);
    // Five boxes of half a square meter.
    expect(listed('m2').total).toEqual({ amount: 125, currency: 'EUR' });
  });

  it('a price for all of it is told to be of before, once the item is another one', () => {
    const price = { amount: 40, currency: 'EUR', per: 'all', of: row({}).spec } as const;
    expect(codes(row({ price }))).not.toContain('changed-since-offered');
    expect(codes(row({ price, waste_percent: 80 }))).toContain('changed-since-offered');
  });

  it('of what stays there is no total', () => {
    const stays = demoAfter(
      { kind: 'set-state', option: OPTION, surface: 'backsplash', state: 'fixed' },
      { kind: 'set-item', option: OPTION, record: { item: 'BS1', finish: 'TL-01', price: { amount: 9, per: 'all' } } },
    );
    expect(rowIn(scheduled(stays), 'BS1').total).toBeNull();
  });

  it('what was said of a part while it was an item of its own counts where nothing else was said', () => {
    const said = (records: readonly Partial<ItemRecord>[]) =>
      rowIn(
        scheduled(
          demoAfter(
            ...records.map((record) => ({
              kind: 'set-item' as const,
              option: OPTION,
              record: { item: 'CT1', finish: 'EN-01', ...record },
            })),
          ),
        ),
        'CT1',
      );
    const island = { item: 'CT2', note: 'Veins along', lead_time_weeks: 9 };
    expect(said([island])).toMatchObject({ note: 'Veins along', lead_time_weeks: 9 });
    expect(said([island, { lead_time_weeks: 4 }])).toMatchObject({ note: 'Veins along', lead_time_weeks: 4 });
  });

  it('is part of what is frozen and signed', () => {
    const price = { amount: 40, currency: 'EUR', per: 'all' } as const;
    const signed = withoutProgress(agreed({ price, unit: 'box of 0.5 m2', ordered_on: '2026-05-04' }));
    const [record] = signed.options.find(({ id }) => id === OPTION)!.items!;
    expect(record).toMatchObject({ price, unit: 'box of 0.5 m2' });
    expect(record).not.toHaveProperty('ordered_on');
  });
});
