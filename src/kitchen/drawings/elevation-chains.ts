import type { Wall } from '../../model/kitchen';
import { HOOD } from '../../model/layout/measures';
import type { RunRows, Span } from '../../model/layout/types';
import { wallLength } from '../plan/run-ends';
import type { Plan, PlannedIsland } from '../plan/types';
import { chainOf } from './chains';
import type { Chain, ChainKind, Level } from './types';

interface Gap extends Span {
  readonly sill: number;
  readonly head: number;
}

/**
 * Dimensions of an elevation: below it the units in their order and the whole wall, above it what hangs and the openings, beside it the heights.
 * Each chain runs from end to end, so that its parts add up to the whole. `toX` turns a place along the wall (m) to the drawing (mm).
 */
export function elevationChains(plan: Plan, wall: Wall, toX: (a: number) => number): readonly Chain[] {
  const run = plan.runs.find((one) => one.wall === wall);
  const ends = [0, wallLength(plan, wall)];
  const along = (what: ChainKind, side: Chain['side'], row: 0 | 1, spans: readonly Span[]): Chain =>
    chainOf(what, side, row, [...ends, ...spans.flatMap(({ from, to }) => [from, to])].map(toX));
  const units = run ? standing(run) : [];
  const over = run ? hanging(plan, run) : [];
  const gaps = gapsOf(plan, wall);
  const chains = [
    ...(units.length > 0 ? [along('units', 'below', 0, units)] : []),
    chainOf('whole', 'below', units.length > 0 ? 1 : 0, ends.map(toX)),
    ...(over.length > 0 ? [along('over', 'above', 0, over)] : []),
    ...(gaps.length > 0 ? [along('openings', 'above', over.length > 0 ? 1 : 0, gaps)] : []),
    chainOf(
      'heights',
      'left',
      0,
      heightsOf(plan, run, gaps).map((z) => 1000 * z),
    ),
  ];
  return chains;
}

/** Heights over the floor that one sets out by. */
export function elevationLevels(plan: Plan, wall: Wall): readonly Level[] {
  const run = plan.runs.find((one) => one.wall === wall);
  const level = (what: Level['what'], z: number): Level => ({ what, y: 1000 * z });
  return [
    ...(run ? [level('counter', plan.counter.top)] : []),
    ...(run && run.over.length > 0
      ? [level('units-below', plan.wallUnits.bottom), level('units-above', plan.wallUnits.top)]
      : []),
    ...(run && run.tall.length > 0 ? [level('tall', plan.tallTop)] : []),
    ...gapsOf(plan, wall).flatMap(({ sill, head }) => [
      ...(sill > 0 ? [level('sill', sill)] : []),
      level('head', head),
    ]),
    level('ceiling', plan.height),
  ].filter(({ y }, i, all) => all.findIndex((one) => Math.abs(one.y - y) < 0.5) === i);
}

/** All that stands at a wall, in modules. */
const standing = ({ base, panels, tall }: RunRows): readonly Span[] => [
  ...base.units,
  ...base.fillers,
  ...panels,
  ...tall.flatMap((block) => [...block.units, ...block.panels, ...block.fillers]),
];

const hanging = ({ hood }: Plan, { wall, over, shelves }: RunRows): readonly Span[] => [
  ...over.flatMap(({ units, fillers }) => [...units, ...fillers]),
  ...shelves,
  ...(hood?.run === wall ? [hood] : []),
];

function gapsOf({ openings, openSide, door }: Plan, wall: Wall): readonly Gap[] {
  return [
    ...openings.filter((one) => one.wall === wall),
    ...(openSide?.wall === wall ? [{ ...openSide, sill: 0, head: openSide.height }] : []),
    ...(wall === 'front' ? [{ ...door, sill: 0, head: door.height }] : []),
  ];
}

/** Toe kick, base units, counter, what is laid over it, wall units, up to the ceiling; without a run those of the first opening. */
function heightsOf(plan: Plan, run: RunRows | undefined, gaps: readonly Gap[]): readonly number[] {
  const { plinth, counter, wallUnits, height, upstand, hood } = plan;
  if (!run) return [0, ...gaps.slice(0, 1).flatMap(({ sill, head }) => [sill, head]), height];
  // Tile up to the ceiling ends at no height of its own.
  const laid = { upstand: [counter.top + upstand], backsplash: [wallUnits.bottom], 'backsplash-to-ceiling': [] }[
    run.splash.kind
  ];
  const hangs = run.over.length > 0;
  const canopy = !hangs && hood?.run === run.wall ? [hood.bottom, hood.bottom + HOOD.canopy.height / 1000] : [];
  return [
    0,
    plinth.top,
    counter.bottom,
    counter.top,
    ...(hangs ? [wallUnits.bottom, wallUnits.top] : [...laid, ...canopy]),
    height,
  ];
}

/** Dimensions of an island seen from its seats (`toX` from its left end) or from where one works at it. */
export function islandChains(
  { counter, plinth }: Plan,
  island: PlannedIsland,
  spans: readonly Span[],
  toX: (x: number) => number,
): readonly Chain[] {
  const { x0, x1 } = island.counter;
  const whole = [x0, x1].map(toX);
  const units = [...whole, ...spans.flatMap(({ from, to }) => [from, to]).map(toX)];
  return [
    chainOf('units', 'below', 0, units),
    chainOf('whole', 'below', 1, whole),
    chainOf(
      'heights',
      'left',
      0,
      [0, plinth.top, counter.bottom, counter.top].map((z) => 1000 * z),
    ),
  ];
}
