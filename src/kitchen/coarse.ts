import { cutRect, splitContacts } from '../engine/light/split-contacts';
import type { Rect, Solid } from '../engine/light/types';
import type { SurfaceId } from '../engine/surface';
import type { RunRows } from '../model/layout/types';
import { Assembly, type Skin } from './parts/assembly';
import type { Face } from './parts/axes';
import { splashFields } from './parts/backsplash';
import { addBlinds } from './parts/blinds';
import { coarseFields } from './parts/coarse-fields';
import { plainRect } from './parts/cut-holes';
import { addDoorway, doorHole } from './parts/door';
import { type FrontField, frontFields } from './parts/front-fields';
import { addCoarseHood } from './parts/hood';
import { addLampFaces, lampHoles } from './parts/lamps';
import { addRail } from './parts/light-rail';
import { openingHoles } from './parts/opening-leaves';
import { blank } from './parts/pattern-coordinates';
import { addOutside, addShell } from './parts/shell';
import { addShelves } from './parts/shelves';
import { around, boxAt, type Extent, faceAt, type Side, wallSide } from './parts/side';
import { islandSlab } from './parts/slabs';
import { coarseSeats } from './parts/stools';
import { addWallCarcass } from './parts/wall-units';
import { waterfallEnds } from './parts/waterfall';
import { addCoarseOpenings } from './parts/window';
import { behindFrontsAcross, ENDS } from './plan/run-ends';
import type { Plan } from './plan/types';

/** The room in few large faces, for light to bounce between, and the solids behind them. */
export interface CoarseGeometry {
  readonly rects: readonly Rect[];
  readonly solids: readonly Solid[];
}

const skin = (surface: SurfaceId): Skin => ({ surface, coordinates: blank });

/**
 * Runs as whole boxes as deep as their counter, without joints, trim and legs of stools. What lies within a few centimetres of
 * a plane (backsplash, upstand, cooktop, sink, appliances, door leaf, plinth) is a field of that plane. Thin things that stand
 * close before a lamp or a window are there all the same: rails under wall units, shelves, rolled-up blinds.
 */
export function buildCoarse(plan: Plan): CoarseGeometry {
  const parts = new Assembly();
  addOutside(parts, plan);
  addFinishedShell(parts, plan);
  addCoarseOpenings(parts, plan);
  addBlinds(parts, plan);
  addLampFaces(parts, plan);
  for (const run of plan.runs) addRun(parts, plan, run);
  addCounterFields(parts, plan);
  for (const run of plan.runs) addTallBlocks(parts, plan, run);
  for (const run of plan.runs) {
    for (const row of run.over) {
      addWallCarcass(parts, plan, run, row, plan.wallUnits.depth, skin('wall-fronts'));
      addRail(parts, plan, run, row);
    }
  }
  addShelves(parts, plan);
  addCoarseHood(parts, plan);
  addCoarseIsland(parts, plan);
  for (const { min, max } of coarseSeats(plan)) parts.box(skin('frame'), min, max);
  return { rects: splitContacts(parts.rects.map(plainRect), parts.solids, cutRect), solids: parts.solids };
}

/** Backsplash, upstand and door leaf lie in the plane of their walls. */
function addFinishedShell(parts: Assembly, plan: Plan): void {
  const finished = plan.runs.flatMap((run) => {
    const side = wallSide(plan, run.wall);
    const surface = run.splash.kind === 'upstand' ? ('upstand' as const) : ('backsplash' as const);
    return splashFields(plan, run).map((extent) => ({ wall: run.wall, side, surface, extent }));
  });
  const on = (wall: RunRows['wall']): Solid[] =>
    finished.filter((field) => field.wall === wall).map(({ side, extent }) => around(side, extent));
  addShell(parts, plan, { left: on('left'), back: on('back'), right: on('right'), front: [doorHole(plan)] });
  for (const { side, surface, extent } of finished) {
    parts.face(skin(surface), ...boxAt(side, extent), faceAt(side, 'd+'), openingHoles(plan));
  }
  addDoorway(parts, plan);
}

/** A run under its counter; sink and cooktop are fields of the counter, appliances and an apron of the fronts. */
function addRun(parts: Assembly, plan: Plan, run: RunRows): void {
  const { top, depth } = plan.counter;
  const side = wallSide(plan, run.wall);
  const box: Extent = { a: [run.counter.from, run.counter.to], d: [0, depth], z: [0, top] };
  const out = faceAt(side, 'd+');
  const fields = frontFields(plan, run).filter(({ isTall }) => !isTall);
  const hasToeKick = plan.lamps.some(({ fixture }) => fixture.kind === 'strip' && fixture.run === 'toe-kick');
  const without: Face[] = fields.length > 0 ? ['z+', out] : ['z+'];
  if (hasToeKick) addOverToeKick(parts, plan, run, box, without);
  else addOnPlinth(parts, plan, side, box, 'base-fronts', without);
  if (fields.length > 0) addFrontFields(parts, plan, side, box, 'base-fronts', fields);
  const holes = coarseFields(plan).map((field) => flattened(top, field.box));
  parts.face(skin('counter'), ...boxAt(side, box), 'z+', holes);
}

