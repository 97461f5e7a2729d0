import type { Solid } from '../../engine/light/types';
import type { Wall } from '../../model/kitchen';
import { CASING as CASING_MM } from '../../model/layout/measures';
import type { RunRows } from '../../model/layout/types';
import { type End, wallLength } from '../plan/run-ends';
import type { Plan } from '../plan/types';
import type { Assembly } from './assembly';
import { addFront, FRONT_GAP } from './front';
import { nextRoomSkirting } from './next-room';
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

/** Skirting along the walls that units, doors and an open side leave free, and in the next room. */
export function addSkirting(parts: Assembly, plan: Plan): void {
  if (plan.skirting === 0) return;
  addRoomSkirting(parts, plan);
  for (const { side, extent } of nextRoomSkirting(plan, SKIRTING_DEPTH)) {
    const [long, deep] = [extent.a, extent.d].map(([from, to]) => to - from);
    addTrim(parts, side, long! > deep! ? side.along : side.along === 0 ? 1 : 0, extent);
  }
}

/** Skirting of this room. */
export function addRoomSkirting(parts: Assembly, plan: Plan): void {
  for (const wall of ['front', 'left', 'right', 'back'] as const) {
    const side = wallSide(plan, wall);
    for (const [from, to] of freeAlong(plan, wall)) {
      addTrim(parts, side, side.along, { a: [from, to], d: [0, SKIRTING_DEPTH], z: [0, plan.skirting] });
    }
  }
}

type Range = readonly [from: number, to: number];

/** What stands against a wall leaves of its length. In a corner of the room side walls stop at the skirting across. */
function freeAlong(plan: Plan, wall: Wall): Range[] {
  const covers = coversOf(plan, wall);
  const length = wallLength(plan, wall);
  const inset = wall === 'left' || wall === 'right' ? SKIRTING_DEPTH : 0;
  const free: Range[] = [];
  let start = inset;
  for (const [from, to] of [...covers, [length - inset, length] as const].sort((a, b) => a[0] - b[0])) {
    const end = Math.min(from, length - inset);
    if (end > start) free.push([start, end]);
    start = Math.max(start, to);
  }
  return free;
}

function coversOf(plan: Plan, wall: Wall): Range[] {
  const { door, island, openSide } = plan;
  // Skirting lower than the toe kick runs on to the plinth.
  const recess = plan.skirting < plan.plinth.top ? plan.plinth.recess : 0;
  const covers: Range[] = plan.openings
    .filter((opening) => opening.wall === wall && opening.kind === 'glazed-door')
    .map(({ from, to }) => [from, to]);
  if (wall === 'front') covers.push([door.from - CASING.width, door.to + CASING.width]);
  if (openSide?.wall === wall) covers.push([openSide.from, openSide.to]);
  if (island && island.joined === wall) {
    const isEnd = plan.runs.some((run) => run.wall === wall && run.ends.from === 'meets');
    covers.push([island.body.y0 + recess, isEnd ? island.body.y1 : island.body.y1 - recess]);
  }
  for (const run of plan.runs) {
    if (run.wall === wall) covers.push(standingOf(plan, run));
    else if (run.wall === 'back' ? wall !== 'front' : wall !== 'left' && wall !== 'right') {
      const end = run.wall === 'back' ? (wall === 'left' ? 'from' : 'to') : wall === 'front' ? 'from' : 'to';
      covers.push(...coverAcross(plan, run, end, wall, plan.baseDepth - recess));
    }
  }
  return covers;
}

/** What a run covers of its own wall, from the outer face of its panels. */
function standingOf(plan: Plan, { base, panels, tall, ends, wall }: RunRows): Range {
  const all = [base, ...panels, ...tall];
  const from = Math.min(...all.map((span) => span.from));
  const to = Math.max(...all.map((span) => span.to));
  return [from, ends.to === 'meets' ? wallLength(plan, wall) : to];
}

/** What a run that ends at a wall covers of it. */
function coverAcross(plan: Plan, run: RunRows, end: End, wall: Wall, deep: number): Range[] {
  const at = end === 'from' ? 0 : wallLength(plan, run.wall);
  const all = [run.base, ...run.panels, ...run.tall];
  if (!all.some((span) => Math.abs(span[end] - at) < 1e-6)) return [];
  const { wall: plane, outward, along } = wallSide(plan, run.wall);
  // Along the wall across, the run stands from its own wall outward.
  const out = plane + outward * deep;
  return along === wallSide(plan, wall).along ? [] : [[Math.min(plane, out), Math.max(plane, out)]];
}

function addTrim(parts: Assembly, side: Side, grain: 0 | 1 | 2, extent: Extent): void {
  const piece = parts.newPiece();
  parts.box({ surface: 'frame', coordinates: grained(grain, piece), piece }, ...boxAt(side, extent));
}
