import type { SurfaceId } from '../../engine/surface';
import type { Kitchen } from '../../model/kitchen';
import type { Span } from '../../model/layout/types';
import { baseZone } from '../parts/base-units';
import { islandEnds, seatSide, workingSide } from '../parts/island';
import type { Side } from '../parts/side';
import { addUnitFronts } from '../parts/unit-fronts';
import { waterfallEnds } from '../parts/waterfall';
import { islandShapes } from '../plan/elevation-island';
import type { Piece } from '../plan/elevation-piece';
import { fronts, kindOf } from '../plan/elevation-units';
import { planKitchen } from '../plan/plan-kitchen';
import type { Plan, PlannedIsland } from '../plan/types';
import { islandChains } from './elevation-chains';
import { handleLines, islandBars } from './handle-lines';
import type { Drawing, DrawingId, Shape } from './types';

/** The island or peninsula from its seats and from where one works at it, with its dimensions; none where there is none. */
export function islandsOf(kitchen: Kitchen): readonly Drawing[] {
  const plan = planKitchen(kitchen);
  const { island } = plan;
  if (!island) return [];
  const { inner, panels } = islandEnds(plan, island);
  const ends = panels.map(([from, to]): Span => ({ from, to }));
  return [
    drawn(plan, island, {
      id: 'island-seats',
      side: seatSide(island),
      pieces: islandShapes(plan, island),
      spans: [{ from: inner[0], to: inner[1] }, ...ends],
    }),
    drawn(plan, island, {
      id: 'island-units',
      side: workingSide(island),
      pieces: unitPieces(plan, island),
      spans: [...island.row.units, ...island.row.fillers, ...ends],
    }),
  ];
}

interface Seen {
  readonly id: DrawingId;
  readonly side: Side;
  readonly pieces: readonly Piece[];
  readonly spans: readonly Span[];
}

function drawn(plan: Plan, island: PlannedIsland, { id, side, pieces, spans }: Seen): Drawing {
  const { x0, x1 } = island.counter;
  // One who works at it has the room behind it before one, and its right end on the left.
  const toX = (x: number): number => 1000 * (id === 'island-seats' ? x - x0 : x1 - x);
  return {
    id,
    width: 1000 * (x1 - x0),
    height: 1000 * plan.counter.top,
    shapes: pieces.flatMap((piece) => shapeOf(piece, toX)),
    lines: handleLines(islandBars(plan), side, toX),
    coursings: [],
    chains: islandChains(plan, island, spans, toX),
    levels: [{ what: 'counter', y: 1000 * plan.counter.top }],
    room: null,
  };
}

function shapeOf({ kind, surface, a, z }: Piece, toX: (x: number) => number): readonly Shape[] {
  const [x0, x1] = [toX(a[0]), toX(a[1])].sort((p, q) => p - q) as [number, number];
  if (x1 - x0 < 0.1 || z[1] - z[0] < 1e-4) return [];
  return [{ kind, surface, x: x0, y: 1000 * z[0], width: x1 - x0, height: 1000 * (z[1] - z[0]) }];
}

/** The working side: bodies, plinth, end panels, fronts, fillers, counter and its ends. */
function unitPieces(plan: Plan, island: PlannedIsland): readonly Piece[] {
  const { counter, plinth } = plan;
  const { inner, panels } = islandEnds(plan, island);
  const side = workingSide(island);
  const surface: SurfaceId = 'island-fronts';
  const carcass = [plinth.top, counter.bottom] as const;
  const deep = island.body.y1 - island.body.y0;
  const zone = { ...baseZone(plan, side), back: deep - (plan.baseDepth - baseZone(plan, side).back), surface };
  const edge = 'island-counter';
  return [
    { kind: 'side', surface, a: inner, z: carcass },
    { kind: 'plinth', surface: 'plinth', a: inner, z: [0, plinth.top] },
    ...panels.map((a): Piece => ({ kind: 'panel', surface, a, z: [0, counter.bottom] })),
    ...island.row.fillers.map(({ from, to }): Piece => ({ kind: 'filler', surface, a: [from, to], z: carcass })),
    ...island.row.units.flatMap((unit) =>
      fronts(side, kindOf(unit), (parts) => addUnitFronts(parts, plan, zone, unit)),
    ),
    ...waterfallEnds(plan).map(
      ({ min, max }): Piece => ({ kind: 'counter-edge', surface: edge, a: [min[0], max[0]], z: [min[2], max[2]] }),
    ),
    {
      kind: 'counter-edge',
      surface: edge,
      a: [island.counter.x0, island.counter.x1],
      z: [counter.bottom, counter.top],
    },
  ];
}
