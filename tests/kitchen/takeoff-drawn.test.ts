import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Rect } from '../../src/engine/light/types';
import { SURFACES, type SurfaceId } from '../../src/engine/surface';
import { buildRoom } from '../../src/kitchen/build-room';
import { islandEnds } from '../../src/kitchen/parts/island';
import { wallSide } from '../../src/kitchen/parts/side';
import { planKitchen } from '../../src/kitchen/plan/plan-kitchen';
import type { Plan } from '../../src/kitchen/plan/types';
import { presentSurfaces } from '../../src/kitchen/present-surfaces';
import { takeOff } from '../../src/kitchen/takeoff/take-off';
import type { MeasuredPart, PartKind, Takeoff } from '../../src/kitchen/takeoff/types';
import type { Kitchen } from '../../src/model/kitchen';
import type { RunRows } from '../../src/model/layout/types';
import { areaOfParts } from '../../src/model/quantity/area-of-parts';
import { USUAL_ASSUMPTIONS } from '../../src/model/quantity/assumptions';
import { area, bounds, facing } from './geometry';
import { LAYOUTS, randomKitchens } from './layouts';

// What is measured against what is drawn: the rectangles of the built room are summed, another way than the takeoff goes.

const SHOWN = { ...USUAL_ASSUMPTIONS, floor_reach: 'to-plinth', least_opening_m2: 0 } as const;

const total = (rects: readonly Rect[], surface: SurfaceId, which: (rect: Rect) => boolean = () => true): number =>
  rects
    .filter((rect) => rect.surface === SURFACES.indexOf(surface) && which(rect))
    .reduce((sum, rect) => sum + area(rect), 0);
const isUp = (rect: Rect): boolean => facing(rect).axis === 2 && facing(rect).sign === 1;
const m2 = (takeoff: Takeoff, surface: SurfaceId): number => takeoff.get(surface)?.area_m2 ?? 0;

