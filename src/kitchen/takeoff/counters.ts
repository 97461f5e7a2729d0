import type { SurfaceId } from '../../engine/surface';
import type { RunRows } from '../../model/layout/types';
import { areaOfParts } from '../../model/quantity/area-of-parts';
import { cooktopExtent } from '../parts/cooktop';
import { counterDrop } from '../parts/counter-edge';
import { dropStrips } from '../parts/counters';
import { bowlExtents } from '../parts/sink';
import { counterSlabs, freeEdges } from '../parts/slabs';
import { waterfallEnds } from '../parts/waterfall';
import type { Plan } from '../plan/types';
import { grouped, type Part, real, toMm } from './measured-parts';
import type { MeasuredPart, SurfaceTakeoff } from './types';

/**
 * Counters on runs and on the island: their pieces, with the strips of built-up edges and the slabs of waterfall ends as high as
 * a mitred joint needs them, to the top of the counter. Cut-outs are not taken off.
 */
export function measureCounters(plan: Plan): SurfaceTakeoff[] {
  return (['counter', 'island-counter'] as const).flatMap((surface) => {
    const pieces = slabPieces(plan, surface);
    if (pieces.length === 0) return [];
    const parts = [...pieces, ...waterfalls(plan, surface), ...grouped(edgeStrips(plan, surface))];
    const area = areaOfParts(parts);
    return [
      {
        surface,
        area_m2: area,
        gross_m2: area,
        deductions: [],
        parts,
        length_m: finishedEdge(plan, surface),
        corner_joints: surface === 'counter' ? cornerJoints(plan) : waterfallEnds(plan).length,
      },
    ];
  });
}

type Counter = Extract<SurfaceId, 'counter' | 'island-counter'>;

function slabPieces(plan: Plan, surface: Counter): MeasuredPart[] {
  return counterSlabs(plan).flatMap((slab, i): MeasuredPart[] => {
    if (slab.surface !== surface) return [];
    const [min, max] = slab.box;
    const across = slab.length === 0 ? 1 : 0;
    const run = plan.runs[i];
    const cutouts = run ? cutoutsOf(plan, run) : [];
    return [
      {
        kind: surface === 'counter' ? 'leg' : 'island',
        length_mm: toMm(max[slab.length] - min[slab.length]),
        width_mm: toMm(max[across] - min[across]),
        count: 1,
        ...(cutouts.length > 0 && { cutouts_mm: cutouts }),
        ...(run && { along: { line: run.wall, from_mm: toMm(run.counter.from) }, ...overDishwasher(run) }),
      },
    ];
  });
}

/** Sink and cooktop of a run, from the low end of its slab. */
function cutoutsOf(plan: Plan, { wall, counter }: RunRows): (readonly [number, number])[] {
  const spans: (readonly [number, number])[] = [];
  const bowls = bowlExtents(plan);
  if (plan.sink.run === wall) spans.push([bowls[0]!.a[0], bowls[bowls.length - 1]!.a[1]]);
  if (plan.cooktop.run === wall) spans.push(cooktopExtent(plan).a);
  return spans
    .map(([from, to]) => [toMm(from - counter.from), toMm(to - counter.from)] as const)
    .sort((p, q) => p[0] - q[0]);
}

/** A dishwasher, hidden or not, leaves the counter without support, and steams. */
function overDishwasher({ base, counter }: RunRows): Pick<MeasuredPart, 'avoid'> {
  const avoid = base.units.flatMap(({ kind, from, to }) =>
    kind === 'dishwasher'
      ? [{ what: kind, span_mm: [toMm(from - counter.from), toMm(to - counter.from)] } as const]
      : [],
  );
  return avoid.length > 0 ? { avoid } : {};
}

function waterfalls(plan: Plan, surface: Counter): MeasuredPart[] {
  if (surface === 'counter') return [];
  return grouped(
    waterfallEnds(plan).map(({ min, max }) => ({
      kind: 'waterfall',
      length: plan.counter.top,
      width: max[1] - min[1],
    })),
  );
}

/** As wide as the built-up edge is high: the strip meets the slab in a mitre. */
const edgeStrips = (plan: Plan, surface: Counter): Part[] =>
  real(
    freeEdges(plan)
      .filter(({ slab }) => slab.surface === surface)
      .flatMap((edge) =>
        dropStrips(plan, edge).map(({ min, max }) => ({
          kind: 'edge-strip' as const,
          length: edge.normal === 0 ? max[1] - min[1] : max[0] - min[0],
          width: plan.counter.thickness + counterDrop(plan),
        })),
      ),
  );

/** Edges that show; where a waterfall end goes down, its two upright edges in place of the slab's. */
function finishedEdge(plan: Plan, surface: Counter): number {
  const slabs = freeEdges(plan)
    .filter(({ slab }) => slab.surface === surface)
    .reduce((sum, { from, to }) => sum + to - from, 0);
  if (surface === 'counter') return slabs;
  return waterfallEnds(plan).reduce((sum, { min, max }) => sum - (max[1] - min[1]) + 2 * plan.counter.top, slabs);
}

/** In a corner of runs, and of a run with a peninsula, the piece of one butts against the other's. */
const cornerJoints = ({ runs }: Plan): number =>
  runs.reduce((sum, { ends }) => sum + Number(ends.from === 'meets') + Number(ends.to === 'meets'), 0);
