import fc from 'fast-check';
import { expect, it } from 'vitest';
import { counterSlabs } from '../../src/kitchen/parts/slabs';
import { planKitchen } from '../../src/kitchen/plan/plan-kitchen';
import { takeOff } from '../../src/kitchen/takeoff/take-off';
import type { SurfaceTakeoff } from '../../src/kitchen/takeoff/types';
import { kitchenMisfits } from '../../src/model/kitchen-misfits';
import { mirrorKitchen } from '../../src/model/layout/mirror-kitchen';
import { planRows } from '../../src/model/layout/plan-rows';
import type { Span } from '../../src/model/layout/types';
import { areaOfParts } from '../../src/model/quantity/area-of-parts';
import { USUAL_ASSUMPTIONS } from '../../src/model/quantity/assumptions';
import { randomKitchens } from './layouts';

const rules = fc.record({
  floor_reach: fc.constantFrom<'under-units' | 'to-plinth'>('under-units', 'to-plinth'),
  least_opening_m2: fc.constantFrom(0, 0.5, 5),
  paint_behind_units: fc.boolean(),
});

const sum = (list: readonly number[]): number => list.reduce((all, one) => all + one, 0);
const numbersIn = (one: SurfaceTakeoff): number[] => [
  one.area_m2,
  one.gross_m2,
  one.length_m ?? 0,
  one.corner_joints ?? 0,
  one.count ?? 0,
  ...one.deductions.map(({ area_m2 }) => area_m2),
  ...one.parts.flatMap(({ length_mm, width_mm, count, cutouts_mm = [] }) => [
    length_mm,
    width_mm,
    count,
    ...cutouts_mm.flat(),
  ]),
];

it('measures nothing below 0, takes off no more than there is, and has parts of the size of the whole', () => {
  fc.assert(
    fc.property(randomKitchens, rules, (kitchen, rules) => {
      for (const one of takeOff(kitchen, rules).values()) {
        for (const value of numbersIn(one)) expect(value, one.surface).toBeGreaterThanOrEqual(0);
        const off = sum(one.deductions.map(({ area_m2 }) => area_m2));
        expect(one.area_m2, one.surface).toBeCloseTo(one.gross_m2 - off, 9);
        if (one.count === undefined) expect(one.gross_m2, one.surface).toBeGreaterThan(0);
        // Parts are rounded to a tenth of a millimetre: of parts a few metres long less than this.
        const parts = sum(one.parts.map(({ count }) => count));
        if (one.count === undefined) expect(Math.abs(areaOfParts(one.parts) - one.gross_m2)).toBeLessThan(3e-4 * parts);
      }
    }),
    { numRuns: 60 },
  );
});

it('has no surface of an island where there is none', () => {
  fc.assert(
    fc.property(randomKitchens, rules, (kitchen, rules) => {
      const bare = { ...kitchen, island: null };
      fc.pre(kitchenMisfits(bare).length === 0);
      const surfaces = [...takeOff(bare, rules).keys()];
      expect(surfaces.filter((surface) => surface.startsWith('island'))).toEqual([]);
    }),
    { numRuns: 20 },
  );
});

it('finds a joint wherever two slabs touch, and keeps cut-outs on their slab', () => {
  fc.assert(
    fc.property(randomKitchens, (kitchen) => {
      const counter = takeOff(kitchen, USUAL_ASSUMPTIONS).get('counter')!;
      const slabs = counterSlabs(planKitchen(kitchen)).map(({ box }) => box);
      const touching = slabs.flatMap(([min, max], i) =>
        slabs.slice(i + 1).filter((other) => {
          const shared = [0, 1].map((k) => Math.min(max[k]!, other[1][k]!) - Math.max(min[k]!, other[0][k]!));
          return Math.min(...shared) > -1e-6 && Math.max(...shared) > 1e-3;
        }),
      );
      expect(counter.corner_joints).toBe(touching.length);
      const cutouts = counter.parts.flatMap(({ cutouts_mm = [], length_mm }) =>
        cutouts_mm.map(([from, to]) => ({ from, to, length_mm })),
      );
      expect(cutouts).toHaveLength(2);
      for (const { from, to, length_mm } of cutouts) {
        expect(from).toBeGreaterThan(0);
        expect(to).toBeGreaterThan(from);
        expect(to).toBeLessThan(length_mm);
      }
    }),
    { numRuns: 60 },
  );
});

