import fc from 'fast-check';
import scene from '../../scenes/l-island.json';
import type { Fixture } from '../../src/model/fixture';
import type { Island, Kitchen, Opening, OpenSide, Run, RunWall, TallKind } from '../../src/model/kitchen';
import { kitchenMisfits } from '../../src/model/kitchen-misfits';

const usual = scene as unknown as Kitchen;

const run = (wall: RunWall, from: number, to: number, more: Partial<Run> = {}): Run => ({
  wall,
  from,
  to,
  tall_from: [],
  tall_to: [],
  over: 'units',
  splash: 'backsplash',
  ...more,
});

const bare: Kitchen = { ...usual, island: null, openings: [], open_side: null };
const at = (wall: RunWall, center: number) => ({ run: wall, center });

const peninsula: Island = {
  x: 0,
  y: 1200,
  width: 2200,
  depth: 900,
  seat_overhang: 250,
  joined: 'left',
  waterfall: 'none',
  stools: 3,
};

/** One kitchen of each layout, of parts that fit. */
export const LAYOUTS: { readonly [name: string]: Kitchen } = {
  'L with island': usual,
  'one wall': {
    ...bare,
    room: { width: 4200, depth: 3200, height: 2500 },
    runs: [run('back', 0, 4200, { tall_to: ['fridge'] })],
    sink: { ...usual.sink, ...at('back', 900), bowls: 2 },
    cooktop: { ...usual.cooktop, ...at('back', 2500), oven_below: true },
  },
  galley: {
    ...bare,
    room: { width: 2600, depth: 4200, height: 2500 },
    runs: [
      run('left', 1000, 4200, { splash: 'upstand', over: 'none' }),
      run('right', 1100, 4200, { tall_from: ['oven', 'fridge'], splash: 'backsplash-to-ceiling' }),
    ],
    sink: { ...usual.sink, ...at('left', 2500), fit: 'undermount' },
    cooktop: { ...usual.cooktop, ...at('right', 3400) },
    door: { ...usual.door, from_right: 850 },
    fridge: 'free-standing',
  },
  'L to the right': {
    ...bare,
    runs: [
      run('back', 0, 4600, { tall_from: ['larder', 'oven'] }),
      run('right', 1500, 4000, { splash: 'upstand', over: 'shelf' }),
    ],
    sink: { ...usual.sink, ...at('right', 2400) },
    cooktop: { ...usual.cooktop, ...at('back', 2700) },
    door: { ...usual.door, from_right: 2600 },
  },
  U: {
    ...bare,
    runs: [
      run('left', 1300, 4000, { splash: 'upstand', over: 'units' }),
      run('back', 0, 4600),
      run('right', 900, 4000, { tall_from: ['fridge', 'larder'] }),
    ],
    sink: { ...usual.sink, ...at('left', 2400), fit: 'apron' },
    cooktop: { ...usual.cooktop, ...at('back', 2300), hood: 'built-in' },
    door: { ...usual.door, from_right: 1700 },
    dishwasher: 'free-standing',
  },
  'L with peninsula': {
    ...bare,
    runs: [
      run('left', 2100, 4000, { splash: 'backsplash', over: 'none' }),
      run('back', 0, 4600, { tall_to: ['fridge', 'oven'] }),
    ],
    island: peninsula,
    sink: { ...usual.sink, ...at('left', 2800) },
    cooktop: { ...usual.cooktop, ...at('back', 2010) },
  },
  'U with island, open side': {
    ...bare,
    room: { width: 5200, depth: 5000, height: 2600 },
    runs: [
      run('left', 2200, 5000, { splash: 'upstand', over: 'none' }),
      run('back', 0, 5200, { splash: 'backsplash-to-ceiling', over: 'none' }),
      run('right', 2000, 5000, { tall_from: ['fridge', 'oven'] }),
    ],
    island: { ...usual.island!, x: 1700, y: 1600, width: 1800, depth: 900, waterfall: 'both', stools: 2 },
    sink: { ...usual.sink, ...at('left', 3400), bowls: 2 },
    cooktop: { ...usual.cooktop, ...at('back', 2600), hood: 'none', kind: 'gas' },
    open_side: { wall: 'front', from: 500, to: 3200, height: 2200, next_depth: 3000 },
    door: { ...usual.door, from_right: 400 },
  },
};

