import type { Plan } from '../plan/types';
import type { Assembly } from './assembly';
import { addPlinth } from './base-units';
import { addFront, FRONT_GAP, FRONT_THICKNESS } from './front';
import { grained } from './pattern-coordinates';
import { boxAt, type Side } from './side';
import { addUnitFronts, GAP_ABOVE, GAP_BELOW } from './unit-fronts';

/** About this wide are the panels that close the seat side, m. */
const BACK_PANEL = 0.6;

/** Working side: faces the back wall. */
const workingSide = (plan: Plan): Side => ({ along: 0, wall: plan.island.body.y0, outward: 1 });

const seatSide = (plan: Plan): Side => ({ along: 0, wall: plan.island.body.y1, outward: -1 });

/** Carcass between two end panels, units on the working side, fixed panels on the seat side, plinth set back on both. */
export function addIsland(parts: Assembly, plan: Plan): void {
  const { body, panel, row } = plan.island;
  const z: [number, number] = [plan.plinth.top, plan.counter.bottom];
  const inner: [number, number] = [body.x0 + panel, body.x1 - panel];
  const deep = body.y1 - body.y0;
  const working = workingSide(plan);
  const carcass = boxAt(working, { a: inner, d: [FRONT_THICKNESS, deep - FRONT_THICKNESS], z });
  const { recess } = plan.plinth;

  parts.box({ surface: 'island-fronts', coordinates: grained(2, parts.newPiece()) }, ...carcass);
  addPlinth(parts, boxAt(working, { a: inner, d: [recess, deep - recess], z: [0, plan.plinth.top] }), 0);
  for (const a of [[body.x0, inner[0]] as const, [inner[1], body.x1] as const]) {
    const piece = parts.newPiece();
    const skin = { surface: 'island-fronts', coordinates: grained(2, piece), piece } as const;
    parts.box(skin, ...boxAt(working, { a, d: [0, deep], z: [0, plan.counter.bottom] }));
  }
  const fronts = { surface: 'island-fronts', fivePiece: plan.fivePiece } as const;
  const back = deep - FRONT_THICKNESS;
  for (const unit of row.units) {
    addUnitFronts(parts, { ...fronts, side: working, back, z, handleEnd: 'top' }, unit);
  }

  const count = Math.max(1, Math.round((inner[1] - inner[0]) / BACK_PANEL));
  const width = (inner[1] - inner[0]) / count;
  for (let i = 0; i < count; i++) {
    addFront(parts, seatSide(plan), {
      ...fronts,
      a: [inner[0] + i * width + FRONT_GAP / 2, inner[0] + (i + 1) * width - FRONT_GAP / 2],
      z: [z[0] + GAP_BELOW, z[1] - GAP_ABOVE],
      back,
      sheet: parts.newPiece(),
    });
  }
}
