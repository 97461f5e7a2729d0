import { describe, expect, it } from 'vitest';
import scene from '../../scenes/l-island.json';
import { checkKitchen } from '../../src/model/check-kitchen';
import { clearanceHints } from '../../src/model/clearances';
import * as figures from '../../src/model/clearances/figures';
import type { ClearanceCode, ClearanceHint } from '../../src/model/clearances/types';
import type { Kitchen } from '../../src/model/kitchen';
import { counterTop } from '../../src/model/layout/hood-place';
import { kitchenFor, usualRoom } from '../../src/model/new-kitchen';
import { kitchenDefaults } from '../../src/model/new-kitchen/kitchen-defaults';
import type { UserNeed } from '../../src/model/project';

const IN = 25.4;

describe('usual sizes by region', () => {
  // Public trade guidance on kitchen sizes (two pages or more agreeing): base carcass 720 mm on a plinth of 50-200,
  // 30 in on 4 1/2 in; worktops 20-40 mm; finished height 890-920 mm and 36 in; counter depth 600-650 mm and 25-26 in;
  // 450-500 mm and 18 in to the wall units; these 300-350 mm and 12 in (box) deep, 575, 720 or 900 mm and 30, 36 or 42 in
  // high; tops at 2120 or 2300 mm and 84, 90 or 96 in, with the tall units.
  it.each(['eu', 'uk'] as const)('are those of Europe: %s', (region) => {
    const { base, counter, wall_units, tall_height } = kitchenDefaults(region);
    expect(base.carcass_height).toBe(720);
    expect(counterTop({ base, counter })).toBeGreaterThanOrEqual(890);
    expect(counterTop({ base, counter })).toBeLessThanOrEqual(920);
    expect(counter.depth).toBeGreaterThanOrEqual(600);
    expect(counter.depth).toBeLessThanOrEqual(650);
    expect(wall_units.gap_above_counter).toBeGreaterThanOrEqual(450);
    expect(wall_units.gap_above_counter).toBeLessThanOrEqual(500);
    expect(wall_units.depth).toBeGreaterThanOrEqual(300);
    expect(wall_units.depth).toBeLessThanOrEqual(350);
    expect([575, 720, 900]).toContain(wall_units.height);
    expect([2120, 2300]).toContain(tall_height);
    // The tops of wall and tall units align, within what one sees.
    expect(
      Math.abs(counterTop({ base, counter }) + wall_units.gap_above_counter + wall_units.height - 2120),
    ).toBeLessThan(5);
  });

  it('are those of North America', () => {
    const { base, counter, wall_units, tall_height, cooktop } = kitchenDefaults('us');
    expect(base.carcass_height + base.plinth_height).toBeCloseTo(34.5 * IN, 6);
    expect(counterTop({ base, counter })).toBeCloseTo(36 * IN, 6);
    expect(counter.depth).toBeCloseTo(25.5 * IN, 6);
    expect(wall_units.gap_above_counter).toBeCloseTo(18 * IN, 6);
    expect([30, 36, 42].map((inches) => inches * IN)).toContain(wall_units.height);
    const top = counterTop({ base, counter }) + wall_units.gap_above_counter + wall_units.height;
    expect(top).toBeCloseTo(84 * IN, 6);
    expect(tall_height).toBeCloseTo(84 * IN, 6);
    expect([30, 36].map((inches) => inches * IN)).toContain(cooktop.width);
  });
});

