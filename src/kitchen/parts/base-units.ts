import type { Plan } from '../plan/types';
import type { Assembly } from './assembly';
import { FRONT_GAP, FRONT_THICKNESS } from './front';
import { lampHoles } from './lamps';
import { grained } from './pattern-coordinates';
import { boxAt, type Side } from './side';
import { bowlBox } from './sink';
import { addUnitFronts, type FrontZone, GAP_ABOVE, GAP_BELOW } from './unit-fronts';

export const leftSide: Side = { along: 1, wall: 0, outward: 1 };

export const backSide = (plan: Plan): Side => ({ along: 0, wall: plan.depth, outward: -1 });

/** Base units of both legs: carcasses, plinths, fillers, end panel and fronts. The corner belongs to the back run. */
export function addBaseUnits(parts: Assembly, plan: Plan): void {
  const carcass = plan.baseDepth - FRONT_THICKNESS;
  const z: [number, number] = [plan.plinth.top, plan.counter.bottom];
  const zone = (side: Side): FrontZone => ({
    side,
    back: carcass,
    z,
    surface: 'base-fronts',
    fivePiece: plan.fivePiece,
    handleEnd: 'top',
  });
  const back = backSide(plan);
  const leftFrom = plan.left.end + plan.panel;

  addCarcass(parts, plan, boxAt(back, { a: [0, plan.back.to], d: [0, carcass], z }));
  addCarcass(parts, plan, boxAt(leftSide, { a: [leftFrom, plan.depth - carcass], d: [0, carcass], z }));

  const plinth = plan.baseDepth - plan.plinth.recess;
  addPlinth(parts, boxAt(back, { a: [0, plan.back.to], d: [0, plinth], z: [0, plan.plinth.top] }), 0);
  addPlinth(parts, boxAt(leftSide, { a: [leftFrom, plan.depth - plinth], d: [0, plinth], z: [0, plan.plinth.top] }), 1);

  const panel = { surface: 'base-fronts', coordinates: grained(2, parts.newPiece()), piece: parts.newPiece() } as const;
  parts.box(
    panel,
    ...boxAt(leftSide, { a: [plan.left.end, leftFrom], d: [0, plan.baseDepth], z: [0, plan.counter.bottom] }),
  );

  for (const unit of plan.back.units) addUnitFronts(parts, zone(back), unit);
  for (const unit of plan.left.units) addUnitFronts(parts, zone(leftSide), unit);
  addCornerFillers(parts, plan, carcass);
}

/** One long box per leg; where the sink hangs it is hollow, its bottom open for lamps in the toe kick. */
function addCarcass(parts: Assembly, plan: Plan, [min, max]: ReturnType<typeof boxAt>): void {
  const skin = { surface: 'base-fronts', coordinates: grained(2, parts.newPiece()) } as const;
  parts.hollowBox(skin, min, max, bowlBox(plan), lampHoles(plan));
}

export function addPlinth(parts: Assembly, [min, max]: ReturnType<typeof boxAt>, along: 0 | 1): void {
  parts.box({ surface: 'plinth', coordinates: grained(along, parts.newPiece()), piece: parts.newPiece() }, min, max);
}

/** Two strips that meet in the inner corner, flush with the fronts. */
function addCornerFillers(parts: Assembly, plan: Plan, carcass: number): void {
  const z: [number, number] = [plan.plinth.top + GAP_BELOW, plan.counter.bottom - GAP_ABOVE];
  const skin = () =>
    ({ surface: 'base-fronts', coordinates: grained(2, parts.newPiece()), piece: parts.newPiece() }) as const;
  for (const filler of plan.back.fillers) {
    parts.box(
      skin(),
      ...boxAt(backSide(plan), { a: [carcass, filler.to - FRONT_GAP / 2], d: [carcass, plan.baseDepth], z }),
    );
  }
  for (const filler of plan.left.fillers) {
    parts.box(
      skin(),
      ...boxAt(leftSide, { a: [filler.from + FRONT_GAP / 2, filler.to], d: [carcass, plan.baseDepth], z }),
    );
  }
}
