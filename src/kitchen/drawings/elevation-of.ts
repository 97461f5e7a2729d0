import type { SurfaceId } from '../../engine/surface';
import type { Kitchen, Wall } from '../../model/kitchen';
import { rightward, wallSide } from '../parts/side';
import { bowlExtents, sinkMiddle } from '../parts/sink';
import { drawElevation, type ElevationShape } from '../plan/elevation-drawing';
import { planKitchen } from '../plan/plan-kitchen';
import { wallLength } from '../plan/run-ends';
import type { Plan } from '../plan/types';
import { coursingOf } from './coursing';
import { elevationChains, elevationLevels } from './elevation-chains';
import { handleLines, runBars } from './handle-lines';
import type { LaidPieces } from './laid-pieces';
import { linesOf, tapFront } from './tap-lines';
import type { Coursing, Drawing, Line, Point, Shape } from './types';

/** A wall of a kitchen whose parts fit its room, as one who faces it sees it, with its dimensions. */
export function elevationOf(kitchen: Kitchen, wall: Wall, laid: ReadonlyMap<SurfaceId, LaidPieces>): Drawing {
  const plan = planKitchen(kitchen);
  const { width_mm: width, height_mm: height, shapes: drawn } = drawElevation(kitchen, wall);
  const shapes = drawn.map(toShape);
  const side = wallSide(plan, wall);
  const length = wallLength(plan, wall);
  const toX = (a: number): number => 1000 * (rightward(side) > 0 ? a : length - a);
  return {
    id: wall,
    width,
    height,
    shapes,
    lines: [
      // The ceiling has its tag on the first wall one looks at.
      ...linesOf('edge', wall === 'back' ? 'ceiling' : null, 'bold', [level(width, height)]),
      ...linesOf('edge', null, 'bold', [level(width, 0)]),
      ...handleLines(runBars(plan), side, toX),
      ...(plan.sink.run === wall ? sinkLines(plan, toX) : []),
    ],
    coursings: coursingsOf(shapes, laid),
    chains: elevationChains(plan, wall, toX),
    levels: elevationLevels(plan, wall),
    room: null,
  };
}

const level = (width: number, y: number): readonly Point[] => [
  [0, y],
  [width, y],
];

const toShape = ({ kind, surface, x, z, width, height }: ElevationShape): Shape => ({
  kind,
  surface,
  x,
  y: z,
  width,
  height,
});

/** Bowls behind the fronts, and the tap over the counter. */
function sinkLines(plan: Plan, toX: (a: number) => number): readonly Line[] {
  const bowls = bowlExtents(plan).map(({ a, z }): readonly Point[] => {
    const [x0, x1] = [toX(a[0]), toX(a[1])];
    const [y0, y1] = [1000 * z[0], 1000 * z[1]];
    return [
      [x0, y1],
      [x0, y0],
      [x1, y0],
      [x1, y1],
      [x0, y1],
    ];
  });
  const [foot, top] = [toX(sinkMiddle(plan)), 1000 * plan.counter.top];
  const tap = tapFront(plan.sink.tap).map((part) => part.map(([x, y]): Point => [foot + x, top + y]));
  return [...linesOf('bowl', 'sink', 'hidden', bowls), ...linesOf('tap', 'tap', 'plain', tap)];
}

/** Joints of upright fields of one surface: they start together. */
function coursingsOf(shapes: readonly Shape[], laid: ReadonlyMap<SurfaceId, LaidPieces>): readonly Coursing[] {
  return (['backsplash', 'wall', 'upstand'] as const).flatMap((surface) => {
    const pieces = laid.get(surface);
    const fields = shapes.filter((shape) => shape.surface === surface);
    if (!pieces || fields.length === 0) return [];
    const x = Math.min(...fields.map((field) => field.x));
    const y = Math.min(...fields.map((field) => field.y));
    const whole = {
      x,
      y,
      width: Math.max(...fields.map((field) => field.x + field.width)) - x,
      height: Math.max(...fields.map((field) => field.y + field.height)) - y,
    };
    return fields.map((field) => coursingOf(surface, pieces, field, true, whole));
  });
}
