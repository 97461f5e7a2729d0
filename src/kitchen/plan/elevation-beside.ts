import type { Wall } from '../../model/kitchen';
import type { RunRows } from '../../model/layout/types';
import { leavesOf } from '../parts/opening-leaves';
import { wallSide } from '../parts/side';
import type { Piece } from './elevation-piece';
import { meetsOtherRow, wallLength } from './run-ends';
import type { Plan } from './types';

/** Openings of a wall: windows and glazed doors with their leaves, the door, an open side. */
export function openingShapes(plan: Plan, wall: Wall): Piece[] {
  const shapes: Piece[] = [];
  for (const opening of plan.openings) {
    if (opening.wall !== wall) continue;
    const { kind, from, to, sill, head } = opening;
    const frame = kind === 'window' ? 'window' : 'door';
    shapes.push({ kind: frame, surface: 'frame', a: [from, to], z: [sill, head] });
    for (const { a, z } of leavesOf(opening)) shapes.push({ kind: frame, surface: null, a, z });
  }
  const { door, openSide } = plan;
  if (wall === 'front') shapes.push({ kind: 'door', surface: 'frame', a: [door.from, door.to], z: [0, door.height] });
  if (openSide?.wall === wall) {
    shapes.push({ kind: 'open-side', surface: null, a: [openSide.from, openSide.to], z: [0, openSide.height] });
  }
  return shapes;
}

/** What stands on the walls beside this one and reaches into its corners, and a peninsula that joins it: seen from its end. */
export function sideShapes(plan: Plan, wall: Wall): Piece[] {
  const beside = plan.runs.flatMap((run): Piece[] => {
    const end = endAt(plan, run, wall);
    return end ? runEnd(plan, run, end) : [];
  });
  const { island, counter, plinth } = plan;
  if (!island || island.joined !== wall) return beside;
  const { body, counter: top } = island;
  return [
    ...beside,
    { kind: 'plinth', surface: 'plinth', a: [body.y0 + plinth.recess, body.y1 - plinth.recess], z: [0, plinth.top] },
    { kind: 'side', surface: 'island-fronts', a: [body.y0, body.y1], z: [plinth.top, counter.bottom] },
    { kind: 'counter-edge', surface: 'island-counter', a: [top.y0, top.y1], z: [counter.bottom, counter.top] },
  ];
}

/** The end of a run that stands at this wall; null where it stands elsewhere. */
function endAt(plan: Plan, run: RunRows, wall: Wall): 'from' | 'to' | null {
  if (run.wall === wall || wallSide(plan, run.wall).along === wallSide(plan, wall).along) return null;
  const end = wall === 'left' || wall === 'front' ? 'from' : 'to';
  if (run.ends[end] === 'meets') return wall === 'back' ? end : null;
  const at = end === 'from' ? 0 : wallLength(plan, run.wall);
  const spans = [run.base, ...run.tall];
  return spans.some((span) => Math.abs(span[end] - at) < 1e-6) ? end : null;
}

function runEnd(plan: Plan, run: RunRows, end: 'from' | 'to'): Piece[] {
  const { counter, plinth, wallUnits, baseDepth, tallTop } = plan;
  const { wall: plane, outward } = wallSide(plan, run.wall);
  const out = (deep: number): readonly [number, number] =>
    outward > 0 ? [plane, plane + deep] : [plane - deep, plane];
  if (run.ends[end] === 'tall') {
    return [
      { kind: 'plinth', surface: 'plinth', a: out(baseDepth - plinth.recess), z: [0, plinth.top] },
      { kind: 'side', surface: 'tall-fronts', a: out(baseDepth), z: [plinth.top, tallTop] },
    ];
  }
  const at = end === 'from' ? 0 : wallLength(plan, run.wall);
  // In a corner rows end where the row across has its fronts: the one that owns the corner is behind them.
  const reach = run.ends[end] === 'meets' ? wallUnits.depth : 0;
  const hasOver = run.over.some(
    (row) => row[end] === at || Math.abs(Math.abs(row[end] - at) - reach) < 1e-6 || meetsOtherRow(plan, run, row, end),
  );
  const over: Piece[] = hasOver
    ? [{ kind: 'side', surface: 'wall-fronts', a: out(wallUnits.depth), z: [wallUnits.bottom, wallUnits.top] }]
    : [];
  return [
    ...over,
    { kind: 'plinth', surface: 'plinth', a: out(baseDepth - plinth.recess), z: [0, plinth.top] },
    { kind: 'side', surface: 'base-fronts', a: out(baseDepth), z: [plinth.top, counter.bottom] },
    { kind: 'counter-edge', surface: 'counter', a: out(counter.depth), z: [counter.bottom, counter.top] },
  ];
}
