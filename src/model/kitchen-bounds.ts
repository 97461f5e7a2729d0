import type { Bounds } from './check-number';
import { OPENING_BOUNDS } from './check-openings';
import { RUN_BOUNDS } from './check-runs';
import type { Kitchen } from './kitchen';

const mm = (least: number, most: number): Bounds => [least, most, 'mm'];

type Read = readonly [path: string, read: (kitchen: Kitchen) => number | undefined, bounds: Bounds];

/** Widest values the room builder is meant for: common sizes with ample margin (no source). Absent parts are not read. */
export const KITCHEN_BOUNDS: readonly Read[] = [
  ['room.width', (k) => k.room.width, mm(1500, 12000)],
  ['room.depth', (k) => k.room.depth, mm(1500, 12000)],
  ['room.height', (k) => k.room.height, mm(2000, 4500)],
  ['base.depth', (k) => k.base.depth, mm(300, 900)],
  ['base.carcass_height', (k) => k.base.carcass_height, mm(400, 1000)],
  ['base.plinth_height', (k) => k.base.plinth_height, mm(40, 300)],
  ['base.plinth_recess', (k) => k.base.plinth_recess, mm(0, 150)],
  ['counter.depth', (k) => k.counter.depth, mm(300, 1200)],
  ['counter.thickness', (k) => k.counter.thickness, mm(6, 120)],
  ['counter.overhang', (k) => k.counter.overhang, mm(0, 100)],
  ['wall_units.depth', (k) => k.wall_units.depth, mm(150, 600)],
  ['wall_units.height', (k) => k.wall_units.height, mm(200, 1500)],
  ['wall_units.gap_above_counter', (k) => k.wall_units.gap_above_counter, mm(250, 1200)],
  ['tall_height', (k) => k.tall_height, mm(1200, 3000)],
  ['island.x', (k) => k.island?.x, mm(0, 12000)],
  ['island.y', (k) => k.island?.y, mm(0, 12000)],
  ['island.width', (k) => k.island?.width, mm(400, 5000)],
  ['island.depth', (k) => k.island?.depth, mm(400, 2500)],
  ['island.seat_overhang', (k) => k.island?.seat_overhang, mm(0, 600)],
  ['sink.center', (k) => k.sink.center, mm(0, 12000)],
  ['cooktop.center', (k) => k.cooktop.center, mm(0, 12000)],
  ['cooktop.width', (k) => k.cooktop.width, mm(280, 920)],
  ['open_side.from', (k) => k.open_side?.from, mm(0, 12000)],
  ['open_side.to', (k) => k.open_side?.to, mm(0, 12000)],
  ['open_side.height', (k) => k.open_side?.height, mm(1700, 4500)],
  ['open_side.next_depth', (k) => k.open_side?.next_depth, mm(500, 12000)],
  ['door.width', (k) => k.door.width, mm(500, 2500)],
  ['door.height', (k) => k.door.height, mm(1700, 3500)],
  ['door.from_right', (k) => k.door.from_right, mm(0, 12000)],
  ['skirting_height', (k) => k.skirting_height, mm(0, 400)],
  ['upstand_height', (k) => k.upstand_height, mm(0, 400)],
];

/** Bounds of fields that stand in lists, by the end of their paths. */
const IN_LISTS: readonly (readonly [path: RegExp, bounds: Bounds])[] = [
  [/^runs\[\d+\]\.(from|to)$/, RUN_BOUNDS],
  [/^openings\[\d+\]\.center$/, OPENING_BOUNDS.center],
  [/^openings\[\d+\]\.width$/, OPENING_BOUNDS.width],
  [/^openings\[\d+\]\.sill$/, OPENING_BOUNDS.sill],
  [/^openings\[\d+\]\.height$/, OPENING_BOUNDS.height],
  [/^openings\[\d+\]\.reveal$/, OPENING_BOUNDS.reveal],
];

/** The least and the most (mm) that a length of a kitchen may be by itself, by its path; null for what is no length. */
export function kitchenBounds(path: string): Bounds | null {
  const own = KITCHEN_BOUNDS.find(([name]) => name === path);
  return own?.[2] ?? IN_LISTS.find(([pattern]) => pattern.test(path))?.[1] ?? null;
}
