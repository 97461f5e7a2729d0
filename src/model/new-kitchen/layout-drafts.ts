import type { Island, Kitchen, Run, RunWall, TallKind } from '../kitchen';
import { runEnds, runOn } from '../layout/run-ends';

/** The layouts kitchens are offered in. */
export type LayoutId = 'one-wall' | 'galley' | 'l' | 'u' | 'l-island' | 'peninsula';
export const LAYOUTS: readonly LayoutId[] = ['one-wall', 'galley', 'l', 'u', 'l-island', 'peninsula'];

/** What a layout settles: what stands where. */
type Draft = Pick<Kitchen, 'runs' | 'island' | 'sink' | 'cooktop' | 'dishwasher' | 'fridge'>;

/** A draft and how far it is from what one would wish. */
export interface Ranked {
  readonly draft: Draft;
  readonly cost: number;
}

/** Longest a run gets in a large room; least free floor before the door; room for knees and to walk past behind seats; mm. Lengths: common practice, no source; the rest: planning guidelines. */
const LONGEST = { back: 5400, side: 4200 };
const WALKWAY = 914;
const SEAT_OVERHANG = 381;
const SEAT_WIDTH = 610;
const BEHIND_SEATS = 1118;

/** Work aisles, best first, mm (planning guidelines: 1219 for several cooks, 1067 for one; below 914 only where it must be). */
const AISLES = [1219, 1067, 914, 800, 700, 600];
/** Between peninsula and back run, where a run with a sink has to stand, mm. */
const BAYS = [1900, 1700, 1500, 1219, 1067, 914];
/** Islands from usual to least, mm (trade table: 600 x 1200 to 1000 x 2000), with and without seats. */
const ISLANDS = [
  { depth: 1000, overhang: SEAT_OVERHANG },
  { depth: 900, overhang: 250 },
  { depth: 650, overhang: 0 },
] as const;
const LONGEST_ISLAND = 2400;
const LEAST_ISLAND = 1200;

/** From the end inward: the fridge beside the counter, to put down what one takes out. */
const TALLS: readonly (readonly TallKind[])[] = [['oven', 'fridge'], ['fridge'], []];

/** Everything a layout may be in a room of this size with units of these sizes, the best first. */
export function layoutDrafts(layout: LayoutId, kitchen: Kitchen): readonly Ranked[] {
  const drafts = TALLS.flatMap((tall, t) =>
    (kitchen.dishwasher === 'none' ? (['none'] as const) : ([kitchen.dishwasher, 'none'] as const)).flatMap(
      (dishwasher, d) =>
        shapesOf(layout, kitchen, tall).map(({ runs, island, sink, cooktop, cost }): Ranked => {
          const shape = { ...kitchen, runs, island, dishwasher };
          const sinkAt = placeOn(shape, sink.run, sink.share);
          const cooktopAt = placeOn(shape, cooktop.run, cooktop.share);
          return {
            cost: cost + [0, 2, 7][t]! + 5 * d,
            draft: {
              runs,
              island,
              dishwasher,
              fridge: kitchen.fridge,
              sink: { ...kitchen.sink, run: sink.run, center: sinkAt },
              cooktop: {
                ...kitchen.cooktop,
                run: cooktop.run,
                center: cooktopAt,
                oven_below: !tall.includes('oven'),
                hood: kitchen.cooktop.hood,
              },
            },
          };
        }),
    ),
  );
  return [...drafts].sort((a, b) => a.cost - b.cost);
}

interface Shape {
  readonly runs: readonly Run[];
  readonly island: Island | null;
  /** Where sink and cooktop go along the free length of their run, 0-1. */
  readonly sink: { readonly run: RunWall; readonly share: number };
  readonly cooktop: { readonly run: RunWall; readonly share: number };
  readonly cost: number;
}

const run = (wall: RunWall, from: number, to: number, more: Partial<Run> = {}): Run => ({
  wall,
  from: round(from),
  to: round(to),
  tall_from: [],
  tall_to: [],
  over: 'units',
  splash: 'backsplash',
  ...more,
});

/** Whole millimetres, but for what reaches a wall that is not. */
const round = (mm: number): number => Math.round(mm * 100) / 100;

const UNDER_WINDOW = { over: 'none', splash: 'upstand' } as const;

/** Where a side run may begin: before the door one walks, or in small rooms it reaches the door's wall. */
function sideStarts(depth: number): readonly { readonly from: number; readonly cost: number }[] {
  const free = Math.max(WALKWAY, depth - LONGEST.side);
  return [{ from: free, cost: 0 }, ...(depth > 2 * WALKWAY ? [{ from: 600, cost: 2 }] : []), { from: 0, cost: 4 }];
}

