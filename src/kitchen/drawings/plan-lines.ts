import type { Kitchen } from '../../model/kitchen';
import type { RunRows } from '../../model/layout/types';
import { pointAt, type Side, wallSide } from '../parts/side';
import { bowlExtents, sinkMiddle, sinkSide } from '../parts/sink';
import { coarseSeats, SEAT } from '../parts/stools';
import { drawPlan } from '../plan/plan-drawing';
import type { Plan } from '../plan/types';
import { TAP } from '../props/tap';
import { circle, linesOf, tapAbove } from './tap-lines';
import type { Line, Point } from './types';

/** Steps of the way of a door. */
const SWING_STEPS = 16;

/** What the plan shows in lines: units under the counters, what hangs over them, tall units crossed, tap, seats, the door's swing. */
export function planLines(kitchen: Kitchen, plan: Plan): readonly Line[] {
  const { shapes, door } = drawPlan(kitchen);
  const rect = (x: number, y: number, width: number, depth: number): readonly Point[] => [
    [x, y],
    [x + width, y],
    [x + width, y + depth],
    [x, y + depth],
    [x, y],
  ];
  const hanging = shapes.filter(({ kind }) => kind === 'wall-unit' || kind === 'shelf' || kind === 'hood');
  return [
    ...linesOf('front', null, 'hidden', [...plan.runs.flatMap((run) => unitLines(plan, run)), ...islandLines(plan)]),
    ...linesOf(
      'cross',
      null,
      'fine',
      plan.runs.flatMap((run) => crosses(plan, run)),
    ),
    ...linesOf(
      'over',
      null,
      'above',
      hanging.map(({ x, y, width, depth }) => rect(x, y, width, depth)),
    ),
    ...linesOf('tap', 'tap', 'plain', tapLines(plan)),
    ...linesOf(
      'seat',
      null,
      'hidden',
      coarseSeats(plan).map(({ min, max }) =>
        circle([500 * (min[0] + max[0]), 500 * (min[1] + max[1])], 500 * SEAT.diameter),
      ),
    ),
    ...linesOf('swing', null, 'plain', [swing(door)]),
  ];
}

const toMm = ([x, y]: readonly number[]): Point => [1000 * x!, 1000 * y!];

const before = (side: Side, a: number, d: number): Point => toMm(pointAt(side, a, d, 0));

/** The plane of the fronts of a run, and where its modules meet. */
function unitLines(plan: Plan, { wall, base }: RunRows): readonly (readonly Point[])[] {
  const side = wallSide(plan, wall);
  const cuts = [...new Set([...base.units, ...base.fillers].flatMap(({ from, to }) => [from, to]))];
  const [from, to] = [Math.min(...cuts), Math.max(...cuts)];
  return [
    [before(side, from, plan.baseDepth), before(side, to, plan.baseDepth)],
    ...cuts.map((a) => [before(side, a, 0), before(side, a, plan.baseDepth)]),
  ];
}

/** Body and modules of the island under its counter. */
function islandLines({ island, baseDepth }: Plan): readonly (readonly Point[])[] {
  if (!island) return [];
  const { x0, x1, y0, y1 } = island.body;
  const back = Math.max(y0, y1 - baseDepth);
  const cuts = [...new Set([...island.row.units, ...island.row.fillers].flatMap(({ from, to }) => [from, to]))];
  const outline = [
    [x0, y0],
    [x1, y0],
    [x1, y1],
    [x0, y1],
    [x0, y0],
  ];
  return [outline.map(toMm), ...cuts.map((x) => [toMm([x, back]), toMm([x, y1])])];
}

/** Tall units: their modules, each crossed, as what reaches through the height is drawn. */
function crosses(plan: Plan, { wall, tall }: RunRows): readonly (readonly Point[])[] {
  const side = wallSide(plan, wall);
  return tall.flatMap(({ units }) =>
    units.flatMap(({ from, to }) => [
      [before(side, from, 0), before(side, to, plan.baseDepth)],
      [before(side, from, plan.baseDepth), before(side, to, 0)],
      [
        before(side, from, 0),
        before(side, from, plan.baseDepth),
        before(side, to, plan.baseDepth),
        before(side, to, 0),
      ],
    ]),
  );
}

function tapLines(plan: Plan): readonly (readonly Point[])[] {
  const side = sinkSide(plan);
  const middle = sinkMiddle(plan);
  const back = bowlExtents(plan)[0]!.d[0] - TAP.BEHIND;
  return tapAbove(plan.sink.tap).map((part) => part.map(([x, y]) => before(side, middle + x / 1000, back + y / 1000)));
}

/** The door open, and the way of its free edge to where it shuts. */
function swing({ from, to, swing: { hinge, open } }: ReturnType<typeof drawPlan>['door']): readonly Point[] {
  const shut: Point = [hinge[0] === to ? from : to, hinge[1]];
  const radius = to - from;
  const start = Math.atan2(open[1] - hinge[1], open[0] - hinge[0]);
  const end = Math.atan2(shut[1] - hinge[1], shut[0] - hinge[0]);
  return [
    hinge,
    ...Array.from({ length: SWING_STEPS + 1 }, (_, i): Point => {
      const angle = start + ((end - start) * i) / SWING_STEPS;
      return [hinge[0] + radius * Math.cos(angle), hinge[1] + radius * Math.sin(angle)];
    }),
  ];
}