it('takes more off with a lower limit for openings, and less where walls are painted behind units', () => {
  fc.assert(
    fc.property(randomKitchens, (kitchen) => {
      const wall = (least_opening_m2: number, paint_behind_units: boolean): number =>
        takeOff(kitchen, { floor_reach: 'under-units', least_opening_m2, paint_behind_units }).get('wall')!.area_m2;
      expect(wall(0, false)).toBeLessThanOrEqual(wall(0.5, false) + 1e-9);
      expect(wall(0.5, false)).toBeLessThan(wall(0.5, true));
    }),
    { numRuns: 20 },
  );
});

it('measures the mirrored kitchen the same, fronts and handles too', () => {
  fc.assert(
    fc.property(randomKitchens, rules, (kitchen, rules) => {
      const other = mirrorKitchen(kitchen);
      expect(kitchenMisfits(other)).toEqual([]);
      const here = takeOff(kitchen, rules);
      const there = takeOff(other, rules);
      expect([...there.keys()]).toEqual([...here.keys()]);
      for (const [surface, one] of here) {
        const two = there.get(surface)!;
        for (const key of ['area_m2', 'gross_m2', 'length_m', 'corner_joints', 'count'] as const) {
          expect(two[key] ?? 0, `${surface} ${key}`).toBeCloseTo(one[key] ?? 0, 6);
        }
      }
    }),
    { numRuns: 60 },
  );
});

it('fills the rows of the mirrored kitchen as the mirror image of its own', () => {
  const image = (width: number, spans: readonly Span[]): readonly (readonly number[])[] =>
    spans.map(({ from, to }) => [width - to, width - from]).sort((a, b) => a[0]! - b[0]!);
  const places = (spans: readonly Span[]): readonly (readonly number[])[] =>
    spans.map(({ from, to }) => [from, to]).sort((a, b) => a[0]! - b[0]!);
  const near = (one: readonly (readonly number[])[], two: readonly (readonly number[])[]): void => {
    expect(two.length).toBe(one.length);
    for (const [i, [from, to]] of one.entries()) {
      expect(two[i]![0]).toBeCloseTo(from!, 6);
      expect(two[i]![1]).toBeCloseTo(to!, 6);
    }
  };
  fc.assert(
    fc.property(randomKitchens, (kitchen) => {
      const { width } = kitchen.room;
      const [here, there] = [planRows(kitchen), planRows(mirrorKitchen(kitchen))];
      for (const run of here.runs) {
        const wall = run.wall === 'left' ? 'right' : run.wall === 'right' ? 'left' : 'back';
        const other = there.runs.find((one) => one.wall === wall)!;
        const turned = (spans: readonly Span[]) => (wall === 'back' ? image(width, spans) : places(spans));
        near(turned(run.base.units), places(other.base.units));
        near(turned(run.base.fillers), places(other.base.fillers));
        near(turned(run.over.flatMap(({ units }) => units)), places(other.over.flatMap(({ units }) => units)));
        near(turned(run.over), places(other.over));
        near(turned(run.tall), places(other.tall));
        expect(other.base.units.map(({ kind }) => kind)).toEqual(
          wall === 'back' ? run.base.units.map(({ kind }) => kind).reverse() : run.base.units.map(({ kind }) => kind),
        );
      }
      if (here.island) near(image(width, here.island.row.units), places(there.island!.row.units));
    }),
    { numRuns: 300 },
  );
});
