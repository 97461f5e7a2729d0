import type { Solid } from '../../engine/light/types';
import type { Plan } from '../plan/types';
import type { Assembly } from './assembly';
import { addFront, FRONT_GAP } from './front';
import { grained } from './pattern-coordinates';
import { boxAt, type Extent, type Side } from './side';

const doorSide: Side = { along: 0, wall: 0, outward: 1 };
/** Frame of the leaf round its panel; casing on the wall; skirting thickness, m. */
const LEAF_FRAME = 0.11;
const CASING = { width: 0.07, depth: 0.026 };
const SKIRTING_DEPTH = 0.014;

/** The doorway as a box that straddles the wall's plane. */
export const doorHole = ({ door }: Plan): Solid => ({
  min: [door.from, -0.01, -0.01],
  max: [door.to, 0.01, door.height],
});

/** The doorway's face in the plane of the wall: what one sees of it without its joinery. */
export function addDoorway(parts: Assembly, { door }: Plan): void {
  parts.face({ surface: 'frame', coordinates: grained(2, 0) }, [door.from, 0, 0], [door.to, 0, door.height], 'y+');
}

/** Door leaf with one panel, and the casing round it. */
export function addDoor(parts: Assembly, plan: Plan): void {
  const { from, to, height } = plan.door;
  addDoorway(parts, plan);
  addFront(parts, doorSide, {
    a: [from + FRONT_GAP, to - FRONT_GAP],
    z: [2 * FRONT_GAP, height - FRONT_GAP],
    back: 0,
    surface: 'frame',
    fivePiece: true,
    frame: LEAF_FRAME,
    sheet: parts.newPiece(),
  });
  const w = CASING.width;
  addTrim(parts, doorSide, 2, { a: [from - w, from], d: [0, CASING.depth], z: [0, height + w] });
  addTrim(parts, doorSide, 2, { a: [to, to + w], d: [0, CASING.depth], z: [0, height + w] });
  addTrim(parts, doorSide, 0, { a: [from, to], d: [0, CASING.depth], z: [height, height + w] });
}

/** Skirting along the walls that units leave free. */
export function addSkirting(parts: Assembly, plan: Plan): void {
  const z = [0, plan.skirting] as const;
  const d = [0, SKIRTING_DEPTH] as const;
  const left: Side = { along: 1, wall: 0, outward: 1 };
  const right: Side = { along: 1, wall: plan.width, outward: -1 };
  const w = CASING.width;
  addTrim(parts, doorSide, 0, { a: [0, plan.door.from - w], d, z });
  addTrim(parts, doorSide, 0, { a: [plan.door.to + w, plan.width], d, z });
  addTrim(parts, left, 1, { a: [SKIRTING_DEPTH, plan.left.end], d, z });
  const plinth = plan.depth - plan.baseDepth + (plan.skirting < plan.plinth.top ? plan.plinth.recess : 0);
  addTrim(parts, right, 1, { a: [SKIRTING_DEPTH, plinth], d, z });
}

function addTrim(parts: Assembly, side: Side, grain: 0 | 1 | 2, extent: Extent): void {
  const piece = parts.newPiece();
  parts.box({ surface: 'frame', coordinates: grained(grain, piece), piece }, ...boxAt(side, extent));
}
