import fc from 'fast-check';
import { expect, it } from 'vitest';
import { madeGroups } from '../../src/kitchen/schedule/made-groups';
import { areaOfParts } from '../../src/model/quantity/area-of-parts';
import { demoAfter, rowIn, scheduled } from './schedule';

const part = (kind: 'door' | 'drawer' | 'panel', length_mm: number, width_mm: number, count: number) => ({
  kind,
  length_mm,
  width_mm,
  count,
});

it('counts alike parts together wherever they stand, kind by kind, the largest first', () => {
  const parts = [
    part('panel', 600, 870, 1),
    part('door', 397, 715, 2),
    part('drawer', 897, 140, 1),
    part('door', 597, 715, 2),
    part('door', 397, 715, 4),
    part('door', 715, 397, 1),
  ];
  expect(madeGroups(parts)).toEqual([
    {
      kind: 'door',
      count: 9,
      sizes: [part('door', 597, 715, 2), part('door', 715, 397, 1), part('door', 397, 715, 6)],
    },
    { kind: 'drawer', count: 1, sizes: [part('drawer', 897, 140, 1)] },
    { kind: 'panel', count: 1, sizes: [part('panel', 600, 870, 1)] },
  ]);
});

it('keeps every part: number and area of each kind are those of the parts', () => {
  const size = fc.constantFrom(140, 300, 597, 715);
  const some = fc.record({
    kind: fc.constantFrom('door', 'drawer', 'panel'),
    length_mm: size,
    width_mm: size,
    count: fc.integer({ min: 1, max: 9 }),
  });
  fc.assert(
    fc.property(fc.array(some), (parts) => {
      const groups = madeGroups(parts);
      expect(groups.reduce((sum, { count }) => sum + count, 0)).toBe(parts.reduce((sum, { count }) => sum + count, 0));
      for (const { kind, sizes } of groups) {
        const area = areaOfParts(parts.filter((one) => one.kind === kind));
        expect(areaOfParts(sizes)).toBeCloseTo(area, 9);
        const areas = sizes.map((one) => one.length_mm * one.width_mm);
        expect(areas).toEqual([...areas].sort((a, b) => b - a));
      }
    }),
  );
});

it('leaves no kind of part out, and a painted toe kick is listed with its fronts', () => {
  for (const { quantity } of scheduled(demoAfter()).rows) {
    const kinds = new Set((quantity?.parts ?? []).map(({ kind }) => kind));
    expect(new Set(madeGroups(quantity?.parts ?? []).map(({ kind }) => kind))).toEqual(kinds);
  }
  const fronts = rowIn(scheduled(demoAfter()), 'FR1').quantity!.parts;
  expect(fronts.some(({ kind }) => kind === 'strip')).toBe(true);
});
