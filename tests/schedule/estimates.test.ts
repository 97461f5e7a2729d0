import { describe, expect, it } from 'vitest';
import { takeOff } from '../../src/kitchen/takeoff/take-off';
import type { Kitchen } from '../../src/model/kitchen';
import { kitchenFor } from '../../src/model/new-kitchen';
import { USUAL_ASSUMPTIONS } from '../../src/model/quantity/assumptions';
import { LAYOUTS } from '../kitchen/layouts';
import { demoAfter, OPTION, rowIn, scheduled } from './schedule';

// Whole kitchens worked by hand from their sizes alone, as an estimator would; formulas are those of the trade's worked cases: area of pieces, tiles by
// A / ((L + J)(W + J)), grout by A (L + W) / (L W) J D density, paint by coats / spread, waste before whole packs.

const inKitchen = (kitchen: Kitchen) => {
  const schedule = scheduled(
    demoAfter(
      { kind: 'set-kitchen', kitchen },
      { kind: 'set-job', job: { starts_on: '2027-03-01' } },
      { kind: 'edit-finish', finish: 'TL-01', changes: { supply: { unit: 'box of 25', lead_time_weeks: 2 } } },
      { kind: 'lay-finish', option: OPTION, surface: 'floor', finish: 'WD-01' },
      { kind: 'set-state', option: OPTION, surface: 'floor', state: 'decided' },
      {
        kind: 'edit-finish',
        finish: 'WD-01',
        changes: { supply: { unit: 'carton of 2.22 m2', lead_time_weeks: 5 } },
      },
      { kind: 'lay-finish', option: OPTION, surface: 'upstand', finish: 'EN-01' },
    ),
  );
  const takeoff = takeOff(kitchen, USUAL_ASSUMPTIONS);
  return {
    area: (surface: 'counter' | 'backsplash' | 'wall' | 'upstand' | 'floor') => takeoff.get(surface)!.area_m2,
    edge: takeoff.get('counter')!.length_m!,
    row: (id: string) => rowIn(schedule, id),
    order: (id: string) => rowIn(schedule, id).quantity!.order,
    days: schedule.days!,
  };
};

describe('a galley in inches: 100 x 150 x 96 in, runs of 2896 mm, counters 25 1/2 in deep', () => {
  const kitchen = kitchenFor('galley', 'us', { width: 2540, depth: 3810, height: 2438.4 })!;
  const { area, edge, order, row } = inKitchen(kitchen);
  // On the right two tall units of 24 in, their panel and filler leave 1563.1 mm.
  it('has counters of 2.896 and 1.5631 m, 0.6477 deep, finished along both and at both free ends', () => {
    expect(area('counter')).toBeCloseTo((2.896 + 1.5631) * 0.6477, 3);
    expect(edge).toBeCloseTo(2.896 + 1.5631 + 2 * 0.6477, 3);
    // Two strips of 647.7 and a saw cut are 1298.4 high: on one slab of 1360, usable.
    expect(order('CT1').packs).toBe(1);
    expect(row('CT1').quantity!.slabs!.yield).toBeCloseTo(2.8882 / (3.05 * 1.4), 3);
  });
  it('has tile 18 in high over both, and 192.8 mm more under a hood 30 in wide: 107 tiles and 10 %, six boxes with the spare', () => {
    expect(area('backsplash')).toBeCloseTo((2.896 + 1.5631) * 0.4572 + 0.762 * 0.1928, 3);
    expect(row('BS1').quantity!.net).toBeCloseTo(2.1856 / (0.202 * 0.102), 1);
    expect(order('BS1')).toMatchObject({ quantity: 117, packs: 6, spares: 1 });
    expect(row('BS1G').quantity!.net).toBeCloseTo(2.1856 * (300 / 20000) * 2 * 8 * 1.6, 3);
  });
  it('has a floor of 104.17 sq ft: with 10 % five cartons, and one to keep', () => {
    expect(area('floor') / 0.3048 ** 2).toBeCloseTo((100 * 150) / 144, 6);
    expect(order('FL1')).toMatchObject({ packs: 6, spares: 1 });
  });
});

