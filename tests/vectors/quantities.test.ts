import { describe, expect, it } from 'vitest';
import { jointShare } from '../../src/engine/pattern/joint-share';
import { areaOfParts, coatedArea } from '../../src/model/quantity/area-of-parts';
import { USUAL_ASSUMPTIONS } from '../../src/model/quantity/assumptions';
import { costOf } from '../../src/model/quantity/cost';
import { groutMass } from '../../src/model/quantity/grout-mass';
import { toMeasure } from '../../src/model/quantity/measures';
import { orderOf, packsFor } from '../../src/model/quantity/order';
import { paintVolume, spreadFromUs } from '../../src/model/quantity/paint-volume';
import { moduleArea, piecesNeeded } from '../../src/model/quantity/piece-count';
import { roundUp, withWaste } from '../../src/model/quantity/round-up';
import { packOf } from '../../src/model/quantity/supply-pack';
import { usualWaste } from '../../src/model/quantity/usual-waste';

// Trade worked cases, computed by hand: each number as printed there, to its last digit.

const inFeet2 = (m2: number): number => toMeasure(m2, 'm2', 'ft2')!;

describe('counter of 3600 + 2400 mm, 620 deep, with an island of 2000 x 1000', () => {
  const area = areaOfParts([
    { length_mm: 3600, width_mm: 620 },
    { length_mm: 2400 - 620, width_mm: 620 },
    { length_mm: 2000, width_mm: 1000 },
  ]);
  it('has 5.3356 m2, 57.4 ft2', () => {
    expect(area).toBeCloseTo(5.3356, 10);
    expect(inFeet2(area)).toBeCloseTo(57.4, 1);
  });
});

describe('backsplash of 3 m2, tile 300 x 75, joint 2', () => {
  const tile = [300, 75] as const;
  const net = piecesNeeded(3, tile, 2)!;
  const ordered = (layout: 'running-bond' | 'herringbone', spare_packs = 0) =>
    orderOf(
      { net, measure: 'piece', waste_percent: usualWaste({ kind: 'tiles', layout, piece_mm: tile }), spare_packs },
      { container: 'box', quantity: 25, measure: 'piece' },
    );

  it('takes 129.01 tiles', () => expect(net).toBeCloseTo(129.01, 2));
  it('orders 142 in running bond, in 6 boxes of 25', () => {
    expect(ordered('running-bond')).toMatchObject({ quantity: 142, measure: 'piece', packs: 6, bought: 150 });
  });
  it('orders 155 in herringbone, in 7 boxes, and one more as a spare', () => {
    expect(ordered('herringbone')).toMatchObject({ quantity: 155, packs: 7, spares: 0 });
    expect(ordered('herringbone', 1)).toMatchObject({ quantity: 155, packs: 8, spares: 1 });
  });
  it('takes 1.28 kg of grout 8 mm deep, 1.41 kg with 10 %', () => {
    const field = { area_m2: 3, piece_mm: tile, joint_mm: 2, depth_mm: 8, layout: 'running-bond' } as const;
    const mass = groutMass(field, USUAL_ASSUMPTIONS.grout_kg_per_l);
    expect(mass).toBeCloseTo(1.28, 10);
    expect(withWaste(mass, 10)).toBeCloseTo(1.41, 2);
  });
});

it.each([
  ['the tile 300 x 75, joint 2', 3.24, [300, 75], 2, 'stack'],
  ['a mosaic of 23 mm, joint 2', 15.36, [23, 23], 2, 'stack'],
  ['600 x 600, joint 3', 0.99, [600, 600], 3, 'stack'],
  ['1200 x 600, joint 2', 0.5, [1200, 600], 2, 'stack'],
  ['a hexagon of 50, joint 2', 7.54, [50, 50], 2, 'hexagon'],
] as const)('joints of %s: %s %%', (_, percent, piece, joint, layout) => {
  const share = jointShare(piece, joint, layout);
  expect(100 * share).toBeCloseTo(percent, 2);
  // The module holds the piece and its share of joints.
  const own = (piece[0] * piece[1] * (layout === 'hexagon' ? Math.sqrt(3) / 2 : 1)) / 1e6;
  expect(1 - own / moduleArea(piece, joint, layout)).toBeCloseTo(share, 12);
});

it('fills the joints of hexagons by their share: 1 m2, 8 mm deep (share 7.54 %, as above)', () => {
  const field = { area_m2: 1, piece_mm: [50, 50], joint_mm: 2, depth_mm: 8, layout: 'hexagon' } as const;
  expect(groutMass(field, 1.6)).toBeCloseTo((1 - (50 / 52) ** 2) * 8 * 1.6, 10);
});

