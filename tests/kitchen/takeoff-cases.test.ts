import { expect, it } from 'vitest';
import type { SurfaceId } from '../../src/engine/surface';
import { planKitchen } from '../../src/kitchen/plan/plan-kitchen';
import { uncovered } from '../../src/kitchen/takeoff/plane-area';
import { takeOff } from '../../src/kitchen/takeoff/take-off';
import type { SurfaceTakeoff } from '../../src/kitchen/takeoff/types';
import type { Kitchen } from '../../src/model/kitchen';
import { kitchenMisfits } from '../../src/model/kitchen-misfits';
import { kitchenFor } from '../../src/model/new-kitchen';
import { areaOfParts } from '../../src/model/quantity/area-of-parts';
import { USUAL_ASSUMPTIONS } from '../../src/model/quantity/assumptions';
import { LAYOUTS } from './layouts';

// Worked by hand where nothing else is said.

const usual = LAYOUTS['L with island']!;
const [left, back] = usual.runs;

function measured(kitchen: Kitchen, surface: SurfaceId, rules = {}): SurfaceTakeoff {
  expect(kitchenMisfits(kitchen)).toEqual([]);
  return takeOff(kitchen, { ...USUAL_ASSUMPTIONS, ...rules }).get(surface)!;
}

/** An L of two runs with free ends, and an island. */
const freeL: Kitchen = {
  ...usual,
  room: { width: 5000, depth: 4600, height: 2500 },
  runs: [
    { ...left!, from: 2200, to: 4600 },
    { ...back!, from: 0, to: 3600, tall_to: [] },
  ],
  island: { ...usual.island!, x: 1600, y: 1600, width: 2000, depth: 1000 },
  sink: { ...usual.sink, center: 3200 },
  cooktop: { ...usual.cooktop, center: 2200 },
  openings: [],
};

it('measures an L counter of 3600 + 2400 mm, 620 deep, and an island of 2000 x 1000', () => {
  const counter = measured(freeL, 'counter');
  const island = measured(freeL, 'island-counter');
  // 3.6 x 0.62 + (2.4 - 0.62) x 0.62 + 2.0 x 1.0; cut-outs stay.
  expect(counter.area_m2 + island.area_m2).toBeCloseTo(5.3356, 9);
  // 2.98 + 1.78 + 2 x 0.62 + 6.0: both outer ends free.
  expect(counter.length_m! + island.length_m!).toBeCloseTo(12, 9);
  expect(counter.corner_joints).toBe(1);
  expect(counter.parts).toMatchObject([
    { kind: 'leg', length_mm: 3600, width_mm: 620, count: 1 },
    { kind: 'leg', length_mm: 1780, width_mm: 620, count: 1 },
  ]);
  // A cooktop plate of 860 mm in the back leg; a bowl of 560 mm in the other, from its low end.
  expect(counter.parts.map(({ cutouts_mm }) => cutouts_mm!.map(([from, to]) => to - from))).toEqual([[860], [560]]);
  expect(island.parts).toEqual([{ kind: 'island', length_mm: 2000, width_mm: 1000, count: 1 }]);
});

it('measures a counter in inches: 144 + 96 in, 25 1/2 in deep, an island of 84 x 42 in', () => {
  const inch = 25.4;
  const us = kitchenFor('l-island', 'us', { width: 230 * inch, depth: 220 * inch, height: 96 * inch })!;
  const [side, wall] = us.runs;
  const kitchen: Kitchen = {
    ...us,
    counter: { ...us.counter, depth: 25.5 * inch },
    runs: [
      { ...side!, wall: 'left', from: 124 * inch, to: 220 * inch, tall_from: [], tall_to: [] },
      { ...wall!, wall: 'back', from: 0, to: 144 * inch, tall_from: [], tall_to: [] },
    ],
    island: { ...us.island!, x: 80 * inch, y: 80 * inch, width: 84 * inch, depth: 42 * inch },
    sink: { ...us.sink, run: 'left', center: 155 * inch },
    cooktop: { ...us.cooktop, run: 'back', center: 85 * inch },
    openings: [],
    fixtures: [],
  };
  const area = measured(kitchen, 'counter').area_m2 + measured(kitchen, 'island-counter').area_m2;
  // 3672 + 1797.75 + 3528 square inches.
  expect(area / (inch / 1000) ** 2).toBeCloseTo(8997.75, 6);
});

