import type { Unit } from '../../model/layout/types';
import type { Plan } from '../plan/types';
import type { Assembly } from './assembly';
import { counterDrop } from './counter-edge';
import { addFreeDishwasher } from './dishwasher';
import { addFaceFrame, FACE_FRAME, insetOpenings, REVEAL } from './face-frame';
import { addFront, FRONT_GAP, type FrontPlace, type FrontZone } from './front';
import { addGripRail, addPull, GRIP_GAP } from './handles';
import { addOven, OVEN_HEIGHT } from './oven';
import { APRON } from './sink';

/** Clear of the carcass ends: 720 -> 715, m. */
export const GAP_BELOW = 0.002;
export const GAP_ABOVE = 0.003;
const TOP_DRAWER = 0.14;
/** A built-in oven's front is this wide, m. */
const OVEN_WIDTH = 0.6;

/** Doors, drawers or the appliance of one unit, with handles; between a face frame where fronts are inset. */
export function addUnitFronts(parts: Assembly, plan: Plan, zone: FrontZone, unit: Unit): void {
  const a = [unit.from, unit.to] as const;
  const whole: FrontPlace = { a, z: [zone.z[0], topOf(plan, zone)] };
  switch (unit.kind) {
    case 'door':
      addDoor(parts, plan, zone, whole, unit.handle);
      break;
    case 'pair':
      addDoorPair(parts, plan, zone, whole);
      break;
    case 'sink':
      addDoorPair(parts, plan, zone, plan.sink.fit === 'apron' ? below(whole, zone.z[1] - APRON.height) : whole);
      break;
    case 'dishwasher':
      if (plan.dishwasher === 'free-standing') addFreeDishwasher(parts, zone, whole);
      else addStack(parts, plan, zone, whole, 1);
      break;
    case 'cooktop-oven':
      addOvenUnit(parts, plan, zone, whole);
      break;
    case 'drawers':
    case 'cooktop':
      addStack(parts, plan, zone, whole, 3);
  }
}

/** A hinged door that closes the cell, with its handle at its free edge. `cell` runs from module edge to module edge. */
export function addDoor(
  parts: Assembly,
  plan: Plan,
  zone: FrontZone,
  cell: FrontPlace,
  handle: 'low' | 'high',
  sheet = parts.newPiece(),
): void {
  const [z] = openFronts(parts, plan, zone, cell, 1);
  addLeaf(parts, plan, zone, { a: widthOf(plan, cell), z: z! }, handle, sheet);
}

/** Two doors that meet in the middle of the cell. */
function addDoorPair(parts: Assembly, plan: Plan, zone: FrontZone, cell: FrontPlace): void {
  const sheet = parts.newPiece();
  const [z] = openFronts(parts, plan, zone, cell, 1);
  const a = widthOf(plan, cell);
  const middle = (a[0] + a[1]) / 2;
  const joint = (isInset(plan) ? REVEAL : FRONT_GAP) / 2;
  addLeaf(parts, plan, zone, { a: [a[0], middle - joint], z: z! }, 'high', sheet);
  addLeaf(parts, plan, zone, { a: [middle + joint, a[1]], z: z! }, 'low', sheet);
}

/** Drawers one above the other, or one front that opens downward. */
function addStack(parts: Assembly, plan: Plan, zone: FrontZone, cell: FrontPlace, count: 1 | 3): void {
  const sheet = parts.newPiece();
  for (const z of openFronts(parts, plan, zone, cell, count)) {
    const front = { a: widthOf(plan, cell), z };
    const made = count === 1 ? 'door' : 'drawer';
    addFront(parts, zone.side, { ...zone, ...front, fivePiece: plan.fronts.style === 'five-piece', made, sheet });
    addPull(parts, plan, zone, front, 'middle');
  }
}

