import type { Solid, Vec3 } from '../../engine/light/types';
import type { RunRows } from '../../model/layout/types';
import type { Plan, PlannedIsland } from '../plan/types';
import type { EdgeEnd, FreeEdge, Slab } from './counter-edge';
import { boxAt, wallSide } from './side';
import { cutOut, sinkSide } from './sink';

type Box = readonly [min: Vec3, max: Vec3];

/** The slab on a run. In a corner the slab of the run that owns it reaches to the wall, the other butts against it. */
const runSlab = (plan: Plan, run: RunRows): Box =>
  boxAt(wallSide(plan, run.wall), {
    a: [run.counter.from, run.counter.to],
    d: [0, plan.counter.depth],
    z: [plan.counter.bottom, plan.counter.top],
  });

export const islandSlab = ({ counter: { bottom, top } }: Plan, { counter }: PlannedIsland): Box => [
  [counter.x0, counter.y0, bottom],
  [counter.x1, counter.y1, top],
];

/** All slabs: of the runs in their order, of the island. */
export const counterSlabs = (plan: Plan): readonly Slab[] => [
  ...plan.runs.map((run): Slab => {
    const length = run.wall === 'back' ? 0 : 1;
    return { box: runSlab(plan, run), length, surface: 'counter' };
  }),
  ...(plan.island ? [{ box: islandSlab(plan, plan.island), length: 0, surface: 'island-counter' } as const] : []),
];

/** Nearer than this is at, m. */
const NEAR = 1e-3;

type Span = readonly [from: number, to: number];

/** The edges of all slabs that neither wall nor tall unit nor other slab stands against, apart from the gap before an apron. */
export function freeEdges(plan: Plan, slabs: readonly Slab[] = counterSlabs(plan)): readonly FreeEdge[] {
  const bare = slabs.flatMap((slab) => {
    const against = [
      ...bodiesBeside(plan),
      ...slabs.filter((other) => other !== slab).map(({ box: [min, max] }) => ({ min, max })),
    ];
    return SIDES.flatMap(([normal, sign]) => {
      const at = slab.box[sign > 0 ? 1 : 0][normal];
      return freeSpans(slab, normal, sign, at, against).map(([from, to]) => ({ slab, normal, sign, at, from, to }));
    });
  });
  const apron = plan.sink.fit === 'apron' ? boxAt(sinkSide(plan), cutOut(plan)) : null;
  return bare.map((edge) => ({
    ...edge,
    ends: { from: endOf(bare, edge, edge.from, apron), to: endOf(bare, edge, edge.to, apron) },
  }));
}

const SIDES = [
  [0, -1],
  [0, 1],
  [1, -1],
  [1, 1],
] as const;

type BareEdge = Omit<FreeEdge, 'ends'>;

/** Walls and tall units, as boxes. */
function bodiesBeside(plan: Plan): Solid[] {
  const { width, depth, counter } = plan;
  const z = [counter.bottom, counter.top] as const;
  const box = (x0: number, x1: number, y0: number, y1: number): Solid => ({ min: [x0, y0, z[0]], max: [x1, y1, z[1]] });
  const tall = plan.runs.flatMap((run) =>
    run.tall.map((block) => {
      const [min, max] = boxAt(wallSide(plan, run.wall), { a: [block.from, block.to], d: [0, counter.depth], z });
      return { min, max };
    }),
  );
  const walls = [
    box(-1, 0, 0, depth),
    box(width, width + 1, 0, depth),
    box(-1, width + 1, -1, 0),
    box(-1, width + 1, depth, depth + 1),
  ];
  const apron = plan.sink.fit === 'apron' ? [boxAt(sinkSide(plan), cutOut(plan))] : [];
  return [...walls, ...tall, ...apron.map(([min, max]) => ({ min, max }))];
}

function freeSpans(slab: Slab, normal: 0 | 1, sign: 1 | -1, at: number, against: readonly Solid[]): Span[] {
  const other = normal === 0 ? 1 : 0;
  const outside = at + sign * (NEAR / 2);
  let free: Span[] = [[slab.box[0][other], slab.box[1][other]]];
  for (const { min, max } of against) {
    if (outside < min[normal] || outside > max[normal]) continue;
    free = free.flatMap(([from, to]): Span[] => [
      [from, Math.min(to, min[other])],
      [Math.max(from, max[other]), to],
    ]);
    free = free.filter(([from, to]) => to - from > NEAR);
  }
  return free;
}

function endOf(all: readonly BareEdge[], edge: BareEdge, end: number, apron: Box | null): EdgeEnd {
  const meets = all.find(
    (other) =>
      other.normal !== edge.normal &&
      Math.abs(other.at - end) < NEAR &&
      (Math.abs(other.from - edge.at) < NEAR || Math.abs(other.to - edge.at) < NEAR),
  );
  if (meets) return meets.slab === edge.slab ? 'outer' : 'inner';
  const axis = edge.normal === 0 ? 1 : 0;
  const isOpen = apron?.some((corner) => Math.abs(corner[axis] - end) < NEAR);
  return isOpen ? 'open' : 'stop';
}
