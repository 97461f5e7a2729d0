import type { SurfaceId } from '../../engine/surface';
import type { Unit } from '../../model/layout/types';
import type { Assembly } from './assembly';
import { addFront, FRONT_GAP, FRONT_THICKNESS } from './front';
import { pointAt, type Side } from './side';

/** Where the fronts of a row stand. */
export interface FrontZone {
  readonly side: Side;
  /** Distance of the carcass face from the wall, m. */
  readonly back: number;
  /** Carcass bottom and top, m. */
  readonly z: readonly [number, number];
  readonly surface: SurfaceId;
  readonly fivePiece: boolean;
  /** End of a door where its handle sits: top for base units, bottom for wall units. */
  readonly handleEnd: 'top' | 'bottom';
}

/** Clear of the carcass ends: 720 -> 715, m. */
export const GAP_BELOW = 0.002;
export const GAP_ABOVE = 0.003;
const TOP_DRAWER = 0.14;

/** Handle: distance of its axis from the edge and from the front, lengths of door and drawer handles, m. */
const HANDLE_INSET = 0.032;
const HANDLE_STAND = 0.03;
const DOOR_HANDLE = 0.16;
const WIDE_HANDLE = 0.32;

/** Doors or drawers of one unit, with handles. */
export function addUnitFronts(parts: Assembly, zone: FrontZone, unit: Unit): void {
  const sheet = parts.newPiece();
  const z: [number, number] = [zone.z[0] + GAP_BELOW, zone.z[1] - GAP_ABOVE];
  const a: [number, number] = [unit.from + FRONT_GAP / 2, unit.to - FRONT_GAP / 2];
  const middle = (a[0] + a[1]) / 2;
  switch (unit.kind) {
    case 'door':
      addDoor(parts, zone, { a, z }, unit.handle, sheet);
      break;
    case 'pair':
    case 'sink':
      addDoor(parts, zone, { a: [a[0], middle - FRONT_GAP / 2], z }, 'high', sheet);
      addDoor(parts, zone, { a: [middle + FRONT_GAP / 2, a[1]], z }, 'low', sheet);
      break;
    case 'dishwasher':
      addDrawer(parts, zone, { a, z }, sheet);
      break;
    case 'drawers':
    case 'cooktop':
      for (const part of drawerHeights(z)) addDrawer(parts, zone, { a, z: part }, sheet);
  }
}

export interface FrontPlace {
  readonly a: readonly [number, number];
  readonly z: readonly [number, number];
}

/** A hinged door with an upright handle at its free edge. */
export function addDoor(
  parts: Assembly,
  zone: FrontZone,
  place: FrontPlace,
  handle: 'low' | 'high',
  sheet: number,
): void {
  addFront(parts, zone.side, { ...zone, ...place, sheet });
  const long = place.z[1] - place.z[0] > 1 ? WIDE_HANDLE : DOOR_HANDLE;
  const a = handle === 'low' ? place.a[0] + HANDLE_INSET : place.a[1] - HANDLE_INSET;
  const z = zone.handleEnd === 'top' ? place.z[1] - HANDLE_INSET - long : place.z[0] + HANDLE_INSET;
  addHandle(parts, zone, [a, z], [a, z + long]);
}

/** A drawer front, or any front that opens downward, with a level handle near its top. */
function addDrawer(parts: Assembly, zone: FrontZone, place: FrontPlace, sheet: number): void {
  addFront(parts, zone.side, { ...zone, ...place, sheet });
  const [a0, a1] = place.a;
  const middle = (a0 + a1) / 2;
  const half = (a1 - a0 > 0.55 ? WIDE_HANDLE : DOOR_HANDLE) / 2;
  const high = place.z[1] - place.z[0];
  const z = high > 0.2 ? place.z[1] - HANDLE_INSET : place.z[1] - high / 2;
  addHandle(parts, zone, [middle - half, z], [middle + half, z]);
}

function addHandle(parts: Assembly, { side, back }: FrontZone, from: [number, number], to: [number, number]): void {
  const d = back + FRONT_THICKNESS + HANDLE_STAND;
  parts.bars.push({
    surface: 'hardware',
    from: pointAt(side, from[0], d, from[1]),
    to: pointAt(side, to[0], d, to[1]),
    stand: side.along === 0 ? [0, side.outward * HANDLE_STAND, 0] : [side.outward * HANDLE_STAND, 0, 0],
  });
}

/** A shallow top drawer over two deep ones, joints between them. */
function drawerHeights([low, high]: readonly [number, number]): (readonly [number, number])[] {
  const deep = (high - low - TOP_DRAWER - 2 * FRONT_GAP) / 2;
  return [
    [low, low + deep],
    [low + deep + FRONT_GAP, low + 2 * deep + FRONT_GAP],
    [high - TOP_DRAWER, high],
  ];
}
