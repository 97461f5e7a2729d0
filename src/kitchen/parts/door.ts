import type { Solid } from '../../engine/light/types';
import type { Wall } from '../../model/kitchen';
import { CASING as CASING_MM } from '../../model/layout/measures';
import type { Plan } from '../plan/types';
import type { Assembly } from './assembly';
import { addFront, FRONT_GAP } from './front';
import { grained } from './pattern-coordinates';
import { boxAt, type Extent, type Side, wallSide } from './side';

const doorSide: Side = { along: 0, wall: 0, outward: 1 };
/** Frame of the leaf round its panel; casing on the wall; skirting thickness, m. */
const LEAF_FRAME = 0.11;
const CASING = { width: CASING_MM / 1000, depth: 0.026 };
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
  if (plan.skirting === 0) return;
  const w = CASING.width;
  const plinth = plan.depth - plan.baseDepth + (plan.skirting < plan.plinth.top ? plan.plinth.recess : 0);
  addRun(parts, plan, 'front', 0, plan.door.from - w);
  addRun(parts, plan, 'front', plan.door.to + w, plan.width);
  addRun(parts, plan, 'left', SKIRTING_DEPTH, plan.left.end);
  addRun(parts, plan, 'right', SKIRTING_DEPTH, plinth);
}

/** Skirting along a wall, interrupted by glazed doors. */
function addRun(parts: Assembly, plan: Plan, wall: Wall, from: number, to: number): void {
  const side = wallSide(plan, wall);
  const doors = plan.openings.filter((opening) => opening.wall === wall && opening.kind === 'glazed-door');
  let start = from;
  for (const gap of [...doors.sort((a, b) => a.from - b.from), { from: to, to }]) {
    const end = Math.min(gap.from, to);
    if (end > start)
      addTrim(parts, side, side.along, { a: [start, end], d: [0, SKIRTING_DEPTH], z: [0, plan.skirting] });
    start = Math.max(start, gap.to);
  }
}

function addTrim(parts: Assembly, side: Side, grain: 0 | 1 | 2, extent: Extent): void {
  const piece = parts.newPiece();
  parts.box({ surface: 'frame', coordinates: grained(grain, piece), piece }, ...boxAt(side, extent));
}