function shapesOf(layout: LayoutId, kitchen: Kitchen, tall: readonly TallKind[]): readonly Shape[] {
  const { width, depth } = kitchen.room;
  // A run that would stop just short of the wall goes up to it.
  const backTo = width - LONGEST.back >= 150 ? LONGEST.back : width;
  switch (layout) {
    case 'one-wall':
      return [
        {
          runs: [run('back', 0, backTo, { tall_to: tall })],
          island: null,
          sink: { run: 'back', share: 0.3 },
          cooktop: { run: 'back', share: 0.78 },
          cost: 0,
        },
      ];
    case 'galley':
      return sideStarts(depth).map(({ from, cost }) => ({
        runs: [run('left', from, depth), run('right', from, depth, { tall_to: tall })],
        island: null,
        sink: { run: 'left', share: 0.5 },
        cooktop: { run: 'right', share: 0.5 },
        cost,
      }));
    case 'l':
      return sideStarts(depth).map(({ from, cost }) => ({
        runs: [run('left', from, depth, UNDER_WINDOW), run('back', 0, backTo, { tall_to: tall })],
        island: null,
        sink: { run: 'left', share: 0.6 },
        cooktop: { run: 'back', share: 0.5 },
        cost,
      }));
    case 'u':
      return sideStarts(depth).map(({ from, cost }) => ({
        runs: [
          run('left', from, depth, { tall_from: tall }),
          run('back', 0, width, { over: 'none', splash: 'upstand' }),
          run('right', from, depth),
        ],
        island: null,
        sink: { run: 'back', share: 0.5 },
        cooktop: { run: 'right', share: 0.5 },
        cost,
      }));
    case 'l-island':
      return islandShapes(kitchen, tall, backTo);
    case 'peninsula':
      return peninsulaShapes(kitchen, tall, backTo);
  }
}

function islandShapes({ room, counter }: Kitchen, tall: readonly TallKind[], backTo: number): readonly Shape[] {
  return sideStarts(room.depth).flatMap(({ from, cost }) =>
    AISLES.flatMap((aisle, a) =>
      ISLANDS.flatMap(({ depth, overhang }, i) => {
        const x = counter.depth + aisle;
        const width = Math.min(LONGEST_ISLAND, room.width - x - Math.max(600, Math.min(aisle, WALKWAY)));
        const y = room.depth - counter.depth - aisle - depth;
        if (width < LEAST_ISLAND || y < 600) return [];
        const behindSeats = overhang > 0 && y < BEHIND_SEATS ? (y < WALKWAY ? 1.2 : 0.5) : 0;
        return [
          {
            runs: [run('left', from, room.depth, UNDER_WINDOW), run('back', 0, backTo, { tall_to: tall })],
            island: islandAt(round(x), round(y), round(width), depth, overhang, null),
            sink: { run: 'left', share: 0.6 },
            cooktop: { run: 'back', share: 0.5 },
            cost: cost + [0, 0.3, 1, 3, 4, 5][a]! + [0, 0.5, 1.5][i]! + behindSeats,
          } satisfies Shape,
        ];
      }),
    ),
  );
}

function peninsulaShapes({ room, counter }: Kitchen, tall: readonly TallKind[], backTo: number): readonly Shape[] {
  return BAYS.flatMap((bay, a) =>
    ISLANDS.flatMap(({ depth, overhang }, i) =>
      [true, false].flatMap((sinkOnLeft, s) => {
        const y = round(room.depth - counter.depth - bay - depth);
        const width = round(Math.min(LONGEST_ISLAND, room.width - WALKWAY));
        if (width < LEAST_ISLAND || y < 600) return [];
        const behindSeats = overhang > 0 && y < BEHIND_SEATS ? (y < WALKWAY ? 1.2 : 0.5) : 0;
        return [
          {
            runs: [run('left', y + depth, room.depth, UNDER_WINDOW), run('back', 0, backTo, { tall_to: tall })],
            island: islandAt(0, y, width, depth, overhang, 'left'),
            sink: { run: sinkOnLeft ? 'left' : 'back', share: sinkOnLeft ? 0.5 : 0.25 },
            cooktop: { run: 'back', share: sinkOnLeft ? 0.5 : 0.8 },
            cost: [0, 0.2, 0.4, 2, 3, 4][a]! + [0, 0.5, 1.5][i]! + 1.5 * s + behindSeats,
          } satisfies Shape,
        ];
      }),
    ),
  );
}

const islandAt = (
  x: number,
  y: number,
  width: number,
  depth: number,
  seat_overhang: number,
  joined: Island['joined'],
): Island => ({
  x,
  y,
  width,
  depth,
  seat_overhang,
  joined,
  waterfall: 'none',
  stools: seat_overhang > 0 ? Math.min(4, Math.floor(width / SEAT_WIDTH)) : 0,
});

/** A place along the free length of a run, whole mm. */
function placeOn(kitchen: Kitchen, wall: RunWall, share: number): number {
  const on = runOn(kitchen, wall);
  if (!on) return 0;
  const { from, to } = runEnds(kitchen, on);
  const low = from.at + from.tile + from.filler;
  const high = to.at - to.tile - to.filler;
  return Math.max(0, Math.round(low + (high - low) * share));
}
