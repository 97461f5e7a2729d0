import { expect, it } from 'vitest';
import scene from '../../scenes/l-island.json';
import type { Fixture } from '../../src/model/fixture';
import type { Kitchen, Run } from '../../src/model/kitchen';
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

const [left, back] = usual.runs as [Run, Run];
const island = usual.island!;
const bare = { openings: [], fixtures: [] } as const;
const one = (wall: Run['wall'], from: number, to: number, more: Partial<Run> = {}): Run => ({
  ...back,
  wall,
  from,
  to,
  tall_to: [],
  ...more,
});
const open = { wall: 'right', from: 400, to: 2400, height: 2200, next_depth: 3000 } as const;

it.each<[string, Partial<Kitchen>, string]>([
  [
    'a run beyond its wall',
    { runs: [left, { ...back, to: 4700 }] },
    'runs[1].to: The run on the back wall reaches beyond its wall.',
  ],
  [
    'a gap nobody can clean',
    { runs: [{ ...left, from: 90 }, back] },
    'runs[0].from: The run on the left wall leaves a gap of 90 mm to the wall.',
  ],
  [
    'tall units in a corner',
    { runs: [left, { ...back, tall_from: ['larder'] }] },
    'runs[1].tall_from: The run on the back wall has tall units in a corner, where nobody gets at them.',
  ],
  [
    'a side run that stops in the way of the back run',
    { ...bare, runs: [{ ...left, to: 3500 }, back] },
    'runs[1].from: The run on the back wall and the run on the left wall stand in one another.',
  ],
  [
    'too narrow a way between two runs',
    {
      ...bare,
      island: null,
      room: { ...usual.room, width: 1800 },
      door: { ...usual.door, width: 600, from_right: 700 },
      runs: [left, one('right', 914, 4000)],
      cooktop: { ...usual.cooktop, run: 'right', center: 2500 },
    },
    'runs[1].from: Only 560 mm are left to pass between the run on the left wall and the run on the right wall.',
  ],
  [
    'a sink without a run',
    { sink: { ...usual.sink, run: 'right' } },
    'sink.run: There is no run on the right wall for the sink.',
  ],
  [
    'a sink beside its run',
    { sink: { ...usual.sink, center: 400 } },
    'sink.center: The sink lies beyond the base units of its run.',
  ],
  [
    'sink and cooktop at one end',
    { sink: { ...usual.sink, run: 'back', center: 3300 }, cooktop: { ...usual.cooktop, center: 3300 } },
    'cooktop.center: The sink, dishwasher and cooktop do not fit beside each other where they are.',
  ],
  [
    'a run too short for what it holds',
    { ...bare, runs: [{ ...left, from: 2300 }, back], sink: { ...usual.sink, center: 2800 } },
    'runs[0].to: The run on the left wall is too short for sink and dishwasher.',
  ],
  [
    'a cooktop no unit holds',
    { cooktop: { ...usual.cooktop, width: 915 } },
    'cooktop.width: The cooktop is wider than any unit made for one.',
  ],
  [
    'an island in the run',
    { island: { ...island, x: 500 } },
    'island.x: The island reaches into the units or the wall beside it.',
  ],
  [
    'an island too near',
    { island: { ...island, x: 1150 } },
    'island.x: Only 530 mm are left to pass beside the island.',
  ],
  [
    'a peninsula off its wall',
    { island: { ...island, joined: 'left' } },
    'island.joined: The peninsula does not begin at the left wall.',
  ],
  [
    'a counter down to the floor at the wall',
    {
      ...bare,
      runs: [{ ...left, from: 2000 }, back],
      sink: { ...usual.sink, center: 2700 },
      dishwasher: 'none',
      island: { ...island, x: 0, y: 1100, joined: 'left', waterfall: 'left' },
    },
    'island.waterfall: Where the peninsula joins the wall its counter cannot run down to the floor.',
  ],
  [
    'stools without knees',
    { island: { ...island, seat_overhang: 0 } },
    'island.stools: Without a seat overhang nobody can sit at the island.',
  ],
  [
    'more stools than fit',
    { island: { ...island, stools: 5 } },
    'island.stools: There is room for 4 stools at the island.',
  ],
  [
    'an oven in low base units',
    { cooktop: { ...usual.cooktop, oven_below: true }, base: { ...usual.base, carcass_height: 600 } },
    'cooktop.oven_below: Base units are too low for an oven under the cooktop.',
  ],
  [
    'a hood hidden in nothing',
    { runs: [left, { ...back, over: 'none' }], cooktop: { ...usual.cooktop, hood: 'built-in' } },
    'cooktop.hood: A hood can only be hidden between wall units.',
  ],
  [
    'a door behind a run',
    { ...bare, runs: [{ ...left, from: 0 }, back], door: { ...usual.door, from_right: 3500 } },
    'door: The door lies behind the counter.',
  ],
  [
    'an open side behind tall units',
    { open_side: { ...open, to: 3600 } },
    'open_side: The open side lies behind the tall units.',
  ],
  [
    'an open side in the door',
    { open_side: { ...open, wall: 'front', from: 2000, to: 3600 } },
    'open_side: The open side and the door overlap.',
  ],
  [
    'an open side beyond its wall',
    { open_side: { ...open, from: 10 } },
    'open_side.from: The open side reaches beyond its wall.',
  ],
  [
    'an open side in a window',
    { openings: [{ ...window, wall: 'right', center: 1500 }], open_side: open },
    'open_side: The open side and the window "window" overlap or nearly touch.',
  ],
  [
    'pendants without an island',
    { island: null },
    'fixtures[0].at: There is no island for the pendants "x" to hang over.',
  ],
  [
    'hood lights without a hood',
    { cooktop: { ...usual.cooktop, hood: 'none' } },
    'fixtures[1].kind: There is no hood for the lights "h".',
  ],
  [
    'strips without wall units',
    { runs: [left, { ...back, over: 'none' }] },
    'fixtures[2].run: There are no wall units for the strip "u".',
  ],
])('says what cannot be built: %s', (_, change, text) => {
  const fixtures: Fixture[] = [
    pendant,
    { ...lamp, kind: 'hood', id: 'h', diameter: 60 },
    { ...lamp, kind: 'under-cabinet', id: 'u', run: 'front', width: 20, lumens_per_m: 500 },
  ];
  const all = told({ openings: [], fixtures, ...change });
  expect(all).toContain(text);
});

it('takes a window among wall units, which leave its place free', () => {
  const among = { ...window, wall: 'back', center: 850, width: 700, leaves: 1 } as const;
  expect(told({ openings: [among], fixtures: [] })).toEqual([]);
});

it('gives a remedy for everything it finds', () => {
  const found = kitchenMisfits({ ...usual, island: { ...island, x: 500, stools: 8 }, tall_height: 1300 });
  expect(found.length).toBeGreaterThan(2);
  for (const { remedy, at } of found) {
    expect(remedy).not.toBe('');
    expect(at?.path).toBeTruthy();
  }
});
