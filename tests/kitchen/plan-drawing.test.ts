import { expect, it } from 'vitest';
import scene from '../../scenes/l-island.json';
import { drawPlan } from '../../src/kitchen/plan/plan-drawing';
import type { Kitchen } from '../../src/model/kitchen';
import { LAYOUTS } from './layouts';

const kitchen = scene as unknown as Kitchen;

it('draws the units, the window, the door and the lamps in mm from the front left corner', () => {
  const plan = drawPlan(kitchen);
  expect([plan.width_mm, plan.depth_mm]).toEqual([4600, 4000]);
  expect(plan.openings).toEqual([{ id: 'window', wall: 'left', from: 1450, to: 3250 }]);
  expect(plan.door).toMatchObject({ from: 3500, to: 4400 });
  // Hinged at the end away from its lever, it opens by its own width.
  expect(plan.door.swing).toEqual({ hinge: [4400, 0], open: [4400, 900] });
  // The sink's middle is the record's; the bowl is 560 mm long.
  expect(plan.shapes.find(({ kind }) => kind === 'sink')).toMatchObject({ y: 2070, depth: 560 });
  expect(plan.shapes.find(({ kind }) => kind === 'island')).toEqual({
    kind: 'island',
    x: 1750,
    y: 1350,
    width: 1800,
    depth: 900,
  });
  for (const { x, y, width, depth } of plan.shapes) {
    expect(Math.min(x, y)).toBeGreaterThanOrEqual(0);
    expect(x + width).toBeLessThanOrEqual(4600);
    expect(y + depth).toBeLessThanOrEqual(4000);
  }
});

it('puts lamps where they are given, pendants else in a row over the island', () => {
  const base = { group: 'pendant', beam: { kind: 'wide' }, kind: 'pendant', diameter: 300, height: 1600 } as const;
  const given = { ...base, id: 'given', count: 1, lumens_each: 500, at: [[1000, 700] as const] };
  const row = { ...base, id: 'row', count: 3, lumens_each: 500 };
  const { lamps } = drawPlan({ ...kitchen, fixtures: [given, row] });
  expect(lamps.map(({ fixture, x, y }) => [fixture, x, y])).toEqual([
    ['given', 1000, 700],
    ['row', 2050, 1800],
    ['row', 2650, 1800],
    ['row', 3250, 1800],
  ]);
});

it('draws what other layouts have: waterfall ends, two bowls, an open side', () => {
  const plan = drawPlan(LAYOUTS['U with island, open side']!);
  const falls = plan.shapes.filter(({ kind }) => kind === 'waterfall');
  // As thick as the counter (30 mm), at both ends of the island.
  expect(falls.map(({ x, width }) => [x, width])).toEqual([
    [1700, 30],
    [3470, 30],
  ]);
  expect(plan.shapes.filter(({ kind }) => kind === 'sink')).toHaveLength(2);
  expect(plan.openSide).toEqual({ wall: 'front', from: 500, to: 3200, next_depth_mm: 3000 });
  expect(drawPlan(kitchen).openSide).toBeNull();
});
