import { expect, it } from 'vitest';
import scene from '../../scenes/l-island.json';
import type { Fixture } from '../../src/model/fixture';
import type { Kitchen } from '../../src/model/kitchen';
import { kitchenMisfits } from '../../src/model/kitchen-misfits';

const usual = scene as unknown as Kitchen;
const paths = (kitchen: Kitchen): (string | undefined)[] => kitchenMisfits(kitchen).map((problem) => problem.at?.path);

it('finds nothing wrong with the usual kitchen', () => {
  expect(kitchenMisfits(usual)).toEqual([]);
});

it('names the measure that does not fit', () => {
  expect(paths({ ...usual, room: { ...usual.room, width: 3000 } })).toEqual(['runs[1].to']);
  expect(paths({ ...usual, island: { ...usual.island!, y: 300 } })).toEqual(['island.y']);
  expect(paths({ ...usual, tall_height: 1500 })).toEqual(['tall_height']);
  const [window] = usual.openings;
  expect(paths({ ...usual, openings: [{ ...window!, sill: 950 }] })).toEqual(['openings[0].sill']);
  expect(paths({ ...usual, door: { ...usual.door, from_right: 10 } })).toEqual(['door']);
});

const window = usual.openings[0]!;
const told = (part: Partial<Kitchen>): string[] =>
  kitchenMisfits({ ...usual, ...part }).map(({ at, text }) => `${at?.path}: ${text}`);

it.each([
  [{ wall: 'back', width: 900, center: 2000 }, 'openings[0].center: The window on the back wall lies behind the hood.'],
  [{ center: 3000 }, 'openings[0].center: The window on the left wall lies behind the wall units.'],
  [
    { wall: 'back', center: 4000, width: 900 },
    'openings[0].sill: The window on the back wall lies behind the tall units.',
  ],
  [{ wall: 'right', center: 3300 }, 'openings[0].sill: The window on the right wall lies behind the tall units.'],
  [{ wall: 'front', center: 3300 }, 'openings[0].sill: The window on the front wall lies behind the door.'],
  [{ width: 4200 }, 'openings[0].width: The window on the left wall is wider than its wall.'],
  [{ height: 1500 }, 'openings[0].height: The window on the left wall reaches above the ceiling.'],
  [{ leaves: 6, width: 1200 }, 'openings[0].width: The window on the left wall is too narrow for 6 leaves.'],
  [
    { kind: 'glazed-door', sill: 0, height: 2000 },
    'openings[0].center: The glazed door on the left wall lies behind the counter and its upstand.',
  ],
] as const)('says what covers an opening, or where it ends: %j', (change, text) => {
  expect(told({ openings: [{ ...window, ...change }] })).toContain(text);
});

it('takes a room without windows and lamps, and keeps openings apart', () => {
  expect(told({ openings: [], fixtures: [] })).toEqual([]);
  const second = { ...window, id: 'second', center: 3000 };
  expect(told({ openings: [window, second] })).toContain(
    'openings[1].center: The window on the left wall and the window "window" overlap or nearly touch.',
  );
});

const lamp = { id: 'x', group: 'pendant', beam: { kind: 'wide' }, lumens_each: 500, count: 1 } as const;
const pendant = { ...lamp, kind: 'pendant', diameter: 300, height: 1600 } as const;
const downlight = { ...lamp, kind: 'downlight', diameter: 90 } as const;

it.each([
  [{ ...pendant, at: [[4300, 3700]] }, 'fixtures[0].at: Pendant "x" hangs in the tall units.'],
  [{ ...pendant, at: [[100, 1000]] }, 'fixtures[0].at: Pendant "x" reaches beyond the walls.'],
  [{ ...pendant, height: 1100 }, 'fixtures[0].height: The pendants "x" hang too low over the counter.'],
  [{ ...pendant, height: 2400 }, 'fixtures[0].height: The pendants "x" do not hang free of the ceiling.'],
  [
    { ...pendant, count: 8, diameter: 400 },
    'fixtures[0].count: Pendant 2 of "x" and Pendant 1 of "x" overlap; 6 more pairs do, too.',
  ],
  [{ ...downlight, at: [[2010, 3900]] }, 'fixtures[0].at: Downlight "x" lies over the hood.'],
  [
    { ...lamp, kind: 'hood', count: 24, diameter: 60 },
    'fixtures[0].count: Hood light 2 of "x" and Hood light 1 of "x" overlap; 22 more pairs do, too.',
  ],
  [
    { ...lamp, kind: 'strip', run: 'toe-kick', width: 60, lumens_per_m: 100 },
    'fixtures[0].width: The strip "x" is too wide for the toe kick.',
  ],
] as unknown as readonly (readonly [Fixture, string])[])('says which lamp does not fit: %j', (fixture, text) => {
  expect(told({ fixtures: [fixture] })).toContain(text);
});

it('says in one line what is wrong with many lamps of one kind', () => {
  const panel = { ...lamp, kind: 'panel', group: 'ceiling', width: 1500, length: 1500 } as const;
  const texts = told({
    fixtures: [
      { ...panel, count: 24 },
      { ...panel, id: 'y', at: [[0, 0]] },
    ],
  });
  const path = 'fixtures[0].count';
  expect(texts.filter((text) => text.startsWith(path))).toEqual([
    `${path}: Panel 1 of "x" and 8 more reach beyond the walls.`,
    `${path}: Panel 21 of "x" and 1 more lie over the hood.`,
    expect.stringMatching(/: Panel 2 of "x" and Panel 1 of "x" overlap; \d+ more pairs do, too\.$/),
  ]);
  expect(texts).toContain('fixtures[1].at: Panel "y" reaches beyond the walls.');
});