it('takes openings and what is behind units off the walls', () => {
  // 4.2 x 3.6 x 2.4 m, a door of 0.9 x 2.1 m and a window of 1.2 x 1.0 m; along 6.0 m of the walls units, counter, backsplash and wall
  // units stand 2.12 m high without a gap.
  const kitchen: Kitchen = {
    ...freeL,
    room: { width: 4200, depth: 3600, height: 2400 },
    runs: [
      { ...left!, from: 1200, to: 3600, over: 'units', splash: 'backsplash' },
      { ...back!, from: 0, to: 3600, tall_to: [], over: 'units', splash: 'backsplash' },
    ],
    island: null,
    sink: { ...usual.sink, center: 2200 },
    cooktop: { ...usual.cooktop, center: 2200, hood: 'none' },
    door: { width: 900, height: 2100, from_right: 200 },
    openings: [
      { ...usual.openings[0]!, wall: 'right', center: 1200, width: 1200, sill: 1050, height: 1000, leaves: 1 },
    ],
  };
  const wall = measured(kitchen, 'wall');
  expect(wall.gross_m2).toBeCloseTo(37.44, 9);
  const openings = wall.deductions.filter(({ kind }) => kind === 'door' || kind === 'window');
  expect(openings.reduce((sum, { area_m2 }) => sum + area_m2, 0)).toBeCloseTo(3.09, 9);
  // The plain sum 37.44 - 3.09 - 6.0 x 2.12 is 21.63. Here more shows: under the counters' overhang at both free ends, 20 mm x
  // 870 mm, and beside the rows of wall units, 720 mm high: none hang over a cooktop without a hood,
  // modules leave some of the length, and the two rows in the corner stop 330 mm before it, where the back row's box closes the whole.
  const rows = planKitchen(kitchen).runs.flatMap(({ over }) => over);
  const wide = rows.reduce((sum, { from, to }) => sum + to - from, 0) + 2 * 0.33;
  expect(rows).toHaveLength(3);
  expect(wall.area_m2).toBeCloseTo(21.63 + 2 * 0.02 * 0.87 + (6 - wide) * 0.72, 9);
  // The window counts as wall where openings of its size are not taken off.
  const all = measured(kitchen, 'wall', { least_opening_m2: 1.5 });
  expect(all.area_m2 - wall.area_m2).toBeCloseTo(1.2, 9);
  // Painted behind units, all but openings and tile.
  const behind = measured(kitchen, 'wall', { paint_behind_units: true });
  expect(behind.area_m2).toBeCloseTo(37.44 - 3.09 - 6.0 * 0.5, 9);
});

it('sums one face of fronts', () => {
  const front = (length_mm: number, width_mm: number, count: number) =>
    ({ kind: 'door', length_mm, width_mm, count }) as const;
  const parts = [front(597, 715, 4), front(397, 715, 2), front(597, 140, 2), front(597, 283, 4)];
  expect(areaOfParts(parts)).toBeCloseTo(3.118, 3);
});

it('makes fronts 3 mm narrower than their modules and 5 mm lower than their carcass: 600 x 720 is 597 x 715', () => {
  const { parts } = measured(usual, 'base-fronts');
  const widths = new Set(parts.filter(({ kind }) => kind === 'door').map(({ length_mm }) => (length_mm + 3) % 50));
  expect([...widths]).toEqual([0]);
  expect(parts).toContainEqual({ kind: 'door', length_mm: 597, width_mm: 715, count: 2 });
  expect(parts.filter(({ kind }) => kind === 'drawer').map(({ width_mm }) => width_mm)).toContain(140);
});

it('measures what covers leave of a rectangle, and its outlines', () => {
  const whole = { a: [0, 4], z: [0, 3] } as const;
  expect(uncovered(whole, [])).toEqual({ area: 12, outline: 14 });
  // A corner of 1 x 1 keeps the outline; a hole of 1 x 1 adds 4 m; covers that overlap count once.
  const corner = { a: [-1, 1], z: [2, 5] } as const;
  const hole = { a: [2, 3], z: [1, 2] } as const;
  expect(uncovered(whole, [corner])).toEqual({ area: 11, outline: 14 });
  expect(uncovered(whole, [corner, hole, hole])).toEqual({ area: 10, outline: 18 });
  expect(uncovered(whole, [whole])).toEqual({ area: 0, outline: 0 });
});