describe('floor of 4.2 x 3.6 m in cartons of 2.22 m2', () => {
  const net = 4.2 * 3.6;
  const packs = (layout: 'planks' | 'herringbone') =>
    orderOf(
      { net, measure: 'm2', waste_percent: usualWaste({ kind: 'boards', layout }), spare_packs: 0 },
      packOf({ unit: 'carton of 2.22 m2', pack: 2.22 }),
    );
  it('is 15.12 m2, 162.8 ft2', () => {
    expect(net).toBeCloseTo(15.12, 10);
    expect(inFeet2(net)).toBeCloseTo(162.8, 1);
  });
  it('orders 16.63 m2 straight: 8 cartons', () => {
    expect(packs('planks')).toMatchObject({ quantity: expect.closeTo(16.63, 2), packs: 8 });
  });
  it('orders 18.14 m2 in herringbone: 9 cartons', () => {
    expect(packs('herringbone')).toMatchObject({ quantity: expect.closeTo(18.14, 2), packs: 9 });
  });
});

describe('walls of 21.63 m2, two coats', () => {
  const area = 37.44 - 3.09 - 12.72;
  it('take 4.33 L at 10 m2/L, 4.76 L with 10 %: two cans of 2.5 L', () => {
    const litres = paintVolume(area, 2, 10);
    expect(litres).toBeCloseTo(4.33, 2);
    const need = { net: litres, measure: 'L', waste_percent: usualWaste({ kind: 'coat' }), spare_packs: 0 } as const;
    const order = orderOf(need, packOf({ unit: 'can of 2.5 L', pack: 2.5 }));
    expect(order).toMatchObject({ quantity: expect.closeTo(4.76, 2), packs: 2, bought: 5 });
    expect(orderOf(need, packOf({ unit: '5 L can' }))).toMatchObject({ packs: 1 });
  });
  it('take 1.33 gal at 350 ft2/gal, 1.46 gal with 10 %: two gallons or six quarts', () => {
    const litres = paintVolume(area, 2, spreadFromUs(350));
    const need = { net: litres, measure: 'L', waste_percent: 10, spare_packs: 0 } as const;
    expect(toMeasure(litres, 'L', 'gal')).toBeCloseTo(1.33, 2);
    const gallons = orderOf(need, packOf({ unit: 'gallon' }));
    expect(gallons).toMatchObject({ quantity: expect.closeTo(1.46, 2), measure: 'gal', packs: 2 });
    expect(orderOf(need, packOf({ unit: 'quart' }))).toMatchObject({ packs: 6 });
  });
});

describe('fronts 4 x 597 x 715, 2 x 397 x 715, 2 x 597 x 140, 4 x 597 x 283', () => {
  const fronts = [
    { length_mm: 597, width_mm: 715, count: 4 },
    { length_mm: 397, width_mm: 715, count: 2 },
    { length_mm: 597, width_mm: 140, count: 2 },
    { length_mm: 597, width_mm: 283, count: 4 },
  ];
  it('are 3.118 m2 of one face, 33.6 ft2; 6.710 m2 of both with edges of 19 mm; 1.48 L of paint', () => {
    expect(areaOfParts(fronts)).toBeCloseTo(3.118, 3);
    expect(inFeet2(areaOfParts(fronts))).toBeCloseTo(33.6, 1);
    expect(coatedArea(fronts, 19)).toBeCloseTo(6.71, 3);
    expect(withWaste(paintVolume(coatedArea(fronts, 19), 2, 10), 10)).toBeCloseTo(1.48, 2);
  });
});

it('converts by exact factors (NIST SP 811, appendix B)', () => {
  expect(toMeasure(1, 'ft2', 'm2')).toBeCloseTo(0.09290304, 12);
  expect(toMeasure(1, 'ft', 'm')).toBe(0.3048);
  expect(toMeasure(1, 'gal', 'L')).toBe(3.785411784);
  expect(toMeasure(1, 'lb', 'kg')).toBe(0.45359237);
  expect(toMeasure(1, 'm2', 'L')).toBeNull();
  expect(toMeasure(3, 'm2', 'piece')).toBeNull();
  expect(toMeasure(3, 'm2', 'piece', { piece_m2: 0.02 })).toBeCloseTo(150, 10);
  expect(toMeasure(2, 'slab', 'ft2', { slab_m2: 5.12 })).toBeCloseTo(110.22, 2);
  expect(toMeasure(7, 'piece', 'm', { piece_m: 2.4 })).toBeCloseTo(16.8, 10);
  expect(toMeasure(7, 'piece', 'm2', { piece_m2: 0 })).toBeNull();
  expect(toMeasure(7, 'slab', 'sheet', { slab_m2: 5, sheet_m2: 4 })).toBeNull();
});

