import type { Fixture, PlanPoint } from '../fixture';
import type { Kitchen, RunWall } from '../kitchen';
import { wallUnitHeights } from './free-spans';
import { hoodPlace } from './hood-place';
import { FRONT_THICKNESS, RAIL } from './measures';
import { runOn } from './run-ends';
import { spreadLamps } from './spread-lamps';
import type { Rows, RunRows, Span } from './types';
import { beforeWall, type Extent } from './wall-box';

/** One lamp in its place, mm from the front left corner. */
export interface LampPlace {
  readonly fixture: Fixture;
  /** Middle of the lamp. */
  readonly x: number;
  readonly y: number;
  /** The lamp as one sees it from above, along x and y. */
  readonly width: number;
  readonly depth: number;
  /** The face that shines: its sizes along x and y, its height, where it looks. */
  readonly face: { readonly width: number; readonly depth: number; readonly z: number; readonly looks: 'up' | 'down' };
}

/** Strips keep clear of the ends of their run, of the rail or edge before them, and of the wall or plinth behind, mm. */
const END = 60;
const BEFORE = 10;
const BEHIND = 18;
const BESIDE_PLINTH = 2;
/** Side of a square with the area of a circle of diameter 1. */
const SAME_AREA = Math.sqrt(Math.PI) / 2;
/** Side of the square that a pendant's round shade holds, over its diameter: one of the shade's area would stick out. */
const IN_SHADE = 0.66;

/** Where every lamp of a kitchen is, fixture after fixture; for lamps that have no places of their own, spread evenly. */
export const lampPlaces = (kitchen: Kitchen, rows: Rows): readonly LampPlace[] =>
  kitchen.fixtures.flatMap((fixture) => placesOf(kitchen, rows, fixture));

function placesOf(kitchen: Kitchen, rows: Rows, fixture: Fixture): readonly LampPlace[] {
  switch (fixture.kind) {
    case 'downlight':
      return points(kitchen, fixture).map((at) => round(fixture, at, fixture.diameter, kitchen.room.height));
    case 'panel':
      return points(kitchen, fixture).map((at) =>
        rectangle(fixture, at, [fixture.width, fixture.length], kitchen.room.height, 'down'),
      );
    case 'pendant':
      return (fixture.at ?? overIsland(kitchen, fixture.count)).map((at) => pendant(fixture, at));
    case 'hood':
      return hoodLamps(kitchen, rows, fixture);
    case 'under-cabinet':
    case 'strip':
      return strips(kitchen, rows, fixture);
  }
}

const points = (kitchen: Kitchen, { count, at }: Extract<Fixture, { kind: 'downlight' | 'panel' }>) =>
  at ?? spreadLamps(count, openFloor(kitchen));

/** The floor before the counters: lamps are spread over it. */
function openFloor(kitchen: Kitchen): Parameters<typeof spreadLamps>[1] {
  const { room, counter } = kitchen;
  const before = (wall: RunWall): number => (runOn(kitchen, wall) ? counter.depth : 0);
  return { x0: before('left'), x1: room.width - before('right'), y0: 0, y1: room.depth - before('back') };
}

/** A row along the middle of the island's longer side; none where there is no island. */
function overIsland({ island }: Kitchen, count: number): readonly PlanPoint[] {
  if (!island) return [];
  const { x, y, width, depth } = island;
  return Array.from({ length: count }, (_, i) => {
    const share = (i + 0.5) / count;
    return width >= depth ? [x + width * share, y + depth / 2] : [x + width / 2, y + depth * share];
  });
}

function rectangle(
  fixture: Fixture,
  [x, y]: PlanPoint,
  [width, depth]: readonly [number, number],
  z: number,
  looks: 'up' | 'down',
): LampPlace {
  return { fixture, x, y, width, depth, face: { width, depth, z, looks } };
}

function round(fixture: Fixture, at: PlanPoint, diameter: number, z: number): LampPlace {
  const side = diameter * SAME_AREA;
  return { ...rectangle(fixture, at, [side, side], z, 'down'), width: diameter, depth: diameter };
}

function pendant(fixture: Extract<Fixture, { kind: 'pendant' }>, at: PlanPoint): LampPlace {
  const side = fixture.diameter * IN_SHADE;
  const lamp = rectangle(fixture, at, [side, side], fixture.height, 'down');
  return { ...lamp, width: fixture.diameter, depth: fixture.diameter };
}

/** In a row along the middle of the hood; none where there is none. */
function hoodLamps(kitchen: Kitchen, rows: Rows, fixture: Extract<Fixture, { kind: 'hood' }>): readonly LampPlace[] {
  const hood = hoodPlace(kitchen, rows);
  if (!hood) return [];
  const { run, from, to, depth, bottom } = hood;
  return Array.from({ length: fixture.count }, (_, i) => {
    const along = from + ((to - from) * (i + 0.5)) / fixture.count;
    const { x, y } = beforeWall(kitchen, run, [along, along], [depth / 2, depth / 2]);
    return round(fixture, [x[0], y[0]], fixture.diameter, bottom);
  });
}

type Strip = Extract<Fixture, { kind: 'under-cabinet' | 'strip' }>;

/** One strip for each row of units; none where there are none. */
function strips(kitchen: Kitchen, rows: Rows, fixture: Strip): readonly LampPlace[] {
  const { base, wall_units } = kitchen;
  const half = fixture.width / 2;
  const strip = (wall: RunWall, along: Span, out: number, z: number, looks: 'up' | 'down'): LampPlace => {
    const { x, y } = beforeWall(kitchen, wall, [along.from + END, along.to - END], [out - half, out + half]);
    return rectangle(fixture, [middle(x), middle(y)], [x[1] - x[0], y[1] - y[0]], z, looks);
  };
  if (fixture.run === 'toe-kick') {
    const out = base.depth - base.plinth_recess + BESIDE_PLINTH + half;
    return rows.runs.map((run) => strip(run.wall, openBase(kitchen, run), out, base.plinth_height, 'down'));
  }
  const [bottom, top] = wallUnitHeights(kitchen);
  const out = outFromWall(fixture, wall_units.depth);
  const isAbove = fixture.run === 'above-wall-units';
  return rows.runs.flatMap(({ wall, over }) =>
    over.map((row) => strip(wall, row, out, isAbove ? top : bottom, isAbove ? 'up' : 'down')),
  );
}

/** The part of a run whose plinth one sees: not what lies in a corner it owns. */
const openBase = ({ base: { depth } }: Kitchen, { base, ends }: RunRows): Span => ({
  from: base.from + (ends.from === 'owns-corner' ? depth : 0),
  to: base.to - (ends.to === 'owns-corner' ? depth : 0),
});

/** Middle of a strip on the wall units, from the wall. */
function outFromWall({ run, width }: Strip, depth: number): number {
  switch (run) {
    case 'back':
      return BEHIND + width / 2;
    case 'middle':
      return (depth - RAIL.back) / 2;
    case 'above-wall-units':
      return depth - FRONT_THICKNESS - BEFORE - width / 2;
    default:
      return depth - RAIL.back - BEFORE - width / 2;
  }
}

const middle = ([from, to]: Extent): number => (from + to) / 2;
