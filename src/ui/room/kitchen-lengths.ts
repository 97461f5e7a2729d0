import type { Kitchen } from '../../model/kitchen';
import { fitToRoom } from '../../model/new-kitchen/fit-to-room';
import type { KitchenDefaults } from '../../model/new-kitchen/kitchen-defaults';
import type { Refitted } from '../../model/new-kitchen/losses';
import { KITCHEN } from '../words/kitchen';
import { reread } from '../words/spoken';

/** A length of the kitchen that has a field: where it stands, what it is called, how it is read and written. */
export interface KitchenLength {
  /** As in problems: `room.width`. */
  readonly path: string;
  readonly label: string;
  readonly read: (kitchen: Kitchen) => number;
  /** The kitchen with another length; with what was lost on the way where others had to follow. Null where nothing fits it. */
  readonly write: (kitchen: Kitchen, mm: number) => Kitchen | Refitted | null;
  /** What is usual in the region; absent where nothing is. */
  readonly usual?: (usual: KitchenDefaults) => number;
  /** What it may be at most in this kitchen, where that is less than in any, mm. */
  readonly most?: (kitchen: Kitchen) => number;
}

type LengthsOf<T> = { [K in keyof T]: T[K] extends number ? K : never }[keyof T] & string;

/** A length of a part whose usual sizes are known. */
const of = <P extends 'base' | 'counter' | 'wall_units'>(
  part: P,
  key: LengthsOf<Kitchen[P]>,
  label: string,
): KitchenLength => ({
  path: `${part}.${key}`,
  label,
  read: (kitchen) => kitchen[part][key] as number,
  write: (kitchen, mm) => ({ ...kitchen, [part]: { ...kitchen[part], [key]: mm } }),
  usual: (usual) => (usual as Pick<Kitchen, P>)[part][key] as number,
});

const whole = (key: 'tall_height' | 'skirting_height' | 'upstand_height', label: string): KitchenLength => ({
  path: key,
  label,
  read: (kitchen) => kitchen[key],
  write: (kitchen, mm) => ({ ...kitchen, [key]: mm }),
  usual: (usual) => usual[key],
});

/** The room; what stands in it follows its walls. */
const ofRoom = (key: keyof Kitchen['room'], label: string): KitchenLength => ({
  path: `room.${key}`,
  label,
  read: ({ room }) => room[key],
  write: (kitchen, mm) => fitToRoom(kitchen, { ...kitchen.room, [key]: mm }),
});

const ofDoor = (key: 'width' | 'height', label: string): KitchenLength => ({
  path: `door.${key}`,
  label,
  read: ({ door }) => door[key],
  write: (kitchen, mm) => ({ ...kitchen, door: { ...kitchen.door, [key]: mm } }),
  usual: ({ door }) => door[key],
});

export const ROOM_LENGTHS: readonly KitchenLength[] = reread(() => [
  ofRoom('width', KITCHEN.width),
  ofRoom('depth', KITCHEN.depth),
  ofRoom('height', KITCHEN.height),
]);

export const DOOR_LENGTHS: readonly KitchenLength[] = reread(() => [
  ofDoor('width', KITCHEN.doorWidth),
  ofDoor('height', KITCHEN.doorHeight),
  {
    path: 'door.from_right',
    label: KITCHEN.doorFromRight,
    read: ({ door }) => door.from_right,
    write: (kitchen, mm) => ({ ...kitchen, door: { ...kitchen.door, from_right: mm } }),
    most: ({ room }) => room.width,
  },
  whole('skirting_height', KITCHEN.skirting),
]);

export const COUNTER_LENGTHS: readonly KitchenLength[] = reread(() => [
  of('counter', 'depth', KITCHEN.depth),
  of('counter', 'thickness', KITCHEN.thickness),
  of('counter', 'overhang', KITCHEN.overhang),
  whole('upstand_height', KITCHEN.upstand),
]);

export const CABINET_LENGTHS: readonly KitchenLength[] = reread(() => [
  of('base', 'depth', KITCHEN.baseDepth),
  of('base', 'carcass_height', KITCHEN.carcass),
  of('base', 'plinth_height', KITCHEN.plinth),
  of('base', 'plinth_recess', KITCHEN.recess),
  of('wall_units', 'height', KITCHEN.wallHeight),
  of('wall_units', 'depth', KITCHEN.wallDepth),
  of('wall_units', 'gap_above_counter', KITCHEN.wallGap),
  whole('tall_height', KITCHEN.tallHeight),
]);

/** The lengths of an island; a peninsula begins at its wall. */
export const ISLAND_LENGTHS = reread(
  () =>
    [
      ['x', KITCHEN.islandX],
      ['y', KITCHEN.islandY],
      ['width', KITCHEN.width],
      ['depth', KITCHEN.depth],
      ['seat_overhang', KITCHEN.seatOverhang],
    ] as const,
);