/** Sentences about surfaces that are measured otherwise than drawn. */
function differences(kitchen: Kitchen): string[] {
  const takeoff = takeOff(kitchen, SHOWN);
  const room = buildRoom(kitchen);
  const { fine, coarse } = room.light;
  const [width, depth] = room.size;
  const found: string[] = [];
  const same = (what: string, measured: number, drawn: number, tolerance = 1e-6): void => {
    if (!(Math.abs(measured - drawn) <= tolerance)) found.push(`${what}: ${measured} measured, ${drawn} drawn`);
  };
  if ([...takeoff.keys()].join() !== presentSurfaces(room).join()) {
    found.push(`${[...takeoff.keys()]} measured, ${presentSurfaces(room)} drawn`);
  }
  // Counters lie flat in the coarse room as whole slabs, less the fields of sink and cooktop.
  const top = (kitchen.base.plinth_height + kitchen.base.carcass_height + kitchen.counter.thickness) / 1000;
  const isTop = (rect: Rect): boolean => isUp(rect) && Math.abs(rect.origin[2] - top) < 1e-6;
  const flat = total(coarse, 'counter', isTop) + total(coarse, 'sink', isTop) + total(coarse, 'appliance', isTop);
  const slabs = [...takeoff.values()]
    .flatMap(({ surface, parts }) => parts.map((part) => ({ ...part, surface })))
    .filter(({ kind }) => kind === 'leg' || kind === 'island');
  const slabArea = (surface: SurfaceId): number =>
    slabs
      .filter((part) => part.surface === surface)
      .reduce((sum, { length_mm, width_mm }) => sum + (length_mm * width_mm) / 1e6, 0);
  same('counter', slabArea('counter'), flat);
  same('island counter', slabArea('island-counter'), total(coarse, 'island-counter', isTop));
  same('ceiling', m2(takeoff, 'ceiling'), width * depth);

  // The coarse room has the upstand in the plane of the wall: it does not end at the strip, 15 mm thick, on the wall across.
  same('upstand', m2(takeoff, 'upstand'), total(coarse, 'upstand'), 2 * 0.015 * (kitchen.upstand_height / 1000) + 1e-6);
  const inRoom = (rect: Rect): boolean => {
    const { min, max } = bounds(rect);
    return min[0] > -1e-6 && min[1] > -1e-6 && max[0] < width + 1e-6 && max[1] < depth + 1e-6;
  };
  const partsOf = (surface: SurfaceId, ...kinds: readonly PartKind[]): readonly MeasuredPart[] =>
    takeoff.get(surface)?.parts.filter(({ kind }) => kinds.includes(kind)) ?? [];

  // In the fine room skirting (14 mm) and the casing of the door (two of 70 x 26 mm) stand on the floor as well, in each other where
  // the door is near a corner.
  const skirting = partsOf('frame', 'strip');
  const trim = {
    foot: sumOf(skirting, ({ length_mm }) => length_mm * 14) + 2 * 0.07 * 0.026,
    face: areaOfParts(skirting),
  };
  same('floor', m2(takeoff, 'floor') - trim.foot, total(fine, 'floor', inRoom), 4e-4);
  // Upright faces of plinths; skirting that runs up to them hides 14 mm. Parts are rounded to a tenth of a millimetre.
  const isUpright = (rect: Rect): boolean => facing(rect).axis !== 2;
  const ends = 6 * 0.014 * (kitchen.skirting_height / 1000);
  same('plinth', m2(takeoff, 'plinth') - ends / 2, total(fine, 'plinth', isUpright), ends / 2 + 1e-6);
  same('plinth parts', areaOfParts(partsOf('plinth', 'strip')), m2(takeoff, 'plinth'), 1e-3);

  // Skirting and casing (70 mm round the door) hide some of the wall, and next to nothing: shelves (24 mm thick), nosings (22 mm, 30 mm
  // beside the window), cassettes of blinds, the strip of an upstand that ends in a corner.
  const casing = 0.07 * (2 * (kitchen.door.height / 1000 + 0.07) + kitchen.door.width / 1000);
  const onWall = (rect: Rect): boolean => {
    const { axis, sign } = facing(rect);
    const plane = sign > 0 ? 0 : room.size[axis];
    return axis !== 2 && Math.abs(rect.origin[axis] - plane) < 1e-6 && inRoom(rect);
  };
  const nosings = kitchen.openings.reduce((sum, opening) => sum + ((opening.width + 60) / 1000) * 0.022, 0);
  const blinds = kitchen.openings.reduce(
    (sum, { blind, width: wide }) => sum + (blind ? (wide / 1000 + 0.2) * 0.1 : 0),
    0,
  );
  const shelves = sumOf(partsOf('wall-fronts', 'shelf'), ({ length_mm }) => length_mm * 24);
  // A casing that reaches into a corner stands against the wall across, too: 26 mm deep.
  const { from_right, width: wideDoor } = kitchen.door;
  const left = kitchen.room.width - from_right - wideDoor;
  const across = left < 71 || from_right < 71 ? (0.026 * (kitchen.door.height + 70)) / 1000 : 0;
  const small = nosings + blinds + shelves + across + 0.03;
  const more = m2(takeoff, 'wall') - trim.face - casing - total(fine, 'wall', onWall);
  same('wall', more, small / 2, small / 2 + 1e-5);

  // Tile in front: its face stands 8 mm before the wall; rails (18 x 30 mm at their ends) touch it, and in a corner the end of that
  // across, 8 mm thick.
  const isTile = (rect: Rect): boolean => {
    const { axis, sign } = facing(rect);
    const plane = sign > 0 ? 0.008 : room.size[axis] - 0.008;
    return axis !== 2 && Math.abs(rect.origin[axis] - plane) < 1e-6;
  };
  const untiled = m2(takeoff, 'backsplash') - total(fine, 'backsplash', isTile);
  const hidden = small + 2 * 0.008 * room.size[2];
  same('backsplash', untiled, hidden / 2, hidden / 2 + 1e-5);
  for (const { surface, planes, edges, hidden } of frontPlanes(planKitchen(kitchen))) {
    const made = partsOf(surface, 'door', 'drawer', 'filler', 'face-frame').concat(
      hoodPanel(kitchen, surface, takeoff),
    );
    const seats = surface === 'island-fronts' ? seatPanels(kitchen, takeoff) : [];
    const drawn = planes.reduce((sum, plane) => sum + total(fine, surface, (rect) => liesIn(rect, plane)), 0);
    same(surface, areaOfParts([...made, ...seats]) + edges - hidden / 2, drawn, hidden / 2 + 2e-3);
  }

  // Joinery and skirting; blinds are drawn in the same finish, and so is all of the next room's.
  if (!kitchen.open_side) {
    const bare = { ...kitchen, openings: kitchen.openings.map(({ blind: _, ...opening }) => opening) };
    same('frame', m2(takeoff, 'frame'), total(buildRoom(bare).light.fine, 'frame'));
  }
  return found;
}