describe('a U with tall units on the left, 4600 x 4000 x 2500 mm', () => {
  const u = LAYOUTS['U']!;
  const [left, back, right] = u.runs;
  const kitchen: Kitchen = {
    ...u,
    runs: [{ ...right!, wall: 'left' }, back!, { ...left!, wall: 'right' }],
    sink: { ...u.sink, run: 'right' },
    door: { ...u.door, from_right: 4600 - 1700 - 900 },
  };
  const { area, edge, order, row, days } = inKitchen(kitchen);
  // On the left two units of 600 and two panels of 20 leave 3100 - 1240 = 1860 of the wall.
  it('has counters of 4600, 2080 and 1240 mm, 620 deep; the apron stands before 560 mm of the edge', () => {
    expect(area('counter')).toBeCloseTo((4.6 + 2.08 + 1.24) * 0.62, 6);
    expect(edge).toBeCloseTo(4.6 - 2 * 0.62 + 2.08 + 0.62 + 1.24 - 0.56, 6);
  });
  it('has tile 500 mm high on the back and the left wall and 150 mm more under the hood, an upstand on the right', () => {
    expect(area('backsplash')).toBeCloseTo(4.6 * 0.5 + 0.9 * 0.15 + (1.86 - 0.008) * 0.5, 6);
    expect(area('upstand')).toBeCloseTo((2.7 - 0.008) * 0.1, 6);
    // 3.361 / (0.202 x 0.102) = 163.12; with 10 % 180, in boxes of 25: 8, and one to keep.
    expect(order('BS1')).toMatchObject({ quantity: 180, packs: 9, spares: 1 });
    expect(row('BS1G').quantity!.net).toBeCloseTo(3.361 * (300 / 20000) * 2 * 8 * 1.6, 3);
  });
  it('is seamed once, clear of the cooktop of 860 mm in the middle of the back wall, the upstand at the corner', () => {
    const { seams, slabs } = row('CT1').quantity!.slabs!;
    expect(slabs).toHaveLength(2);
    const [seam] = seams.filter(({ piece }) => piece.startsWith('counter'));
    expect(Math.abs(seam!.at_mm - 2300)).toBeGreaterThanOrEqual(430 + 100);
    expect(row('CT1').problems.filter(({ code }) => code === 'seam-place')).toEqual([]);
  });
  it('has walls of 43 m2, less tile, door and what stands or hangs before them, twice coated', () => {
    const { deductions, gross_m2 } = takeOff(kitchen, USUAL_ASSUMPTIONS).get('wall')!;
    expect(gross_m2).toBeCloseTo(2 * (4.6 + 4) * 2.5, 9);
    const of = (kind: string) => deductions.find((one) => one.kind === kind)!.area_m2;
    expect(of('door')).toBeCloseTo(0.9 * 2.05, 9);
    // Two tall units of 600 and two panels of 20, 2300 high.
    expect(of('tall-units')).toBeCloseTo(1.24 * 2.3, 9);
    expect(order('WL1').quantity).toBeCloseTo(((area('wall') * 2) / 10) * 1.1, 9);
  });
  // Floor 4 days, cabinets 4, the counter three weeks from its template, then a day, three of tile, one of fittings.
  it('has its days', () => {
    expect(days).toEqual({
      floor: '2027-03-01',
      cabinets: '2027-03-05',
      template: '2027-03-09',
      counter: '2027-03-30',
      backsplash: '2027-03-31',
      fittings: '2027-04-03',
      paint: '2027-04-04',
    });
    // Five weeks and seven days before; the counter's slabs seven days before the template; two weeks and seven days.
    expect([row('FL1').order_by, row('CT1').order_by, row('BS1').order_by]).toEqual([
      '2027-01-18',
      '2027-03-02',
      '2027-03-10',
    ]);
  });
});

describe('an L with odd sizes, to a tenth of a millimeter', () => {
  const like = LAYOUTS['L to the right']!;
  const [back, right] = like.runs;
  const kitchen: Kitchen = {
    ...like,
    room: { width: 4613.3, depth: 4017.7, height: 2487.9 },
    counter: { ...like.counter, depth: 633.3, thickness: 22 },
    runs: [
      { ...back!, to: 4613.3 },
      { ...right!, from: 1512.5, to: 4017.7 },
    ],
  };
  const { area, edge, order } = inKitchen(kitchen);
  it('adds up all the same', () => {
    // Two tall units, a panel of 20 and a filler of 20 before them: 4613.3 - 1240. The other leg is 2505.2 long, less the corner.
    expect(area('counter')).toBeCloseTo((3.3733 + 2.5052 - 0.6333) * 0.6333, 6);
    expect(edge).toBeCloseTo(3.3733 - 0.6333 + (2.5052 - 0.6333) + 0.6333, 6);
    expect(area('backsplash')).toBeCloseTo(3.3733 * 0.5 + 0.9 * 0.15, 6);
    expect(area('upstand')).toBeCloseTo((2.5052 - 0.008) * 0.1, 6);
    expect(order('FL1').quantity).toBeCloseTo(4.6133 * 4.0177 * 1.1, 9);
    // 88.41 tiles, 97.25 with 10 %.
    expect(order('BS1')).toMatchObject({ quantity: 98, packs: 5 });
  });
});
