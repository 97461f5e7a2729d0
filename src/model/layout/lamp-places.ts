import type { Fixture, PlanPoint } from '../fixture';
import type { Kitchen } from '../kitchen';
import { FRONT_THICKNESS, HOOD, RAIL } from './measures';
import { PANEL, type Rows } from './plan-rows';
import { spreadLamps } from './spread-lamps';

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

const points = ({ room, counter }: Kitchen, { count, at }: Extract<Fixture, { kind: 'downlight' | 'panel' }>) =>
  at ?? spreadLamps(count, { x0: counter.depth, x1: room.width, y0: 0, y1: room.depth - counter.depth });

/** A row along the middle of the island's longer side. */
function overIsland({ island: { x, y, width, depth } }: Kitchen, count: number): readonly PlanPoint[] {
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

/** In a row along the middle of the canopy. */
function hoodLamps({ room, base, counter }: Kitchen, rows: Rows, fixture: Extract<Fixture, { kind: 'hood' }>) {
  const { from, to } = rows.back.cooktop;
  const z = base.plinth_height + base.carcass_height + counter.thickness + HOOD.clearance;
  return Array.from({ length: fixture.count }, (_, i) =>
    round(
      fixture,
      [from + ((to - from) * (i + 0.5)) / fixture.count, room.depth - HOOD.canopy.depth / 2],
      fixture.diameter,
      z,
    ),
  );
}

type Strip = Extract<Fixture, { kind: 'under-cabinet' | 'strip' }>;

function strips(kitchen: Kitchen, rows: Rows, fixture: Strip): LampPlace[] {
  const { room, base, counter, wall_units } = kitchen;
  const { width } = fixture;
  if (fixture.run === 'toe-kick') {
    const out = base.depth - base.plinth_recess + BESIDE_PLINTH + width / 2;
    const z = base.plinth_height;
    const back = [base.depth + END, rows.back.to - END] as const;
    const left = [rows.left.end + PANEL + END, room.depth - base.depth - END] as const;
    return [
      rectangle(fixture, [middle(back), room.depth - out], [back[1] - back[0], width], z, 'down'),
      rectangle(fixture, [out, middle(left)], [width, left[1] - left[0]], z, 'down'),
    ];
  }
  const bottom = base.plinth_height + base.carcass_height + counter.thickness + wall_units.gap_above_counter;
  const isAbove = fixture.run === 'above-wall-units';
  const out = outFromWall(fixture, wall_units.depth);
  return rows.wall.map(({ from, to }) =>
    rectangle(
      fixture,
      [(from + to) / 2, room.depth - out],
      [to - from - 2 * END, width],
      isAbove ? bottom + wall_units.height : bottom,
      isAbove ? 'up' : 'down',
    ),
  );
}

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

const middle = ([from, to]: readonly [number, number]): number => (from + to) / 2;
