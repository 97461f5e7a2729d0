import type { Solid } from '../../engine/light/types';
import { wallLength } from '../plan/run-ends';
import type { Plan } from '../plan/types';
import type { Assembly, Skin } from './assembly';
import { hollow } from './cut-holes';
import { inPlane } from './pattern-coordinates';
import { boxAt, type Extent, faceAt, type Side, solidAt, wallSide } from './side';

/** Wall between two rooms with its finish, m. Common practice, no source. */
const WALL_THICKNESS = 0.12;
/** What the next room keeps from a window of this one on the same wall, m. */
const BESIDE_OPENING = 0.1;
/** Wall, floor and ceiling round the next room, m: only their inner faces count. */
const AROUND = 1;

/** The passage through the wall and the room behind it, as hollows on the side of the wall they break through. */
export interface NextRoom {
  readonly side: Side;
  readonly passage: Extent;
  readonly room: Extent;
}

/** The room beyond the open side: as wide as the wall they share, or as a window on it allows. Null without an open side. */
export function nextRoomOf(plan: Plan): NextRoom | null {
  const { openSide, openings, height } = plan;
  if (!openSide) return null;
  const { wall, from, to, nextDepth } = openSide;
  let [low, high] = [0, wallLength(plan, wall)];
  for (const opening of openings) {
    if (opening.wall !== wall) continue;
    if (opening.to <= from) low = Math.min(from, Math.max(low, opening.to + BESIDE_OPENING));
    else if (opening.from >= to) high = Math.max(to, Math.min(high, opening.from - BESIDE_OPENING));
  }
  return {
    side: wallSide(plan, wall),
    passage: { a: [from, to], d: [-WALL_THICKNESS, 0], z: [0, Math.min(openSide.height, height)] },
    room: { a: [low, high], d: [-WALL_THICKNESS - nextDepth, -WALL_THICKNESS], z: [0, height] },
  };
}

/** What passage and next room take out of the walls; the passage reaches a little into this room, to cut its wall. */
export function nextRoomHollows(plan: Plan): Solid[] {
  const next = nextRoomOf(plan);
  if (!next) return [];
  const { side, passage, room } = next;
  return [solidAt(side, { ...passage, d: [passage.d[0], 0.01] }), solidAt(side, room)];
}

/** What lies round the next room, but for the wall it shares with this one. */
export function nextRoomOutside(plan: Plan): Solid[] {
  const next = nextRoomOf(plan);
  if (!next) return [];
  const { side, room } = next;
  const { a, d, z } = room;
  const around: Extent = {
    a: [a[0] - AROUND, a[1] + AROUND],
    d: [d[0] - AROUND, d[1]],
    z: [z[0] - AROUND, z[1] + AROUND],
  };
  return hollow(solidAt(side, around), solidAt(side, room));
}

/** Faces of the passage and of the next room, in the finishes of this one. Its walls and ceiling are fields of their own. */
export function addNextRoom(parts: Assembly, plan: Plan, floor: Skin): void {
  const next = nextRoomOf(plan);
  if (!next) return;
  const { side, passage, room } = next;
  const level = ({ a, d, z }: Extent, skin: Skin, up: boolean): void => {
    const at = up ? z[0] : z[1];
    parts.face(skin, ...boxAt(side, { a, d, z: [at, at] }), up ? 'z+' : 'z-');
  };
  const jamb: Skin = { surface: 'wall', coordinates: inPlane() };
  level(passage, floor, true);
  level(passage, jamb, false);
  addEnd(parts, side, passage, 0, jamb);
  addEnd(parts, side, passage, 1, jamb);

  level(room, floor, true);
  level(room, { surface: 'ceiling', coordinates: inPlane(), piece: parts.newField() }, false);
  const wall = (): Skin => ({ surface: 'wall', coordinates: inPlane(), piece: parts.newField() });
  addEnd(parts, side, room, 0, wall());
  addEnd(parts, side, room, 1, wall());
  const far: Extent = { ...room, d: [room.d[0], room.d[0]] };
  parts.face(wall(), ...boxAt(side, far), faceAt(side, 'd+'));
  const near: Extent = { ...room, d: [room.d[1], room.d[1]] };
  const hole = solidAt(side, { ...passage, d: [room.d[1] - 0.01, 0] });
  parts.face(wall(), ...boxAt(side, near), faceAt(side, 'd-'), [hole]);
}

/** Skirting round the next room and along the jambs of the passage, as thick as given, to go on with that of this room. */
export function nextRoomSkirting(plan: Plan, thickness: number): readonly { side: Side; extent: Extent }[] {
  const next = nextRoomOf(plan);
  if (!next || plan.skirting === 0) return [];
  const { side, passage, room } = next;
  const z = [0, plan.skirting] as const;
  const [far, near] = room.d;
  const at = (a: Extent['a'], d: Extent['d']) => ({ side, extent: { a, d, z } });
  const beside = [far + thickness, near - thickness] as const;
  const walls = [
    at([room.a[0], room.a[1]], [far, far + thickness]),
    at([room.a[0], room.a[0] + thickness], beside),
    at([room.a[1] - thickness, room.a[1]], beside),
    at([room.a[0], passage.a[0]], [near - thickness, near]),
    at([passage.a[1], room.a[1]], [near - thickness, near]),
  ];
  const jambs = [
    at([passage.a[0], passage.a[0] + thickness], [near - thickness, 0]),
    at([passage.a[1] - thickness, passage.a[1]], [near - thickness, 0]),
  ];
  return [...walls.filter(({ extent: { a } }) => a[1] - a[0] >= thickness - 1e-9), ...jambs];
}

/** The face at the low (0) or high (1) end of a hollow, seen from inside it. */
function addEnd(parts: Assembly, side: Side, { a, d, z }: Extent, end: 0 | 1, skin: Skin): void {
  const at = a[end];
  parts.face(skin, ...boxAt(side, { a: [at, at], d, z }), faceAt(side, end === 0 ? 'a+' : 'a-'));
}
