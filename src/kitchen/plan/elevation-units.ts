import { SURFACES, type SurfaceId } from '../../engine/surface';
import { HOOD } from '../../model/layout/measures';
import type { RunRows, Span, Unit } from '../../model/layout/types';
import { Assembly } from '../parts/assembly';
import { baseZone } from '../parts/base-units';
import { cooktopExtent } from '../parts/cooktop';
import { FRONT_THICKNESS, type FrontZone } from '../parts/front';
import { frontFields } from '../parts/front-fields';
import { shelfBoards } from '../parts/shelves';
import { type Side, wallSide } from '../parts/side';
import { addTallFronts } from '../parts/tall-units';
import { addUnitFronts } from '../parts/unit-fronts';
import type { ElevationKind, Piece } from './elevation-piece';
import type { Plan } from './types';

type Range = Piece['a'];

const piece = (kind: ElevationKind, surface: SurfaceId | null, { from, to }: Span, z: Range): Piece => ({
  kind,
  surface,
  a: [from, to],
  z,
});

/** Base units of a run with counter, cooktop, plinth, fillers and end panels. */
export function baseShapes(plan: Plan, run: RunRows): Piece[] {
  const { plinth, counter } = plan;
  const side = wallSide(plan, run.wall);
  const carcass: Range = [plinth.top, counter.bottom];
  const low: Range = [0, counter.bottom];
  const fields = frontFields(plan, run).filter(({ isTall }) => !isTall);
  const [from, to] = cooktopExtent(plan).a;
  return [
    piece('side', 'base-fronts', run.base, carcass),
    piece('plinth', 'plinth', run.base, [0, plinth.top]),
    ...run.panels.map((panel) => piece('panel', 'base-fronts', panel, low)),
    ...run.base.fillers.map((filler) => piece('filler', 'base-fronts', filler, carcass)),
    ...run.base.units.flatMap((unit) =>
      fronts(side, kindOf(unit), (parts) => addUnitFronts(parts, plan, baseZone(plan, side), unit)),
    ),
    ...fields.map(({ kind, surface, a, z }): Piece => ({ kind: kind === 'apron' ? 'sink' : kind, surface, a, z })),
    piece('counter-edge', 'counter', run.counter, [counter.bottom, counter.top]),
    ...(run.cooktop ? [piece('cooktop', 'appliance', { from, to }, cooktopExtent(plan).z)] : []),
  ];
}

/** Wall units of a run with their fillers, shelves and the hood. */
export function overShapes(plan: Plan, run: RunRows): Piece[] {
  const { bottom, top, depth } = plan.wallUnits;
  const side = wallSide(plan, run.wall);
  const zone: FrontZone = {
    side,
    back: depth - FRONT_THICKNESS,
    z: [bottom, top],
    surface: 'wall-fronts',
    handleEnd: 'bottom',
  };
  const units = run.over.flatMap((row) => [
    piece('side', 'wall-fronts', row, [bottom, top]),
    ...row.fillers.map((filler) => piece('filler', 'wall-fronts', filler, [bottom, top])),
    ...row.units.flatMap((unit) => fronts(side, 'wall-unit', (parts) => addUnitFronts(parts, plan, zone, unit))),
  ]);
  const boards = shelfBoards(plan)
    .filter((board) => board.side.along === side.along && board.side.wall === side.wall)
    .map(({ extent: { a, z } }): Piece => ({ kind: 'shelf', surface: 'wall-fronts', a, z }));
  return [...units, ...boards, ...hoodShapes(plan, run)];
}

function hoodShapes({ hood, wallUnits, height }: Plan, run: RunRows): Piece[] {
  if (hood?.run !== run.wall) return [];
  if (hood.kind === 'built-in') return [piece('hood', 'wall-fronts', hood, [hood.bottom, wallUnits.top])];
  const top = hood.bottom + HOOD.canopy.height / 1000;
  const middle = (hood.from + hood.to) / 2;
  const half = HOOD.chimney.width / 2000;
  return [
    piece('hood', 'appliance', hood, [hood.bottom, top]),
    piece('hood', 'appliance', { from: middle - half, to: middle + half }, [top, height]),
  ];
}

/** Tall units of a run with side panels, fillers and appliances. */
export function tallShapes(plan: Plan, run: RunRows): Piece[] {
  const { plinth, tallTop } = plan;
  const side = wallSide(plan, run.wall);
  const fields = frontFields(plan, run).filter(({ isTall }) => isTall);
  return [
    ...run.tall.flatMap((block) => [
      piece('side', 'tall-fronts', block, [plinth.top, tallTop]),
      piece('plinth', 'plinth', block, [0, plinth.top]),
      ...block.panels.map((panel) => piece('panel', 'tall-fronts', panel, [0, tallTop])),
      ...block.fillers.map((filler) => piece('filler', 'tall-fronts', filler, [plinth.top, tallTop])),
      ...block.units.flatMap((unit) => fronts(side, 'tall', (parts) => addTallFronts(parts, plan, side, block, unit))),
    ]),
    ...fields.map(({ kind, surface, a, z }): Piece => ({ kind: kind === 'apron' ? 'sink' : kind, surface, a, z })),
  ];
}

/** What the fronts of a unit are drawn as. */
export function kindOf({ kind }: Unit): ElevationKind {
  if (kind === 'drawers' || kind === 'cooktop') return 'drawer';
  return kind === 'dishwasher' ? 'dishwasher' : kind === 'cooktop-oven' ? 'oven' : 'front';
}

/** The fronts that `build` makes on a side, each as the rectangle one sees of it. */
export function fronts(side: Side, kind: ElevationKind, build: (parts: Assembly) => void): Piece[] {
  const parts = new Assembly();
  build(parts);
  const pieces = new Map<number, { surface: SurfaceId; a: [number, number]; z: [number, number] }>();
  for (const { origin, u, v, surface, piece: number } of parts.rects) {
    if (surface < 0) continue;
    const far = origin.map((c, k) => c + u[k]! + v[k]!);
    const range = (k: number): [number, number] => [Math.min(origin[k]!, far[k]!), Math.max(origin[k]!, far[k]!)];
    const [a, z] = [range(side.along), range(2)];
    const known = pieces.get(number);
    if (!known) pieces.set(number, { surface: SURFACES[surface]!, a, z });
    else {
      known.a = [Math.min(known.a[0], a[0]), Math.max(known.a[1], a[1])];
      known.z = [Math.min(known.z[0], z[0]), Math.max(known.z[1], z[1])];
    }
  }
  return [...pieces.values()].map(({ surface, a, z }) => ({ kind, surface, a, z }));
}