/** An oven under the counter, as high as its niche; what is left beside and below it is closed. */
function addOvenUnit(parts: Assembly, plan: Plan, zone: FrontZone, { a, z }: FrontPlace): void {
  const spare = Math.max(0, a[1] - a[0] - OVEN_WIDTH) / 2;
  const oven: FrontPlace = {
    a: [a[0] + spare, a[1] - spare],
    z: [Math.max(z[0], z[1] - OVEN_HEIGHT), z[1] - GAP_ABOVE],
  };
  addOven(parts, plan, zone, oven);
  const sheet = parts.newPiece();
  const close = (part: FrontPlace): void =>
    addFront(parts, zone.side, { ...zone, ...part, fivePiece: false, made: 'filler', sheet });
  const low = z[0] + GAP_BELOW;
  if (oven.z[0] - FRONT_GAP - low > 0.01) {
    close({ a: [a[0] + FRONT_GAP / 2, a[1] - FRONT_GAP / 2], z: [low, oven.z[0] - FRONT_GAP] });
  }
  if (spare < 0.01) return;
  close({ a: [a[0] + FRONT_GAP / 2, oven.a[0] - FRONT_GAP / 2], z: oven.z });
  close({ a: [oven.a[1] + FRONT_GAP / 2, a[1] - FRONT_GAP / 2], z: oven.z });
}

function addLeaf(
  parts: Assembly,
  plan: Plan,
  zone: FrontZone,
  front: FrontPlace,
  handle: 'low' | 'high',
  sheet: number,
): void {
  const fivePiece = plan.fronts.style === 'five-piece';
  addFront(parts, zone.side, { ...zone, ...front, fivePiece, made: 'door', sheet });
  addPull(parts, plan, zone, front, handle);
}

/**
 * Heights of the fronts in a cell from below to above, less joints; what stands between them (face frame, grip rails) is
 * added. A shallow top drawer over two deep ones.
 */
function openFronts(
  parts: Assembly,
  plan: Plan,
  zone: FrontZone,
  cell: FrontPlace,
  count: 1 | 3,
): (readonly [number, number])[] {
  if (isInset(plan)) {
    const openings = insetOpenings(cell.z, count, TOP_DRAWER + 2 * REVEAL);
    const behind = zone.z[1] - cell.z[1];
    const frame: FrontPlace = behind > 0 && behind < LEAST_RAIL ? { ...cell, z: [cell.z[0], zone.z[1]] } : cell;
    addFaceFrame(parts, zone, frame, openings);
    return openings.map(([low, high]) => [low + REVEAL, high - REVEAL]);
  }
  const hasGrip = plan.fronts.handle === 'none' && zone.handleEnd === 'top';
  const joint = hasGrip ? GRIP_GAP : FRONT_GAP;
  // A cell that stands on another has its joint in that one's gap above.
  const z = [
    cell.z[0] + (cell.z[0] > zone.z[0] ? 0 : GAP_BELOW),
    cell.z[1] - (hasGrip ? GRIP_GAP : GAP_ABOVE),
  ] as const;
  const fronts = count === 1 ? [z] : drawerHeights(z, joint);
  if (hasGrip) for (const [, top] of fronts) addGripRail(parts, zone, cell.a, top);
  return fronts;
}

/** The strip behind a dropped counter edge belongs to the rail under it, m. */
const LEAST_RAIL = 0.06;

const isInset = (plan: Plan): boolean => plan.fronts.mounting === 'inset';

function widthOf(plan: Plan, { a }: FrontPlace): [number, number] {
  const clear = isInset(plan) ? FACE_FRAME / 2 + REVEAL : FRONT_GAP / 2;
  return [a[0] + clear, a[1] - clear];
}

/** Fronts under a counter whose edge reaches down end below it. */
function topOf(plan: Plan, { z, surface }: FrontZone): number {
  const isUnderCounter = z[1] === plan.counter.bottom && surface !== 'tall-fronts';
  return isUnderCounter ? z[1] - counterDrop(plan) : z[1];
}

const below = ({ a, z }: FrontPlace, top: number): FrontPlace => ({ a, z: [z[0], Math.min(z[1], top)] });

/** A shallow top drawer over two deep ones, joints between them. */
function drawerHeights([low, high]: readonly [number, number], joint: number): (readonly [number, number])[] {
  const deep = (high - low - TOP_DRAWER - 2 * joint) / 2;
  return [
    [low, low + deep],
    [low + deep + joint, low + 2 * deep + joint],
    [high - TOP_DRAWER, high],
  ];
}