const WIDE = { kind: 'wide' } as const;
const LAMPS: Fixture[] = [
  { id: 'down', kind: 'downlight', group: 'ceiling', beam: WIDE, count: 2, diameter: 90, lumens_each: 500 },
  { id: 'hood', kind: 'hood', group: 'hood', beam: WIDE, count: 2, diameter: 60, lumens_each: 200 },
  {
    id: 'under',
    kind: 'under-cabinet',
    group: 'under-cabinet',
    beam: WIDE,
    run: 'front',
    width: 12,
    lumens_per_m: 500,
  },
  { id: 'over', kind: 'strip', group: 'ceiling', beam: WIDE, run: 'above-wall-units', width: 12, lumens_per_m: 500 },
  { id: 'toe', kind: 'strip', group: 'under-cabinet', beam: WIDE, run: 'toe-kick', width: 12, lumens_per_m: 200 },
];

const mm = (min: number, max: number): fc.Arbitrary<number> => fc.integer({ min, max });
const tall: fc.Arbitrary<TallKind[]> = fc.array(fc.constantFrom<TallKind>('larder', 'oven', 'fridge'), {
  maxLength: 2,
});
const finish = fc.record({
  over: fc.constantFrom<Run['over']>('units', 'shelf', 'none'),
  splash: fc.constantFrom<Run['splash']>('upstand', 'backsplash', 'backsplash-to-ceiling'),
});

/** Walls with runs; the back one reaches to every corner that has another. */
const WALLS: readonly (readonly RunWall[])[] = [
  ['left'],
  ['back'],
  ['right'],
  ['left', 'right'],
  ['left', 'back'],
  ['back', 'right'],
  ['left', 'back', 'right'],
];

interface Parts {
  readonly width: number;
  readonly depth: number;
  readonly finishes: readonly Pick<Run, 'over' | 'splash'>[];
  readonly tall: readonly (readonly TallKind[])[];
  readonly ends: readonly number[];
}

/** Runs as long as the room lets them, with tall units at ends that are in no corner. */
function runsOf(walls: readonly RunWall[], { width, depth, finishes, tall: blocks, ends }: Parts): Run[] {
  const has = (wall: RunWall): boolean => walls.includes(wall);
  return walls.map((wall, i) => {
    if (wall === 'back') {
      const [low, high] = [has('left') ? 0 : ends[0]!, has('right') ? 0 : ends[1]!];
      return run(wall, low < 300 ? 0 : low, width - (high < 300 ? 0 : high), {
        ...finishes[i]!,
        tall_from: has('left') ? [] : blocks[0]!,
        tall_to: has('right') ? [] : blocks[1]!,
      });
    }
    return run(wall, 900 + ends[wall === 'left' ? 2 : 3]!, depth, {
      ...finishes[i]!,
      tall_from: blocks[wall === 'left' ? 2 : 3]!,
      tall_to: has('back') ? [] : blocks[wall === 'left' ? 1 : 0]!,
    });
  });
}

