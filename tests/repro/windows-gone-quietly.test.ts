import fc from 'fast-check';
import { expect, it } from 'vitest';
import { changeLayout } from '../../src/model/change-layout';
import type { Kitchen, Opening } from '../../src/model/kitchen';
import { changeRegion, kitchenFor, usualRoom } from '../../src/model/new-kitchen';
import { fitToRoom } from '../../src/model/new-kitchen/fit-to-room';
import { LAYOUTS } from '../../src/model/new-kitchen/layout-drafts';
import { type Loss, lossesOf, withLosses } from '../../src/model/new-kitchen/losses';
import { lossSentences } from '../../src/ui/words/losses';

// Another layout, room or region left windows, appliances and lamps out without a word.
const usual = (layout: (typeof LAYOUTS)[number]): Kitchen => kitchenFor(layout, 'eu', usualRoom(layout, 'eu'))!;
const parts = (losses: readonly Loss[]) => losses.map(({ part, id, fate }) => [part, id, fate].join(' '));

it('a room too short for its window tells that it is gone, made smaller or moved', () => {
  const start = usual('one-wall');
  const before: Kitchen = { ...start, runs: [{ ...start.runs[0]!, tall_to: ['larder', 'fridge'] }] };
  const small = fitToRoom(before, { ...before.room, width: 2000, depth: 1700 })!;
  const [window] = before.openings;
  const now = small.kitchen.openings.find(({ id }) => id === window!.id);
  const isSame = now && now.width >= window!.width && now.height >= window!.height;
  expect(isSame).toBe(false);
  expect(parts(small.losses).some((one) => one.startsWith('opening window '))).toBe(true);
  // So are tall units.
  expect(parts(small.losses)).toContain('tall larder left-out');
  expect(parts(small.losses)).toContain('layout layout anew');
});

it('a layout that takes a wall from a window and its lamps tells both', () => {
  const island = usual('l-island');
  const door: Opening = { ...island.openings[0]!, id: 'garden', kind: 'glazed-door', wall: 'right', sill: 0 };
  const before: Kitchen = { ...island, openings: [...island.openings, { ...door, center: 2000, height: 2050 }] };
  const { kitchen, losses } = changeLayout(before, 'u')!;
  const isKept = kitchen.openings.some(
    ({ id, wall, center }) => id === 'garden' && wall === 'right' && center === 2000,
  );
  expect(parts(losses).some((one) => one.startsWith('opening garden '))).toBe(!isKept);
  expect(kitchen.fixtures.some(({ kind }) => kind === 'pendant')).toBe(false);
  expect(parts(losses)).toContain('lamps pendants left-out');
  // The island goes because one asked for a U.
  expect(parts(losses).join()).not.toMatch(/island/);
});

it('nothing is lost quietly: whatever is missing afterwards is told, and nothing else is said to be left out', () => {
  const layouts = fc.constantFrom(...LAYOUTS);
  const room = fc.record({
    width: fc.integer({ min: 2000, max: 6000 }),
    depth: fc.integer({ min: 1800, max: 6000 }),
    height: fc.integer({ min: 2100, max: 3000 }),
  });
  fc.assert(
    fc.property(layouts, layouts, room, fc.constantFrom('room', 'layout', 'region'), (layout, next, size, way) => {
      const before = usual(layout);
      const after =
        way === 'room'
          ? fitToRoom(before, size)
          : way === 'layout'
            ? changeLayout(before, next)
            : changeRegion(before, 'us');
      if (!after) return;
      const leftOut = new Set(after.losses.filter(({ fate }) => fate === 'left-out').map(({ id }) => id));
      for (const list of ['openings', 'fixtures'] as const) {
        for (const { id } of before[list]) {
          expect(leftOut.has(id)).toBe(!after.kitchen[list].some((one) => one.id === id));
        }
      }
      expect(leftOut.has('dishwasher')).toBe(before.dishwasher !== 'none' && after.kitchen.dishwasher === 'none');
      expect(lossSentences(after.losses).length > 0).toBe(after.losses.length > 0);
    }),
    { numRuns: 8 },
  );
});

it('of the very same kitchen nothing is lost, and of two changes the later word counts', () => {
  const kitchen = usual('l');
  expect(lossesOf(kitchen, kitchen)).toEqual([]);
  const smaller: Loss = { part: 'door', id: 'door', fate: 'smaller' };
  const moved: Loss = { part: 'door', id: 'door', fate: 'moved' };
  const oven: Loss = { part: 'single', id: 'oven', fate: 'left-out' };
  const without: Kitchen = {
    ...kitchen,
    cooktop: { ...kitchen.cooktop, oven_below: false },
    runs: kitchen.runs.map((run) => ({ ...run, tall_from: [], tall_to: [] })),
  };
  expect(withLosses([smaller, oven], [moved], without)).toEqual([oven, moved]);
  expect(lossSentences([oven, moved]).join(' ')).toBe(
    'Left out: the oven. Moved: the door. Undo brings everything back.',
  );
});

it('what was left out and is there again is not told any more', () => {
  const kitchen = usual('l');
  const oven: Loss = { part: 'single', id: 'oven', fate: 'left-out' };
  const window: Loss = {
    part: 'opening',
    id: kitchen.openings[0]!.id,
    kind: 'window',
    number: 1,
    fate: 'left-out',
  };
  const withOven: Kitchen = { ...kitchen, cooktop: { ...kitchen.cooktop, oven_below: true } };
  expect(withLosses([oven, window], [], withOven)).toEqual([]);
});

it('a room too narrow for its galley says first that the layout is another', () => {
  const before = usual('galley');
  const found = fitToRoom(before, { ...before.room, width: 1700 })!;
  expect(lossSentences(found.losses)[0]).toMatch(/too small for its layout, which is now: (One wall|L)\./);
});
