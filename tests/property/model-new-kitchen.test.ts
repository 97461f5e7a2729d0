import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { changeLayout, layoutOf } from '../../src/model/change-layout';
import { checkKitchen } from '../../src/model/check-kitchen';
import type { Kitchen, Region } from '../../src/model/kitchen';
import { planRows } from '../../src/model/layout/plan-rows';
import { changeRegion, kitchenFor, usualRoom } from '../../src/model/new-kitchen';
import { fitToRoom } from '../../src/model/new-kitchen/fit-to-room';
import { LAYOUTS, type LayoutId } from '../../src/model/new-kitchen/layout-drafts';

const REGIONS: readonly Region[] = ['eu', 'uk', 'us'];
const texts = (kitchen: Kitchen): readonly string[] => checkKitchen(kitchen, 'kitchen').map(({ text }) => text);

/** Least rooms (mm) each layout has to be offered in: less than anybody would choose it for. */
const LEAST: { readonly [L in LayoutId]: readonly [width: number, depth: number] } = {
  'one-wall': [2000, 1700],
  galley: [2300, 2200],
  l: [2600, 2400],
  u: [2900, 2400],
  'l-island': [3800, 3300],
  peninsula: [3200, 3600],
};

const layouts = fc.constantFrom(...LAYOUTS);
const regions = fc.constantFrom(...REGIONS);
const roomFor = (layout: LayoutId) =>
  fc.record({
    width: fc.integer({ min: LEAST[layout][0], max: 9000 }),
    depth: fc.integer({ min: LEAST[layout][1], max: 9000 }),
    height: fc.integer({ min: 2200, max: 3200 }),
  });
const asked = layouts.chain((layout) =>
  fc.record({ layout: fc.constant(layout), region: regions, room: roomFor(layout) }),
);

describe('a kitchen for a room', () => {
  it('is there from small to large rooms, sound, lit and of the layout asked for', () => {
    fc.assert(
      fc.property(asked, ({ layout, region, room }) => {
        const kitchen = kitchenFor(layout, region, room);
        expect(kitchen).not.toBeNull();
        expect(texts(kitchen!)).toEqual([]);
        expect(layoutOf(kitchen!)).toBe(layout);
        expect(kitchen!.room).toEqual(room);
        expect(kitchen!.fixtures.some(({ group }) => group === 'ceiling')).toBe(true);
      }),
      { numRuns: 60 },
    );
  });

  it.each(LAYOUTS.flatMap((layout) => REGIONS.map((region) => [layout, region] as const)))(
    'has everything in a usual room: %s, %s',
    (layout, region) => {
      const kitchen = kitchenFor(layout, region, usualRoom(layout, region))!;
      expect(texts(kitchen)).toEqual([]);
      expect(kitchen.openings).toHaveLength(1);
      expect(kitchen.dishwasher).not.toBe('none');
      expect(kitchen.runs.flatMap(({ tall_from, tall_to }) => [...tall_from, ...tall_to])).toContain('fridge');
      expect(kitchen.fixtures.map(({ kind }) => kind)).toEqual(
        expect.arrayContaining(['panel', 'hood', 'under-cabinet']),
      );
      expect(planRows(kitchen).runs.some(({ over }) => over.length > 0)).toBe(true);
    },
  );
});

describe('a kitchen changed', () => {
  it('keeps sizes, fronts and place in another layout, or tells that it does not go in', () => {
    fc.assert(
      fc.property(asked, layouts, ({ layout, region, room }, next) => {
        const before = kitchenFor(layout, region, room)!;
        const after = changeLayout(before, next)?.kitchen;
        if (!after) return;
        expect(texts(after)).toEqual([]);
        expect(layoutOf(after)).toBe(next);
        for (const field of ['room', 'fronts', 'base', 'counter', 'site', 'region', 'fridge'] as const) {
          expect(after[field]).toEqual(before[field]);
        }
        expect(after.sink.fit).toBe(before.sink.fit);
        expect(after.cooktop.kind).toBe(before.cooktop.kind);
      }),
      { numRuns: 60 },
    );
  });

  it('follows its room', () => {
    fc.assert(
      fc.property(
        asked.chain((one) => fc.record({ one: fc.constant(one), room: roomFor(one.layout) })),
        ({ one: { layout, region, room: first }, room }) => {
          const before = kitchenFor(layout, region, first)!;
          const after = fitToRoom(before, room)?.kitchen;
          expect(after).toBeDefined();
          expect(texts(after!)).toEqual([]);
          expect(after!.room).toEqual(room);
        },
      ),
      { numRuns: 60 },
    );
  });

  it('takes the sizes of another region', () => {
    fc.assert(
      fc.property(asked, regions, ({ layout, region, room }, next) => {
        const after = changeRegion(kitchenFor(layout, region, room)!, next)?.kitchen;
        if (!after) return;
        expect(texts(after)).toEqual([]);
        expect(after.region).toBe(next);
      }),
      { numRuns: 60 },
    );
  });
});
