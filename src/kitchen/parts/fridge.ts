import type { Plan } from '../plan/types';
import type { Assembly } from './assembly';
import { addFront, FRONT_GAP, FRONT_THICKNESS, type FrontPlace, type FrontZone } from './front';
import { outward } from './handles';
import { grained } from './pattern-coordinates';
import { boxAt, pointAt, type Side } from './side';
import { addDoor, GAP_ABOVE } from './unit-fronts';

/** A fridge that shows: how far its doors stand before the fronts, its height with what stays free over it, the lower door. Common practice, no source. */
const FREE = { before: 0.03, clear: 0.006, height: 1.86, freezer: 0.7, sideBySide: 0.8, joint: 0.008 };
const HANDLE = { stand: 0.045, inset: 0.05, long: 0.55, short: 0.3 };
/** Below this no door fits over the appliance. */
const LEAST_FLAP = 0.15;

/** Fridge over freezer in a tall cell (from module edge to module edge): behind fronts, or as two doors of the appliance itself. */
export function addFridge(
  parts: Assembly,
  plan: Plan,
  zone: FrontZone,
  place: FrontPlace,
  handle: 'low' | 'high' = 'low',
): void {
  const low: FrontZone = { ...zone, handleEnd: 'top' };
  const high: FrontZone = { ...zone, handleEnd: 'bottom' };
  if (plan.fridge === 'hidden') {
    const sheet = parts.newPiece();
    const split = plan.counter.bottom;
    addDoor(parts, plan, low, { a: place.a, z: [place.z[0], split] }, handle, sheet);
    addDoor(parts, plan, high, { a: place.a, z: [split, place.z[1]] }, handle, sheet);
    return;
  }
  const top = freeFridgeTop(place.z);
  addAppliance(parts, zone, { a: place.a, z: [place.z[0], top] }, handle);
  if (top < place.z[1]) addDoor(parts, plan, high, { a: place.a, z: [top, place.z[1]] }, handle);
}

/** Height where a fridge that shows ends in a tall cell: below a door if one fits over it. */
export const freeFridgeTop = ([low, high]: FrontPlace['z']): number =>
  high - low - FREE.height >= LEAST_FLAP ? low + FREE.height : high;

/** Two doors with upright handles: side by side where the appliance is wide, else fridge over freezer. */
function addAppliance(parts: Assembly, { side, back }: FrontZone, { a, z }: FrontPlace, handle: 'low' | 'high'): void {
  const [x0, x1] = [a[0] + FREE.clear, a[1] - FREE.clear];
  const [z0, z1] = [z[0] + FREE.clear, z[1] - GAP_ABOVE];
  const face = back + FRONT_THICKNESS + FREE.before;
  // The body fills up to the back of its doors, so that the joint between them is closed.
  const piece = parts.newPiece();
  const body = { surface: 'appliance', coordinates: grained(2, piece), piece } as const;
  parts.box(body, ...boxAt(side, { a: [x0, x1], d: [back, face - FRONT_THICKNESS], z: [z0, z1] }));
  const door = (front: FrontPlace): void =>
    addFront(parts, side, {
      ...front,
      back: face - FRONT_THICKNESS,
      surface: 'appliance',
      fivePiece: false,
      sheet: parts.newPiece(),
    });
  if (a[1] - a[0] >= FREE.sideBySide) {
    const middle = (x0 + x1) / 2;
    door({ a: [x0, middle - FREE.joint / 2], z: [z0, z1] });
    door({ a: [middle + FREE.joint / 2, x1], z: [z0, z1] });
    const start = (z0 + z1) / 2 - HANDLE.long / 2;
    addHandle(parts, side, middle - HANDLE.inset, face, [start, start + HANDLE.long]);
    addHandle(parts, side, middle + HANDLE.inset, face, [start, start + HANDLE.long]);
    return;
  }
  const split = z0 + FREE.freezer;
  door({ a: [x0, x1], z: [z0, split - FRONT_GAP] });
  door({ a: [x0, x1], z: [split + FREE.joint, z1] });
  const at = handle === 'low' ? x0 + HANDLE.inset : x1 - HANDLE.inset;
  addHandle(parts, side, at, face, [split - 0.05 - HANDLE.short, split - 0.05]);
  addHandle(parts, side, at, face, [split + 0.06, split + 0.06 + HANDLE.long]);
}

function addHandle(parts: Assembly, side: Side, a: number, face: number, z: readonly [number, number]): void {
  parts.bars.push({
    kind: 'bar',
    surface: 'appliance',
    from: pointAt(side, a, face + HANDLE.stand, z[0]),
    to: pointAt(side, a, face + HANDLE.stand, z[1]),
    stand: outward(side, HANDLE.stand),
  });
}