/** A base run whose plinth stands back, for the lamps before it. */
function addOverToeKick(
  parts: Assembly,
  plan: Plan,
  run: RunRows,
  { a, d, z }: Extent,
  without: readonly Face[],
): void {
  const side = wallSide(plan, run.wall);
  const { recess, top } = plan.plinth;
  const [from, to] = ENDS.map((end, i) =>
    run.ends[end] === 'meets' ? behindFrontsAcross(plan, run, end, recess) : a[i]!,
  );
  parts.box(skin('plinth'), ...boxAt(side, { a: [from!, to!], d: [0, plan.baseDepth - recess], z: [0, top] }));
  const [min, max] = boxAt(side, { a, d, z: [top, z[1]] });
  parts.box(skin('base-fronts'), min, max, ['z-', ...without]);
  parts.face(skin('base-fronts'), min, max, 'z-', lampHoles(plan));
}

/** The front of a box over its plinth, with what in it is not finished as its fronts. */
function addFrontFields(
  parts: Assembly,
  plan: Plan,
  side: Side,
  { a, d, z }: Extent,
  surface: SurfaceId,
  fields: readonly FrontField[],
): void {
  const plane: Extent['d'] = [d[1], d[1]];
  const out = faceAt(side, 'd+');
  const holes = fields.map((field) => around(side, { ...field, d: plane }));
  parts.face(skin(surface), ...boxAt(side, { a, d: plane, z: [plan.plinth.top, z[1]] }), out, holes);
  for (const field of fields) parts.face(skin(field.surface), ...boxAt(side, { ...field, d: plane }), out);
}

/** What lies in the plane of the counters. */
function addCounterFields(parts: Assembly, plan: Plan): void {
  for (const { surface, box } of coarseFields(plan)) parts.face(skin(surface), box.min, box.max, 'z+');
}

/** Tall units as one box a block, with the faces of their appliances. */
function addTallBlocks(parts: Assembly, plan: Plan, run: RunRows): void {
  const side = wallSide(plan, run.wall);
  const fields = frontFields(plan, run).filter(({ isTall }) => isTall);
  for (const { from, to } of run.tall) {
    const block: Extent = { a: [from, to], d: [0, plan.counter.depth], z: [0, plan.tallTop] };
    const inside = fields.filter(({ a }) => a[0] >= from - 1e-9 && a[1] <= to + 1e-9);
    addOnPlinth(parts, plan, side, block, 'tall-fronts', [faceAt(side, 'd+')]);
    addFrontFields(parts, plan, side, block, 'tall-fronts', inside);
  }
}

/** The island's body under a slab that overhangs the seats; a waterfall end is the slab down to the floor. */
function addCoarseIsland(parts: Assembly, plan: Plan): void {
  const { island } = plan;
  if (!island) return;
  const { body, counter } = island;
  const side: Side = { along: 0, wall: body.y0, outward: 1 };
  const z = [0, plan.counter.bottom] as const;
  let a: Extent['a'] = [counter.x0, counter.x1];
  for (const { min, max } of waterfallEnds(plan)) {
    a = min[0] === counter.x0 ? [max[0], a[1]] : [a[0], min[0]];
    parts.box(skin('island-counter'), min, max);
  }
  addOnPlinth(parts, plan, side, { a, d: [0, counter.y1 - body.y0], z }, 'island-fronts', []);
  parts.box(skin('island-counter'), ...islandSlab(plan, island));
}

/** A box whose foot is plinth; the caller makes the faces it is without. */
function addOnPlinth(
  parts: Assembly,
  plan: Plan,
  side: Side,
  extent: Extent,
  surface: SurfaceId,
  without: readonly Face[],
): void {
  parts.box(skin('plinth'), ...boxAt(side, { ...extent, z: [0, plan.plinth.top] }));
  parts.box(skin(surface), ...boxAt(side, { ...extent, z: [plan.plinth.top, extent.z[1]] }), without);
}

const flattened = (z: number, { min, max }: Solid): Solid => ({
  min: [min[0], min[1], z - 0.01],
  max: [max[0], max[1], z + 0.01],
});
