import { cutRect, splitContacts } from '../engine/light/split-contacts';
import type { Rect, Solid, Vec3 } from '../engine/light/types';
import type { SurfaceId } from '../engine/surface';
import { Assembly, type Skin } from './parts/assembly';
import { backSide, leftSide } from './parts/base-units';
import { addHood, cooktopBox } from './parts/cooking';
import { backSlab, islandSlab, leftSlab } from './parts/counters';
import { plainRect } from './parts/cut-holes';
import { addDoorway, doorHole } from './parts/door';
import { FRONT_THICKNESS } from './parts/front';
import { workingSide } from './parts/island';
import { addLampFaces } from './parts/lamps';
import { blank } from './parts/pattern-coordinates';
import { addOutside, addShell } from './parts/shell';
import { boxAt, type Extent, faceAt, type Side } from './parts/side';
import { addBowl, bowlBox } from './parts/sink';
import { OVEN_HEIGHT } from './parts/tall-units';
import { addWallCarcass } from './parts/wall-units';
import { addOpening } from './parts/window';
import type { Plan } from './plan/types';

/** The room in few large faces, for light to bounce between, and the solids behind them. */
export interface CoarseGeometry {
  readonly rects: readonly Rect[];
  readonly solids: readonly Solid[];
}

const skin = (surface: SurfaceId): Skin => ({ surface, coordinates: blank });

/**
 * Carcasses, slabs and the shell, without fronts, trim and stools. Nothing here stands out beyond what one sees, so a
 * point on a visible face never lies inside a coarse box.
 */
export function buildCoarse(plan: Plan): CoarseGeometry {
  const parts = new Assembly();
  addOutside(parts, plan);
  addFinishedShell(parts, plan);
  addOpening(parts, plan);
  addLampFaces(parts, plan);
  addRuns(parts, plan);
  for (const row of plan.wallUnits.rows) addWallCarcass(parts, plan, row, skin('wall-fronts'));
  addHood(parts, plan, skin('appliance'));
  addCoarseIsland(parts, plan);
  addCoarseCounters(parts, plan);
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
  const hole = (side: Side, extent: Extent): Solid => {
    const [min, max] = boxAt(side, { ...extent, d: [-0.01, 0.01] });
    return { min, max };
  };
  addShell(parts, plan, {
    left: [hole(leftSide, raised)],
    back: tiled.map((extent) => hole(back, extent)),
    door: [doorHole(plan)],
  });
  for (const extent of tiled) parts.face(skin('backsplash'), ...boxAt(back, extent), faceAt(back, 'd+'));
  parts.face(skin('upstand'), ...boxAt(leftSide, raised), faceAt(leftSide, 'd+'));
  addDoorway(parts, plan);
}

/** Carcass and plinth of both legs and the tall units, the oven's face among them. */
function addRuns(parts: Assembly, plan: Plan): void {
  const back = backSide(plan);
  const d = [0, plan.baseDepth - FRONT_THICKNESS] as const;
  const plinthD = [0, plan.baseDepth - plan.plinth.recess] as const;
  const z = [plan.plinth.top, plan.counter.bottom] as const;
  const plinthZ = [0, plan.plinth.top] as const;
  const { panel, oven, top } = plan.tall;
  const base = (side: Side, a: Extent['a']): void =>
    parts.hollowBox(skin('base-fronts'), ...boxAt(side, { a, d, z }), bowlBox(plan));
  base(back, [0, panel.from]);
  base(leftSide, [plan.left.end, plan.depth - d[1]]);

  const tall = boxAt(back, { a: [panel.from, plan.width], d, z: [plan.plinth.top, top] });
  const face = { a: [oven.from, oven.to], z: [plan.counter.bottom, plan.counter.bottom + OVEN_HEIGHT] } as const;
  const [min, max] = boxAt(back, { ...face, d: [d[1] - 0.01, d[1] + 0.01] });
  parts.box(skin('tall-fronts'), ...tall, ['y-']);
  parts.face(skin('tall-fronts'), ...tall, 'y-', [{ min, max }]);
  parts.face(skin('appliance'), ...boxAt(back, { ...face, d: [d[1], d[1]] }), 'y-');

  parts.box(skin('plinth'), ...boxAt(back, { a: [0, plan.width], d: plinthD, z: plinthZ }));
  parts.box(
    skin('plinth'),
    ...boxAt(leftSide, { a: [plan.left.end, plan.depth - plinthD[1]], d: plinthD, z: plinthZ }),
  );
}

function addCoarseIsland(parts: Assembly, plan: Plan): void {
  const { body } = plan.island;
  const side = workingSide(plan);
  const a = [body.x0, body.x1] as const;
  const deep = body.y1 - body.y0;
  const { recess, top } = plan.plinth;
  parts.box(
    skin('island-fronts'),
    ...boxAt(side, { a, d: [FRONT_THICKNESS, deep - FRONT_THICKNESS], z: [top, plan.counter.bottom] }),
  );
  parts.box(skin('plinth'), ...boxAt(side, { a, d: [recess, deep - recess], z: [0, top] }));
}

/** The three slabs; the cooktop lies in the plane of the counter, the sink is hollow. */
function addCoarseCounters(parts: Assembly, plan: Plan): void {
  const { top } = plan.counter;
  const [cookMin, cookMax] = cooktopBox(plan);
  const cook: Solid = { min: [cookMin[0], cookMin[1], top - 0.01], max: [cookMax[0], cookMax[1], top + 0.01] };
  const bowl = bowlBox(plan);

  const [min, max]: readonly [Vec3, Vec3] = backSlab(plan);
  parts.box(skin('counter'), min, max, ['z+']);
  parts.face(skin('counter'), min, max, 'z+', [cook]);
  parts.face(skin('appliance'), [cook.min[0], cook.min[1], top], [cook.max[0], cook.max[1], top], 'z+');
  parts.hollowBox(skin('counter'), ...leftSlab(plan), bowl);
  addBowl(parts, bowl);
  parts.box(skin('island-counter'), ...islandSlab(plan));
}
