import type { SurfaceId } from '../../engine/surface';
import type { Kitchen, Wall } from '../../model/kitchen';
import type { RunRows, Span } from '../../model/layout/types';
import { splashFields } from '../parts/backsplash';
import { rightward, wallSide } from '../parts/side';
import { openingShapes, sideShapes } from './elevation-beside';
import { islandShapes } from './elevation-island';
import type { ElevationKind, Piece } from './elevation-piece';
import { baseShapes, overShapes, tallShapes } from './elevation-units';
import { planKitchen } from './plan-kitchen';
import { wallLength } from './run-ends';
import type { Plan } from './types';

/** A rectangle of an elevation, mm: x to the right from the wall's left end, z up from the floor. */
export interface ElevationShape {
  readonly kind: ElevationKind;
  /** Null: nothing that takes a finish (glass, what is seen through an opening). */
  readonly surface: SurfaceId | null;
  readonly x: number;
  readonly z: number;
  readonly width: number;
  readonly height: number;
}

/** A module of a row, for dimension lines, mm. */
export interface ElevationModule {
  readonly row: 'base' | 'over' | 'tall';
  readonly x: number;
  readonly width: number;
}

/** A wall as one who faces it sees it, mm. */
export interface ElevationDrawing {
  readonly wall: Wall;
  readonly width_mm: number;
  /** Height of the ceiling. */
  readonly height_mm: number;
  /** Back to front: later shapes lie before earlier ones. */
  readonly shapes: readonly ElevationShape[];
  /** From left to right within each row. */
  readonly modules: readonly ElevationModule[];
  /** Levels worth a dimension line: toe kick, counter, underside and top of wall units, top of tall units. */
  readonly levels_mm: readonly number[];
}

/** The elevation of one wall of a kitchen whose parts fit its room (see checkKitchen). */
export function drawElevation(kitchen: Kitchen, wall: Wall): ElevationDrawing {
  const plan = planKitchen(kitchen);
  const run = plan.runs.find((one) => one.wall === wall);
  const pieces: Piece[] = [
    { kind: 'wall', surface: 'wall', a: [0, wallLength(plan, wall)], z: [0, plan.height] },
    ...(run ? splashPieces(plan, run) : []),
    ...openingShapes(plan, wall),
    ...(run ? [...overShapes(plan, run), ...baseShapes(plan, run), ...tallShapes(plan, run)] : []),
    ...sideShapes(plan, wall),
  ];
  const turned = turnedTo(plan, wall);
  return {
    wall,
    width_mm: mm(wallLength(plan, wall)),
    height_mm: mm(plan.height),
    shapes: shapesOf(pieces, turned),
    modules: run ? modulesOf(run, turned) : [],
    levels_mm: levelsOf(plan, run),
  };
}

/** The island or peninsula as one sees it from its seats, facing the back wall; x from its left end, mm. Null without one. */
export function drawIsland(kitchen: Kitchen): Omit<ElevationDrawing, 'wall'> | null {
  const plan = planKitchen(kitchen);
  const { island, counter, plinth } = plan;
  if (!island) return null;
  const { x0, x1 } = island.counter;
  const turned: Turn = ({ from, to }) => ({ x: mm(from - x0), width: mm(to - from) });
  return {
    width_mm: mm(x1 - x0),
    height_mm: mm(counter.top),
    shapes: shapesOf(islandShapes(plan, island), turned),
    modules: [],
    levels_mm: [mm(plinth.top), mm(counter.top)],
  };
}

const shapesOf = (pieces: readonly Piece[], turned: Turn): ElevationShape[] =>
  pieces
    .filter(({ a, z }) => a[1] - a[0] > 1e-6 && z[1] - z[0] > 1e-6)
    .map(({ kind, surface, a, z }) => {
      const { x, width } = turned({ from: a[0], to: a[1] });
      return { kind, surface, x, z: mm(z[0]), width, height: mm(z[1] - z[0]) };
    });

const mm = (m: number): number => Math.round(m * 1e4) / 10;

type Turn = (span: Span) => { readonly x: number; readonly width: number };

/** Places along a wall as distances from the end that is on the viewer's left. */
function turnedTo(plan: Plan, wall: Wall): Turn {
  const isRight = rightward(wallSide(plan, wall)) > 0;
  const length = wallLength(plan, wall);
  return ({ from, to }) => ({ x: mm(isRight ? from : length - to), width: mm(to - from) });
}

const splashPieces = (plan: Plan, run: RunRows): Piece[] =>
  splashFields(plan, run).map(({ a, z }) => {
    const kind = run.splash.kind === 'upstand' ? 'upstand' : 'backsplash';
    return { kind, surface: kind, a, z };
  });

function modulesOf(run: RunRows, turned: Turn): ElevationModule[] {
  const row = (name: ElevationModule['row'], units: readonly Span[]): ElevationModule[] =>
    units.map((unit) => ({ row: name, ...turned(unit) })).sort((p, q) => p.x - q.x);
  return [
    ...row('base', run.base.units),
    ...row(
      'over',
      run.over.flatMap(({ units }) => units),
    ),
    ...row(
      'tall',
      run.tall.flatMap(({ units }) => units),
    ),
  ];
}

function levelsOf({ plinth, counter, wallUnits, tallTop }: Plan, run: RunRows | undefined): number[] {
  if (!run) return [];
  const levels = [plinth.top, counter.top];
  if (run.over.length > 0) levels.push(wallUnits.bottom, wallUnits.top);
  if (run.tall.length > 0) levels.push(tallTop);
  return [...new Set(levels.map(mm))].sort((a, b) => a - b);
}
