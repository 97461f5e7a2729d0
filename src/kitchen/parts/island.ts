import type { Plan, PlannedIsland } from '../plan/types';
import type { Assembly } from './assembly';
import { addPlinth } from './base-units';
import { addFront, FRONT_GAP, FRONT_THICKNESS, type FrontZone } from './front';
import { grained } from './pattern-coordinates';
import { boxAt, type Extent, type Side } from './side';
import { addUnitFronts, GAP_ABOVE, GAP_BELOW } from './unit-fronts';
import { waterfallEnds } from './waterfall';

/** About this wide are the panels that close the seat side, m. */
const BACK_PANEL = 0.6;

/** Working side of an island: it faces the back wall. */
export const workingSide = ({ body }: PlannedIsland): Side => ({ along: 0, wall: body.y0, outward: 1 });

export const seatSide = ({ body }: PlannedIsland): Side => ({ along: 0, wall: body.y1, outward: -1 });

/**
 * Carcass between end panels, units on the working side, fixed panels on the seat side, plinth set back on both. At a wall there
 * is no end panel; at a waterfall end the panel stands against the slab.
 */
export function addIsland(parts: Assembly, plan: Plan): void {
  const { island } = plan;
  if (!island) return;
  const z: [number, number] = [plan.plinth.top, plan.counter.bottom];
  const deep = island.body.y1 - island.body.y0;
  const working = workingSide(island);
  const { inner, panels } = islandEnds(plan, island);
  const { recess } = plan.plinth;

  const carcass = boxAt(working, { a: inner, d: [FRONT_THICKNESS, deep - FRONT_THICKNESS], z });
  parts.box({ surface: 'island-fronts', coordinates: grained(2, parts.newPiece()) }, ...carcass);
  addPlinth(parts, boxAt(working, { a: inner, d: [recess, deep - recess], z: [0, plan.plinth.top] }), 0);
  for (const a of panels) {
    const piece = parts.newPiece();
    const skin = { surface: 'island-fronts', coordinates: grained(2, piece), piece } as const;
    parts.made.push({ kind: 'panel', surface: 'island-fronts', length: deep, width: plan.counter.bottom });
    parts.box(skin, ...boxAt(working, { a, d: [0, deep], z: [0, plan.counter.bottom] }));
  }
  const back = deep - FRONT_THICKNESS;
  const zone: FrontZone = { side: working, back, z, surface: 'island-fronts', handleEnd: 'top' };
  for (const unit of island.row.units) addUnitFronts(parts, plan, zone, unit);
  addIslandFillers(parts, plan, island, zone);
  addSeatPanels(parts, plan, island);
}

/** The carcasses along x, and the panels at their ends. */
export function islandEnds(
  plan: Plan,
  island: PlannedIsland,
): { readonly inner: Extent['a']; readonly panels: readonly Extent['a'][] } {
  const { body, panel, joined } = island;
  const falls = waterfallEnds(plan);
  const left = Math.max(...falls.filter(({ max }) => max[0] <= body.x0 + 1e-9).map(({ max }) => max[0]));
  const right = Math.min(...falls.filter(({ min }) => min[0] >= body.x1 - 1e-9).map(({ min }) => min[0]));
  const inner = [
    joined === 'left' ? body.x0 : body.x0 + panel,
    joined === 'right' ? body.x1 : body.x1 - panel,
  ] as const;
  const panels: Extent['a'][] = [];
  if (joined !== 'left') panels.push([Number.isFinite(left) ? left : body.x0, inner[0]]);
  if (joined !== 'right') panels.push([inner[1], Number.isFinite(right) ? right : body.x1]);
  return { inner, panels };
}

/** Strips on the working side; beside a run that ends at a peninsula they reach in to its carcass. */
function addIslandFillers(parts: Assembly, plan: Plan, island: PlannedIsland, { side, back, z }: FrontZone): void {
  for (const { from, to } of island.row.fillers) {
    const piece = parts.newPiece();
    const clear = (at: number, unitEnd: 'from' | 'to'): number =>
      island.row.units.some((unit) => Math.abs(unit[unitEnd] - at) < 1e-6) ? FRONT_GAP / 2 : 0;
    const isBesideRun = (wall: 'left' | 'right'): boolean =>
      plan.runs.some((run) => run.wall === wall && run.ends.from === 'meets') &&
      Math.abs((wall === 'left' ? from : plan.width - to) - plan.baseDepth) < 1e-6;
    const a = [
      isBesideRun('left') ? from - FRONT_THICKNESS : from + clear(from, 'to'),
      isBesideRun('right') ? to + FRONT_THICKNESS : to - clear(to, 'from'),
    ] as const;
    const up = [z[0] + GAP_BELOW, z[1] - GAP_ABOVE] as const;
    parts.made.push({ kind: 'filler', surface: 'island-fronts', length: a[1] - a[0], width: up[1] - up[0] });
    parts.box(
      { surface: 'island-fronts', coordinates: grained(2, piece), piece },
      ...boxAt(side, { a, d: [back, back + FRONT_THICKNESS], z: up }),
    );
  }
}

/** Fixed panels that close the seat side. */
export function addSeatPanels(parts: Assembly, plan: Plan, island: PlannedIsland): void {
  const { inner } = islandEnds(plan, island);
  const back = island.body.y1 - island.body.y0 - FRONT_THICKNESS;
  const count = Math.max(1, Math.round((inner[1] - inner[0]) / BACK_PANEL));
  const width = (inner[1] - inner[0]) / count;
  for (let i = 0; i < count; i++) {
    addFront(parts, seatSide(island), {
      surface: 'island-fronts',
      fivePiece: plan.fronts.style === 'five-piece',
      made: 'panel',
      a: [inner[0] + i * width + FRONT_GAP / 2, inner[0] + (i + 1) * width - FRONT_GAP / 2],
      z: [plan.plinth.top + GAP_BELOW, plan.counter.bottom - GAP_ABOVE],
      back,
      sheet: parts.newPiece(),
    });
  }
}