/** Kitchens of every layout that fit their rooms. */
export const randomKitchens: fc.Arbitrary<Kitchen> = fc
  .record({
    walls: fc.constantFrom(...WALLS),
    width: mm(2400, 6000),
    depth: mm(2600, 5200),
    height: mm(2400, 2900),
    finishes: fc.tuple(finish, finish, finish),
    tall: fc.tuple(tall, tall, tall, tall),
    ends: fc.tuple(mm(0, 900), mm(0, 900), mm(0, 900), mm(0, 900)),
    places: fc.record({ sink: mm(0, 1000), cooktop: mm(0, 1000), sinkRun: mm(0, 2), cooktopRun: mm(0, 2) }),
    sink: fc.record({
      bowls: fc.constantFrom<1 | 2>(1, 2),
      fit: fc.constantFrom<Kitchen['sink']['fit']>('inset', 'undermount', 'apron'),
      tap: fc.constantFrom<Kitchen['sink']['tap']>('arch', 'straight'),
    }),
    cooktop: fc.record({
      width: fc.constantFrom(580, 760, 860),
      kind: fc.constantFrom<Kitchen['cooktop']['kind']>('induction', 'gas'),
      hood: fc.constantFrom<Kitchen['cooktop']['hood']>('canopy', 'built-in', 'none'),
      oven_below: fc.boolean(),
    }),
    fronts: fc.record({
      style: fc.constantFrom<Kitchen['fronts']['style']>('flat', 'five-piece'),
      mounting: fc.constantFrom<Kitchen['fronts']['mounting']>('overlay', 'inset'),
      handle: fc.constantFrom<Kitchen['fronts']['handle']>('bar', 'knob', 'edge', 'none'),
    }),
    edge: fc.constantFrom<Kitchen['counter']['edge']>(
      'eased',
      'pencil',
      'bevel',
      'half-bullnose',
      'full-bullnose',
      'mitred',
    ),
    shows: fc.record({
      dishwasher: fc.constantFrom<Kitchen['dishwasher']>('hidden', 'free-standing', 'none'),
      fridge: fc.constantFrom<Kitchen['fridge']>('hidden', 'free-standing'),
      objects: fc.boolean(),
    }),
    island: fc.option(
      fc.record({
        joined: fc.constantFrom<Island['joined']>(null, 'left', 'right'),
        share: mm(300, 1000),
        y: mm(600, 1400),
        depth: mm(650, 1100),
        seat_overhang: fc.constantFrom(0, 200, 300),
        waterfall: fc.constantFrom<Island['waterfall']>('none', 'left', 'right', 'both'),
        stools: mm(0, 3),
      }),
    ),
    open: fc.option(
      fc.record({
        wall: fc.constantFrom<OpenSide['wall']>('front', 'left', 'right'),
        from: mm(100, 1500),
        long: mm(900, 2500),
        height: mm(2000, 2390),
        next_depth: mm(600, 4000),
      }),
    ),
    door: mm(80, 4000),
    windows: fc.array(
      fc.record({
        wall: fc.constantFrom<Opening['wall']>('left', 'back', 'right', 'front'),
        center: mm(800, 4000),
        width: mm(600, 1600),
        sill: mm(1030, 1300),
        height: mm(500, 1000),
        reveal: mm(80, 300),
        leaves: mm(1, 2),
      }),
      { maxLength: 2 },
    ),
    lamps: fc.subarray(LAMPS),
  })
  .map((given): Kitchen => {
    const { walls, width, depth, island, open, places } = given;
    const runs = runsOf(walls, given);
    const sinkRun = runs[places.sinkRun % runs.length]!;
    const cooktopRun = runs[places.cooktopRun % runs.length]!;
    const placed = ({ from, to }: Run, share: number): number =>
      Math.round(from + 400 + ((to - from - 800) * share) / 1000);
    const side = island?.joined ? runs.find(({ wall }) => wall === island.joined) : undefined;
    const beside = (wall: RunWall): number => (walls.includes(wall) ? 620 : 0) + 700;
    const room = width - beside('left') - beside('right');
    const wide = Math.round((room * (island?.share ?? 0)) / 1000);
    return {
      ...usual,
      room: { width, depth, height: given.height },
      runs:
        side && island
          ? runs.map((one) => (one === side ? { ...one, from: island.y + island.depth, tall_from: [] } : one))
          : runs,
      sink: { ...given.sink, run: sinkRun.wall, center: placed(sinkRun, places.sink) },
      cooktop: { ...given.cooktop, run: cooktopRun.wall, center: placed(cooktopRun, places.cooktop) },
      fronts: given.fronts,
      counter: { ...usual.counter, edge: given.edge },
      tall_height: 2150,
      ...given.shows,
      island: island && {
        x: island.joined === 'left' ? 0 : island.joined === 'right' ? width - wide : beside('left'),
        y: island.y,
        width: wide,
        depth: island.depth,
        seat_overhang: island.seat_overhang,
        joined: island.joined,
        waterfall:
          island.joined && island.waterfall !== 'none'
            ? island.joined === 'left'
              ? 'right'
              : 'left'
            : island.waterfall,
        stools: island.seat_overhang > 0 ? island.stools : 0,
      },
      openings: given.windows.map(
        (window, i): Opening => ({
          ...window,
          id: `window ${i}`,
          kind: 'window',
          panes: 2,
          facing_deg: 0,
          ...(i === 0 ? { blind: 'roller' } : {}),
        }),
      ),
      open_side: open && {
        wall: open.wall,
        from: open.from,
        to: open.from + open.long,
        height: open.height,
        next_depth: open.next_depth,
      },
      door: { width: 850, height: 2000, from_right: given.door },
      fixtures: given.lamps,
    };
  })
  .filter((kitchen) => kitchenMisfits(kitchen).length === 0);
