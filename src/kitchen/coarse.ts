import { cutRect, splitContacts } from '../engine/light/split-contacts';
import type { Rect, Solid } from '../engine/light/types';
import type { SurfaceId } from '../engine/surface';
import { Assembly, type Skin } from './parts/assembly';
import { backSide, leftSide } from './parts/base-units';
import { addHood, cooktopBox } from './parts/cooking';
import { islandSlab } from './parts/counters';
import { plainRect } from './parts/cut-holes';
import { addDoorway, doorHole } from './parts/door';
import { addLampFaces, lampHoles } from './parts/lamps';
import { openingHoles } from './parts/opening-leaves';
import { blank } from './parts/pattern-coordinates';
import { addOutside, addShell } from './parts/shell';
import { boxAt, type Extent, faceAt, type Side } from './parts/side';
import { bowlBox } from './parts/sink';
import { seats } from './parts/stools';
import { OVEN_HEIGHT } from './parts/tall-units';
import { addWallCarcass } from './parts/wall-units';
import { addCoarseOpenings } from './parts/window';
import type { Plan } from './plan/types';

/** The room in few large faces, for light to bounce between, and the solids behind them. */
export interface CoarseGeometry {
  readonly rects: readonly Rect[];
  readonly solids: readonly Solid[];
}

const skin = (surface: SurfaceId): Skin => ({ surface, coordinates: blank });

/**
 * Runs as whole boxes as deep as their counter, without joints, trim and legs of stools. What lies within a few centimetres of
 * a plane (backsplash, upstand, cooktop, sink, door leaf, plinth) is a field of that plane.
 */
export function buildCoarse(plan: Plan): CoarseGeometry {
  const parts = new Assembly();
  addOutside(parts, plan);
  addFinishedShell(parts, plan);
  addCoarseOpenings(parts, plan);
  addLampFaces(parts, plan);
  addRuns(parts, plan);
  addTallBlock(parts, plan);
  for (const row of plan.wallUnits.rows) addWallCarcass(parts, plan, row, plan.wallUnits.depth, skin('wall-fronts'));
  addHood(parts, plan, skin('appliance'));
  addCoarseIsland(parts, plan);
  for (const { min, max } of seats(plan)) parts.box(skin('frame'), min, max);
  return { rects: splitContacts(parts.rects.map(plainRect), parts.solids, cutRect), solids: parts.solids };
}

/** Backsplash, upstand and door leaf lie in the plane of their walls. */
function addFinishedShell(parts: Assembly, plan: Plan): void {
  const { top } = plan.counter;
  const back = backSide(plan);
  const tiled: Extent[] = [{ a: [0, plan.back.to], d: [0, 0], z: [top, plan.wallUnits.bottom] }];
  if (plan.hood.bottom > plan.wallUnits.bottom) {
    tiled.push({ a: [plan.hood.from, plan.hood.to], d: [0, 0], z: [plan.wallUnits.bottom, plan.hood.bottom] });
  }
  const raised: Extent = {
    a: [plan.left.end - plan.counter.overhang, plan.depth],
    d: [0, 0],
    z: [top, top + plan.upstand],
  };
  addShell(parts, plan, {
    left: [around(leftSide, raised)],
    back: tiled.map((extent) => around(back, extent)),
    front: [doorHole(plan)],
  });
  for (const extent of tiled) {
    parts.face(skin('backsplash'), ...boxAt(back, extent), faceAt(back, 'd+'), openingHoles(plan));
  }
  parts.face(skin('upstand'), ...boxAt(leftSide, raised), faceAt(leftSide, 'd+'));
  addDoorway(parts, plan);
}