describe('packs', () => {
  it('are rounded up at the end, but not for the dust of floating point', () => {
    expect(packsFor(8.000000001, 1)).toBe(8);
    expect(packsFor(8.001, 1)).toBe(9);
    expect(packsFor(0.1 + 0.2, 0.1)).toBe(3);
    expect(roundUp(-1e-17)).toBe(0);
  });
  it('are none where nothing is needed, and no spare is kept of it', () => expect(packsFor(0, 2.5, 1)).toBe(0));
  it('are not known where the size of a pack is not', () => {
    for (const pack of [undefined, 0, -1, Number.NaN, Number.POSITIVE_INFINITY]) expect(packsFor(3, pack)).toBeNull();
    expect(packsFor(Number.NaN, 1)).toBeNull();
    const need = { net: 3, measure: 'm2', waste_percent: 10, spare_packs: 1 } as const;
    expect(orderOf(need, null)).toMatchObject({ measure: 'm2', pack: null, packs: null, spares: 0 });
    expect(orderOf(need, packOf({ unit: 'can of 2.5 L' }))).toMatchObject({ measure: 'm2', pack: null, packs: null });
  });
});

// Spans from public trade guidance; the value within a span is our choice, said in the code.
it.each([
  [10, { kind: 'tiles', layout: 'stack', piece_mm: [100, 100] }],
  [10, { kind: 'tiles', layout: 'third-offset', piece_mm: [300, 100] }],
  [15, { kind: 'tiles', layout: 'stack', turn_deg: 45, piece_mm: [300, 300] }],
  [20, { kind: 'tiles', layout: 'herringbone', turn_deg: 45, piece_mm: [300, 100] }],
  [15, { kind: 'tiles', layout: 'hexagon', piece_mm: [100, 100] }],
  [15, { kind: 'tiles', layout: 'stack', piece_mm: [600, 600] }],
  [15, { kind: 'tiles', layout: 'stack', piece_mm: [298, 598] }],
  [20, { kind: 'tiles', layout: 'herringbone', piece_mm: [1200, 200] }],
  [10, { kind: 'boards', layout: 'planks', piece_mm: [180, 2200] }],
  [20, { kind: 'boards', layout: 'herringbone', piece_mm: [90, 600] }],
  [10, { kind: 'grout' }],
  [0, { kind: 'slab' }],
  [0, { kind: 'fronts' }],
  [0, { kind: 'count' }],
] as const)('usual waste of %s %% for %o', (percent, of) => expect(usualWaste(of)).toBe(percent));

describe('cost', () => {
  const need = { net: 10, measure: 'm2', waste_percent: 10, spare_packs: 0 } as const;
  const box = packOf({ unit: 'box of 1.2 m2', pack: 1.2 })!;
  const order = orderOf(need, box); // 11 m2: 10 boxes, 12 m2
  it('is that of whole packs, whatever the price is for', () => {
    expect(costOf({ amount: 30, currency: 'EUR', per: 'm2' }, order)).toEqual({
      amount: expect.closeTo(360, 9),
      currency: 'EUR',
    });
    expect(costOf({ amount: 36, per: 'pack' }, order)).toEqual({ amount: 360 });
    expect(costOf({ amount: 36 }, order)).toEqual({ amount: 360 });
    expect(costOf({ amount: 5, per: 'ft2' }, order)).toEqual({ amount: expect.closeTo(645.83, 2) });
    expect(costOf({ amount: 2, per: 'piece' }, order, { piece_m2: 0.1 })).toEqual({ amount: expect.closeTo(240, 9) });
  });
  it('is not told without a price, or where the price is for something else', () => {
    expect(costOf(undefined, order)).toEqual({ amount: null, reason: 'no-price' });
    expect(costOf({ amount: 2, per: 'kg' }, order)).toEqual({ amount: null, reason: 'other-unit' });
    expect(costOf({ amount: 2, per: 'pack' }, orderOf(need, null))).toEqual({ amount: null, reason: 'other-unit' });
    expect(costOf({ amount: 2 }, orderOf(need, null))).toEqual({ amount: null, reason: 'other-unit' });
  });
  it('is of the measure where a finish is sold by it', () => {
    const byArea = orderOf(need, packOf({ unit: 'm2', pack: 1.5 }));
    expect(byArea).toMatchObject({ packs: 8, bought: 12 });
    expect(costOf({ amount: 30 }, byArea)).toEqual({ amount: 360 });
    const quarts = orderOf({ ...need, net: 1.2, measure: 'L', waste_percent: 0 }, packOf({ unit: 'quart' }));
    expect(costOf({ amount: 20 }, quarts)).toEqual({ amount: 40 });
    const slabs = orderOf({ ...need, net: 2, measure: 'slab', waste_percent: 0 }, packOf({ unit: 'slab', pack: 1 }));
    expect(costOf({ amount: 400 }, slabs)).toEqual({ amount: 800 });
    expect(costOf({ amount: 100, per: 'm2' }, slabs, { slab_m2: 5.12 })).toEqual({ amount: 1024 });
  });
});
