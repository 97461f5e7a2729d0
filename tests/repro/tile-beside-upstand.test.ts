import { expect, it } from 'vitest';
import { laidFields } from '../../src/kitchen/parts/backsplash';
import { planKitchen } from '../../src/kitchen/plan/plan-kitchen';
import type { Kitchen } from '../../src/model/kitchen';
import { LAYOUTS } from '../kitchen/layouts';

// Tile on a side wall stopped 15 mm short of the back wall over its whole height where that has an upstand, 100 mm high.

const of = (back: 'upstand' | 'backsplash'): Kitchen => ({
  ...LAYOUTS['U']!,
  runs: LAYOUTS['U']!.runs.map((run) => ({ ...run, splash: run.wall === 'back' ? back : 'backsplash' })),
});
const mm = (m: number): number => Math.round(m * 1e4) / 10;

it('tile in a corner with an upstand is cut as high as the upstand, and goes on to the wall above it', () => {
  const plan = planKitchen(of('upstand'));
  const { height, depth } = { height: mm(plan.upstand), depth: mm(plan.depth) };
  expect(height).toBeGreaterThan(0);
  for (const run of plan.runs.filter(({ wall }) => wall !== 'back')) {
    const fields = laidFields(plan, run).map(({ a, z }) => [mm(a[1]), mm(z[0]), mm(z[1])]);
    const [top, units] = [mm(plan.counter.top), mm(plan.wallUnits.bottom)];
    expect(fields).toEqual([
      [depth - 15, top, top + height],
      [depth, top + height, units],
    ]);
  }
});

it('tile in a corner with tile is one field, shorter by the tile across', () => {
  const plan = planKitchen(of('backsplash'));
  for (const run of plan.runs.filter(({ wall }) => wall !== 'back')) {
    expect(laidFields(plan, run).map(({ a }) => mm(a[1]))).toEqual([mm(plan.depth) - 8]);
  }
});