/** Both legs under their counters; sink and cooktop are fields of the counter. */
function addRuns(parts: Assembly, plan: Plan): void {
  const { top, depth, overhang } = plan.counter;
  const back = backSide(plan);
  const d = [0, depth] as const;
  const cook = flattened(top, ...cooktopBox(plan));
  const bowl = bowlBox(plan);
  const hasToeKick = plan.lamps.some(({ fixture }) => fixture.kind === 'strip' && fixture.run === 'toe-kick');
  const sink = flattened(top, bowl.min, bowl.max);
  const leg = (side: Side, a: Extent['a']): void => {
    if (hasToeKick) addOverToeKick(parts, plan, side, { a, d, z: [0, top] });
    else addOnPlinth(parts, plan, side, { a, d, z: [0, top] }, 'base-fronts', ['z+']);
    parts.face(skin('counter'), ...boxAt(side, { a, d, z: [0, top] }), 'z+', [cook, sink]);
  };
  leg(back, [0, plan.back.to]);
  leg(leftSide, [plan.left.end - overhang, plan.depth - depth]);
  addField(parts, 'appliance', top, cook);
  addField(parts, 'sink', top, sink);
}

/** A base run whose plinth stands back, for the lamps before it. */
function addOverToeKick(parts: Assembly, plan: Plan, side: Side, { a, d, z }: Extent): void {
  const front = plan.baseDepth - plan.plinth.recess;
  const to = side.along === 1 ? plan.depth - front : a[1];
  parts.box(skin('plinth'), ...boxAt(side, { a: [a[0], to], d: [0, front], z: [0, plan.plinth.top] }));
  const [min, max] = boxAt(side, { a, d, z: [plan.plinth.top, z[1]] });
  parts.box(skin('base-fronts'), min, max, ['z-', 'z+']);
  parts.face(skin('base-fronts'), min, max, 'z-', lampHoles(plan));
}

/** The tall units with the oven's face. */
function addTallBlock(parts: Assembly, plan: Plan): void {
  const back = backSide(plan);
  const { panel, oven, top } = plan.tall;
  const { depth, bottom } = plan.counter;
  const block: Extent = { a: [panel.from, plan.width], d: [0, depth], z: [0, top] };
  const face: Extent = { a: [oven.from, oven.to], d: [depth, depth], z: [bottom, bottom + OVEN_HEIGHT] };
  addOnPlinth(parts, plan, back, block, 'tall-fronts', ['y-']);
  const [min, max] = boxAt(back, { ...block, z: [plan.plinth.top, top] });
  parts.face(skin('tall-fronts'), min, max, 'y-', [around(back, face)]);
  parts.face(skin('appliance'), ...boxAt(back, face), 'y-');
}

/** The island's body under a slab that overhangs the seats. */
function addCoarseIsland(parts: Assembly, plan: Plan): void {
  const { body, counter } = plan.island;
  const side: Side = { along: 0, wall: body.y0, outward: 1 };
  const extent: Extent = {
    a: [counter.x0, counter.x1],
    d: [0, counter.y1 - body.y0],
    z: [0, plan.counter.bottom],
  };
  addOnPlinth(parts, plan, side, extent, 'island-fronts', []);
  parts.box(skin('island-counter'), ...islandSlab(plan));
}

/** A box whose foot is plinth, its own top left out where the caller makes it. */
function addOnPlinth(
  parts: Assembly,
  plan: Plan,
  side: Side,
  extent: Extent,
  surface: SurfaceId,
  without: readonly ('z+' | 'y-')[],
): void {
  parts.box(skin('plinth'), ...boxAt(side, { ...extent, z: [0, plan.plinth.top] }));
  parts.box(skin(surface), ...boxAt(side, { ...extent, z: [plan.plinth.top, extent.z[1]] }), without);
}

/** A field in the plane of the counter, where `hole` passes through it. */
function addField(parts: Assembly, surface: SurfaceId, z: number, { min, max }: Solid): void {
  parts.face(skin(surface), [min[0], min[1], z], [max[0], max[1], z], 'z+');
}

/** The extent of a flat field as a box that straddles its plane. */
function around(side: Side, extent: Extent): Solid {
  const [min, max] = boxAt(side, { ...extent, d: [extent.d[0] - 0.01, extent.d[1] + 0.01] });
  return { min, max };
}

const flattened = (z: number, min: Solid['min'], max: Solid['max']): Solid => ({
  min: [min[0], min[1], z - 0.01],
  max: [max[0], max[1], z + 0.01],
});