describe('recommended clearances', () => {
  // North American planning guidelines as public trade guidance repeats them, in inches; landings from memory.
  it.each([
    ['work aisle, one cook', figures.WORK_AISLE, 42],
    ['walkway', figures.WALKWAY, 36],
    ['walking past seats', figures.BEHIND_SEATS, 44],
    ['width of a seat', figures.SEAT_WIDTH, 24],
    ['knee depth, table 30 in high', figures.KNEE_DEPTHS[0].depth, 18],
    ['knee depth, counter 36 in high', figures.KNEE_DEPTHS[1].depth, 15],
    ['knee depth, bar 42 in high', figures.KNEE_DEPTHS[2].depth, 12],
    ['landing by the fridge', figures.LANDING.fridge, 15],
    ['landing by the cooktop, one side', figures.LANDING.cooktop[0], 12],
    ['landing by the cooktop, other side', figures.LANDING.cooktop[1], 15],
    ['landing by the sink, one side', figures.LANDING.sink[0], 18],
    ['landing by the sink, other side', figures.LANDING.sink[1], 24],
    ['counter for preparing', figures.PREP_WIDTH, 36],
    ['counter frontage in all', figures.FRONTAGE, 158],
    ['work triangle, sum', figures.TRIANGLE.sum, 26 * 12],
    ['work triangle, shortest leg', figures.TRIANGLE.leg[0], 4 * 12],
    ['work triangle, longest leg', figures.TRIANGLE.leg[1], 9 * 12],
    // The stone trade: 2 and 3 cm slabs.
    ['overhang of 2 cm stone', figures.STONE_OVERHANG.thin, 6],
    ['overhang of 3 cm stone', figures.STONE_OVERHANG.thick, 10],
    // Accessible counters in the US.
    ['accessible counter', figures.ACCESSIBLE_COUNTER, 34],
  ])('%s', (_, mm, inches) => {
    expect(Math.abs(mm - inches * IN)).toBeLessThanOrEqual(0.5);
  });

  const usual = scene as unknown as Kitchen;
  const hints = (change: Partial<Kitchen> = {}, users: readonly UserNeed[] = []): readonly ClearanceHint[] => {
    const kitchen = { ...usual, ...change };
    expect(checkKitchen(kitchen, '').map(({ text }) => text)).toEqual([]);
    return clearanceHints(kitchen, users);
  };
  const measured = (all: readonly ClearanceHint[], code: ClearanceCode): readonly number[] =>
    all.filter((hint) => hint.code === code).map(({ measured_mm }) => measured_mm);

  it('are measured on the usual kitchen as with a ruler on its plan', () => {
    const all = hints();
    // Counters 620 deep; island from 1750 to 3550 and from 1350 to 2250 in a room of 4600 by 4000.
    expect(measured(all, 'work-aisle')).toEqual([4000 - 620 - 2250, 1750 - 620]);
    expect(measured(all, 'walkway')).toEqual([4600 - 3550]);
    expect(measured(all, 'behind-seats')).toEqual([1350]);
    expect(measured(all, 'seat-width')).toEqual([600]);
    expect(measured(all, 'knee-depth')).toEqual([250]);
    // Counter 900 high: 15 in; 3 cm: 10 in, less than a third of 900.
    expect(all.find(({ code }) => code === 'knee-depth')!.wanted_mm).toBe(381);
    expect(all.find(({ code }) => code === 'stone-overhang')).toMatchObject({
      wanted_mm: 254,
      level: 'fine',
      bound: 'most',
    });
    // Sink 1950-2750: counter from 910, and to the corner at 4000. Cooktop 1560-2460: from the corner and to 3360.
    expect(measured(all, 'landing-sink')).toEqual([1950 - 910, 4000 - 2750]);
    expect(measured(all, 'prep-counter')).toEqual([4000 - 2750]);
    expect(measured(all, 'landing-cooktop')).toEqual([3360 - 2460, 1560]);
    // An oven stands between fridge and counter, and the island is not across from it.
    expect(measured(all, 'landing-fridge')).toEqual([0]);
    // Left 910-3380 without the sink, back from the corner 620-3360 without the cooktop, island 1800.
    expect(measured(all, 'counter-frontage')).toEqual([3380 - 910 - 800 + (3360 - 620 - 900) + 1800]);
    // Fronts: fridge (4280, 3380), sink (620, 2350), cooktop (2010, 3380).
    const legs = [Math.hypot(3660, 1030), Math.hypot(1390, 1030), 2270];
    expect(measured(all, 'triangle-leg')).toEqual(legs.map(Math.round));
    expect(measured(all, 'work-triangle')).toEqual([Math.round(legs.reduce((sum, leg) => sum + leg, 0))]);
  });

  it('call short what misses its figure, and fine what meets it to the millimetre', () => {
    const island = { ...usual.island!, width: 1830, x: 1720 };
    const at = (y: number) => hints({ island: { ...island, y } }).find(({ code }) => code === 'behind-seats');
    expect(at(1118)).toMatchObject({ measured_mm: 1118, level: 'fine' });
    expect(at(1117)).toMatchObject({ measured_mm: 1117, level: 'short' });
    expect(hints({ island }).find(({ code }) => code === 'seat-width')).toMatchObject({
      measured_mm: 610,
      level: 'fine',
    });
  });

  it('ask for lower counters and wider passages only for those who need them', () => {
    const codes = (users: readonly UserNeed[]) => hints({}, users).map(({ code }) => code);
    expect(codes(['children', 'low-vision'])).not.toContain('accessible-passage');
    const old = hints({}, ['over-65']).find(({ code }) => code === 'accessible-passage');
    expect(old).toMatchObject({ measured_mm: 1050, wanted_mm: 1200, level: 'short', source: 'accessible-housing-uk' });
    const seated = hints({}, ['over-65', 'wheelchair']);
    expect(seated.find(({ code }) => code === 'accessible-passage')).toMatchObject({ wanted_mm: 1500 });
    expect(seated.find(({ code }) => code === 'counter-height')).toMatchObject({
      measured_mm: 900,
      wanted_mm: 864,
      bound: 'most',
      level: 'short',
    });
  });

  it('take thin stone at 6 in, and never more than a third of the depth', () => {
    const stone = (change: Partial<Kitchen>) => hints(change).find(({ code }) => code === 'stone-overhang')!.wanted_mm;
    expect(
      stone({
        counter: { ...usual.counter, thickness: 20 },
        wall_units: { ...usual.wall_units, gap_above_counter: 510 },
      }),
    ).toBe(152);
    expect(stone({ island: { ...usual.island!, depth: 690, seat_overhang: 230, y: 1500 } })).toBe(230);
  });

  it('measure between the runs of a galley, and before a single run to the wall', () => {
    const galley = kitchenFor('galley', 'eu', usualRoom('galley', 'eu'))!;
    expect(measured(clearanceHints(galley), 'work-aisle')).toEqual([2600 - 2 * 620]);
    const single = kitchenFor('one-wall', 'eu', usualRoom('one-wall', 'eu'))!;
    expect(measured(clearanceHints(single), 'work-aisle')).toEqual([3200 - 620]);
  });
});