/** A plane that fronts stand in, with the panels of five-piece fronts 8 mm behind it. */
interface FrontPlane {
  readonly axis: number;
  readonly sign: 1 | -1;
  readonly at: number;
}

const liesIn = (rect: Rect, { axis, sign, at }: FrontPlane): boolean => {
  const look = facing(rect);
  const behind = (at - rect.origin[axis]!) * sign;
  return look.axis === axis && look.sign === sign && behind > -1e-6 && behind < 0.008 + 1e-6;
};

/** Where fronts stand, what edges of end panels show beside them, and how much of fillers may be hidden, m2. */
function frontPlanes(plan: Plan) {
  const out = (run: RunRows, far: number): FrontPlane => {
    const { along, wall, outward } = wallSide(plan, run.wall);
    return { axis: along === 0 ? 1 : 0, sign: outward, at: wall + outward * far };
  };
  const { island, counter } = plan;
  const wide = (spans: readonly { from: number; to: number }[]): number =>
    spans.reduce((sum, { from, to }) => sum + to - from, 0);
  const panels = wide(plan.runs.flatMap((run) => run.panels)) * counter.bottom;
  // A filler in a corner reaches 20 mm in behind the fronts across; a built-up edge stands before what is not lowered under
  // it: fillers, panels, the top rails of face frames.
  const corners = plan.runs.length * 2 * 0.02;
  const fillers = wide(plan.runs.flatMap((run) => [...run.base.fillers, ...run.panels]));
  const drop = counter.edge === 'mitred' ? 0.03 : 0;
  const framed = plan.fronts.mounting === 'inset' ? 1 : 0;
  const high = counter.bottom - plan.plinth.top;
  const planes = [
    {
      surface: 'base-fronts' as const,
      planes: plan.runs.map((run) => out(run, plan.baseDepth)),
      edges: panels,
      hidden: corners * high + (fillers + framed * wide(plan.runs.map(({ base }) => base))) * drop,
    },
    {
      surface: 'wall-fronts' as const,
      planes: plan.runs.map((run) => out(run, plan.wallUnits.depth)),
      edges: 0,
      hidden: corners * (plan.wallUnits.top - plan.wallUnits.bottom),
    },
    { surface: 'tall-fronts' as const, planes: plan.runs.map((run) => out(run, plan.baseDepth)), edges: 0, hidden: 0 },
  ];
  if (!island) return planes;
  const ends = islandEnds(plan, island).panels.reduce((sum, [from, to]) => sum + to - from, 0) * counter.bottom;
  const beside = wide(island.row.fillers) + islandEnds(plan, island).panels.length * 0.05;
  const faces = [
    { axis: 1, sign: 1, at: island.body.y1 },
    { axis: 1, sign: -1, at: island.body.y0 },
  ] as const;
  return [
    ...planes,
    {
      surface: 'island-fronts' as const,
      planes: faces,
      edges: 2 * ends,
      hidden: 0.04 * high + (beside + framed * (island.body.x1 - island.body.x0)) * drop,
    },
  ];
}

/** A built-in hood's cabinet too low for a door has a panel as wide as the hood. */
function hoodPanel({ cooktop, wall_units }: Kitchen, surface: SurfaceId, takeoff: Takeoff): readonly MeasuredPart[] {
  if (surface !== 'wall-fronts' || cooktop.hood !== 'built-in') return [];
  const side = wall_units.depth - 20;
  return takeoff.get(surface)?.parts.filter(({ kind, length_mm }) => kind === 'panel' && length_mm !== side) ?? [];
}

/** Panels on the seat side: 5 mm lower than the carcass. */
const seatPanels = ({ base }: Kitchen, takeoff: Takeoff): readonly MeasuredPart[] =>
  takeoff
    .get('island-fronts')!
    .parts.filter(({ kind, width_mm }) => kind === 'panel' && width_mm === base.carcass_height - 5);

const sumOf = (parts: readonly MeasuredPart[], mm2: (part: MeasuredPart) => number): number =>
  parts.reduce((sum, part) => sum + (part.count * mm2(part)) / 1e6, 0);

it.each(Object.entries(LAYOUTS))('measures the kitchen "%s" as it is drawn', (_, kitchen) => {
  expect(differences(kitchen)).toEqual([]);
});

it('measures kitchens of all layouts as they are drawn', () => {
  fc.assert(
    fc.property(randomKitchens, (kitchen) => {
      expect(differences(kitchen)).toEqual([]);
    }),
    { numRuns: 40 },
  );
});