it('counts slabs down to the floor, with a joint each and their upright edges in place of the top one', () => {
  const both: Kitchen = { ...freeL, island: { ...freeL.island!, waterfall: 'both' } };
  const island = measured(both, 'island-counter');
  // 150 + 720 + 30 mm high: mitred up to the top of the counter.
  expect(island.parts[1]).toEqual({ kind: 'waterfall', length_mm: 900, width_mm: 1000, count: 2 });
  expect(island.area_m2).toBeCloseTo(2 + 2 * 0.9, 9);
  // 2 x 2.0 m along it, four upright edges.
  expect(island.length_m).toBeCloseTo(4 + 4 * 0.9, 9);
  expect(island.corner_joints).toBe(2);
});

it('cuts strips for a built-up edge, as wide as the edge is high', () => {
  const mitred: Kitchen = { ...freeL, counter: { ...freeL.counter, edge: 'mitred' } };
  const strips = measured(mitred, 'counter').parts.filter(({ kind }) => kind === 'edge-strip');
  // 30 mm of slab and as much below it; in corners strips, 20 mm thick, are that much longer or shorter than the edge.
  expect(new Set(strips.map(({ width_mm }) => width_mm))).toEqual(new Set([60]));
  const long = strips.reduce((sum, { length_mm, count }) => sum + length_mm * count, 0);
  expect(long).toBeCloseTo(2980 + 1780 + 2 * 620, -2);
});

it('counts the joint of a leg with a peninsula', () => {
  const kitchen = LAYOUTS['L with peninsula']!;
  // One in the corner of the room, one at the peninsula.
  expect(measured(kitchen, 'counter').corner_joints).toBe(2);
  expect(measured(kitchen, 'island-counter').corner_joints).toBe(0);
  // 2.2 x 0.9 m: free are its end, its front along the seats, its back beyond the leg, 620 mm deep.
  expect(measured(kitchen, 'island-counter').length_m).toBeCloseTo(0.9 + 2.2 + (2.2 - 0.62), 9);
});

it('leaves the edge out where an apron stands', () => {
  const apron: Kitchen = { ...freeL, sink: { ...freeL.sink, fit: 'apron' } };
  const gap = measured(freeL, 'counter').length_m! - measured(apron, 'counter').length_m!;
  expect(gap).toBeCloseTo(0.56, 9);
});

it('counts handles by their length, and grip rails where there are none', () => {
  const bars = measured(freeL, 'hardware');
  const fronts = (['base-fronts', 'island-fronts', 'wall-fronts'] as const).flatMap(
    (surface) => measured(freeL, surface).parts,
  );
  const pulled = fronts.filter(({ kind }) => kind === 'door' || kind === 'drawer');
  expect(bars.count).toBe(pulled.reduce((sum, { count }) => sum + count, 0));
  // Bars of 160 mm, of 320 mm on wide drawers; the lever of the door is not counted.
  expect([...new Set(bars.parts.map(({ kind, length_mm }) => `${kind} ${length_mm}`))].sort()).toEqual([
    'handle 160',
    'handle 320',
    'lever 0',
  ]);
  const none = measured({ ...freeL, fronts: { ...freeL.fronts, handle: 'none' } }, 'hardware');
  const rails = none.parts.filter(({ kind }) => kind === 'grip-rail');
  expect(none.count).toBe(rails.reduce((sum, { count }) => sum + count, 0));
  expect(none.length_m! * 1000).toBeCloseTo(
    rails.reduce((sum, { length_mm, count }) => sum + length_mm * count, 0),
    6,
  );
  expect(none.length_m).toBeGreaterThan(5);
});

it('counts appliances that show', () => {
  const shown = (kitchen: Kitchen): string =>
    measured(kitchen, 'appliance')
      .parts.map(({ kind, count }) => `${count} ${kind}`)
      .sort()
      .join(', ');
  expect(shown(usual)).toBe('1 cooktop, 1 hood, 1 oven');
  expect(shown(LAYOUTS['galley']!)).toBe('1 cooktop, 1 fridge, 1 hood, 1 oven');
  expect(shown(LAYOUTS['U']!)).toBe('1 cooktop, 1 dishwasher, 1 hood');
});

