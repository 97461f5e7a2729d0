import type { TallBlock, TallUnit } from '../../model/layout/types';
import type { Plan } from '../plan/types';
import type { Assembly } from './assembly';
import { addPlinth } from './base-units';
import { addFridge } from './fridge';
import { FRONT_GAP, FRONT_THICKNESS, type FrontPlace, type FrontZone } from './front';
import { addOven, OVEN_HEIGHT } from './oven';
import { grained } from './pattern-coordinates';
import { boxAt, type Extent, type Side, wallSide } from './side';
import { addDoor, addUnitFronts, GAP_ABOVE, GAP_BELOW } from './unit-fronts';

/** Every block of tall units: side panels, carcass, plinth, fillers, and the fronts of each unit. */
export function addTallUnits(parts: Assembly, plan: Plan): void {
  for (const run of plan.runs) {
    const side = wallSide(plan, run.wall);
    for (const block of run.tall) {
      addBody(parts, plan, side, block);
      for (const unit of block.units) addTallFronts(parts, plan, side, block, unit);
    }
  }
}

/** The carcasses of a block, between its side panels. */
function tallCarcass({ from, to, panels }: TallBlock): Extent['a'] {
  const low = panels.filter((panel) => panel.from === from).map((panel) => panel.to);
  const high = panels.filter((panel) => panel.to === to).map((panel) => panel.from);
  return [Math.max(from, ...low), Math.min(to, ...high)];
}

/** The niche of an oven at working height. */
export const ovenNiche = ({ counter }: Plan, { from, to }: TallUnit): FrontPlace => ({
  a: [from, to],
  z: [counter.bottom, counter.bottom + OVEN_HEIGHT],
});

function addBody(parts: Assembly, plan: Plan, side: Side, block: TallBlock): void {
  const top = plan.tallTop;
  const back = plan.baseDepth - FRONT_THICKNESS;
  const make = (kind: 'panel' | 'filler', length: number, width: number): void => {
    parts.made.push({ kind, surface: 'tall-fronts', length, width });
  };
  const box = (extent: Extent): void => {
    const piece = parts.newPiece();
    parts.box({ surface: 'tall-fronts', coordinates: grained(2, piece), piece }, ...boxAt(side, extent));
  };
  for (const { from, to } of block.panels) {
    make('panel', plan.counter.depth, top);
    box({ a: [from, to], d: [0, plan.counter.depth], z: [0, top] });
  }
  const a = tallCarcass(block);
  box({ a, d: [0, back], z: [plan.plinth.top, top] });
  const plinth = plan.baseDepth - plan.plinth.recess;
  addPlinth(parts, boxAt(side, { a, d: [0, plinth], z: [0, plan.plinth.top] }), side.along);
  for (const { from, to } of block.fillers) {
    const clear = (at: number, unitEnd: 'from' | 'to'): number =>
      block.units.some((unit) => Math.abs(unit[unitEnd] - at) < 1e-6) ? FRONT_GAP / 2 : 0;
    const a = [from + clear(from, 'to'), to - clear(to, 'from')] as const;
    const z = [plan.plinth.top + GAP_BELOW, top - GAP_ABOVE] as const;
    make('filler', a[1] - a[0], z[1] - z[0]);
    box({ a, d: [back, plan.baseDepth], z });
  }
}

/** Doors hang so that they open away from the middle of the run: the outermost unit's at its outer side. */
export function addTallFronts(parts: Assembly, plan: Plan, side: Side, block: TallBlock, unit: TallUnit): void {
  const low: FrontZone = {
    side,
    back: plan.baseDepth - FRONT_THICKNESS,
    z: [plan.plinth.top, plan.counter.bottom],
    surface: 'tall-fronts',
    handleEnd: 'top',
  };
  const high: FrontZone = { ...low, handleEnd: 'bottom' };
  const a = [unit.from, unit.to] as const;
  const isOutermost = block.end === 'to' ? unit === block.units.at(-1) : unit === block.units[0];
  const handle = (block.end === 'to') === isOutermost ? 'low' : 'high';
  switch (unit.kind) {
    case 'oven': {
      const niche = ovenNiche(plan, unit);
      addUnitFronts(parts, plan, low, { kind: 'drawers', from: unit.from, to: unit.to, handle: 'low' });
      addOven(parts, plan, low, niche);
      addDoor(parts, plan, high, { a, z: [niche.z[1] + FRONT_GAP, plan.tallTop] }, handle);
      return;
    }
    case 'fridge':
      addFridge(parts, plan, { ...low, z: [low.z[0], plan.tallTop] }, { a, z: [low.z[0], plan.tallTop] }, handle);
      return;
    case 'larder': {
      const sheet = parts.newPiece();
      addDoor(parts, plan, low, { a, z: low.z }, handle, sheet);
      addDoor(parts, plan, high, { a, z: [plan.counter.bottom, plan.tallTop] }, handle, sheet);
    }
  }
}