it('takes a window out of the tile it stands in', () => {
  const tiled: Kitchen = {
    ...usual,
    runs: [{ ...left!, splash: 'backsplash-to-ceiling' }, back!],
  };
  const tile = measured(tiled, 'backsplash');
  // 1.8 x 1.2 m; the left wall is tiled from the counter, 0.9 m, to the ceiling, 2.5 m, over 3.09 m, less 8 mm
  // beside the tile in the corner, which is 0.5 m high.
  expect(tile.deductions).toEqual([
    { kind: 'window', area_m2: expect.closeTo(1.8 * 1.2, 9) },
    // The back wall's row of wall units ends against it: 310 mm deep, 720 mm high; a filler in the plane of its
    // fronts, 20 x 715 mm; the end of its rail, 18 x 30 mm.
    { kind: 'units', area_m2: expect.closeTo(0.31 * 0.72 + 0.02 * 0.715 + 0.018 * 0.03, 9) },
  ]);
  expect(tile.gross_m2).toBeCloseTo(measured(usual, 'backsplash').gross_m2 + 3.082 * 0.5 + 3.09 * 1.1, 9);
  const small = measured(tiled, 'backsplash', { least_opening_m2: 3 });
  expect(small.deductions.map(({ kind }) => kind)).toEqual(['units']);
});

it('measures the floor under units or up to plinths, with the outline that a gap follows', () => {
  const kitchen = LAYOUTS['one wall']!;
  const under = measured(kitchen, 'floor');
  expect([under.area_m2, under.length_m]).toEqual([expect.closeTo(4.2 * 3.2, 9), expect.closeTo(14.8, 9)]);
  const upTo = measured(kitchen, 'floor', { floor_reach: 'to-plinth' });
  // Plinths stand 50 mm behind fronts 600 mm before the wall; the panel beside the fridge, 20 mm or more, reaches to 620 mm.
  const { tall } = planKitchen(kitchen).runs[0]!;
  const panel = tall[0]!.panels[0]!.to - tall[0]!.panels[0]!.from;
  expect(upTo.area_m2).toBeCloseTo(4.2 * (3.2 - 0.55) - panel * 0.07, 9);
  expect(upTo.length_m).toBeCloseTo(2 * (4.2 + 3.2 - 0.55) + 2 * 0.07, 9);
});

it('takes an open side off its wall, and measures nothing of the room beyond', () => {
  const kitchen = LAYOUTS['U with island, open side']!;
  const wall = measured(kitchen, 'wall', { least_opening_m2: 5 });
  // 2.7 x 2.2 m.
  expect(wall.deductions).toContainEqual({ kind: 'open-side', area_m2: expect.closeTo(2.7 * 2.2, 9) });
  expect(wall.gross_m2).toBeCloseTo(2 * (5.2 + 5) * 2.6, 9);
  expect(measured(kitchen, 'floor').gross_m2).toBeCloseTo(5.2 * 5, 9);
  expect(measured(kitchen, 'ceiling').area_m2).toBeCloseTo(5.2 * 5, 9);
});

it('knows of counters and what stands on them where they run, and where seams are better not set', () => {
  const dishwasher = LAYOUTS['U']!;
  const plan = planKitchen(dishwasher);
  const run = plan.runs.find(({ base }) => base.units.some(({ kind }) => kind === 'dishwasher'))!;
  const unit = run.base.units.find(({ kind }) => kind === 'dishwasher')!;
  const leg = measured(dishwasher, 'counter').parts.find(({ along }) => along?.line === run.wall)!;
  expect(leg.along!.from_mm).toBeCloseTo(1000 * run.counter.from, 1);
  expect(leg.avoid).toEqual([
    {
      what: 'dishwasher',
      span_mm: [
        expect.closeTo(1000 * (unit.from - run.counter.from), 1),
        expect.closeTo(1000 * (unit.to - run.counter.from), 1),
      ],
    },
  ]);
  // A cooktop 900 mm wide, its plate 20 mm clear of the unit's ends.
  const tiled: Kitchen = { ...freeL, runs: [freeL.runs[0]!, { ...freeL.runs[1]!, splash: 'backsplash' }] };
  const [field] = measured(tiled, 'backsplash').parts;
  const { module } = planKitchen(tiled).cooktop;
  expect(field!.along).toMatchObject({ line: 'back' });
  const [from, to] = field!.avoid![0]!.span_mm;
  expect([field!.along!.from_mm + from, to - from]).toEqual([1000 * module.from + 20, 860]);
});
