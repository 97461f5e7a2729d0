import type { RunRows, Span } from '../../model/layout/types';
import { baseReach, behindFrontsAcross, type End } from '../plan/run-ends';
import type { Plan } from '../plan/types';
import type { Assembly } from './assembly';
import { FRONT_GAP, FRONT_THICKNESS, type FrontZone } from './front';
import { lampHoles } from './lamps';
import { grained } from './pattern-coordinates';
import { boxAt, type Side, wallSide } from './side';
import { sinkBowls } from './sink';
import { addUnitFronts, GAP_ABOVE, GAP_BELOW } from './unit-fronts';

/** Base units of every run: carcasses, plinths, end panels, fronts and fillers. A corner belongs to one of its two runs. */
export function addBaseUnits(parts: Assembly, plan: Plan): void {
  const all = plan.runs.map((run) => ({ run, side: wallSide(plan, run.wall) }));
  const carcass = plan.baseDepth - FRONT_THICKNESS;
  const z: [number, number] = [plan.plinth.top, plan.counter.bottom];
  for (const { run, side } of all) {
    addCarcass(parts, plan, boxAt(side, { a: baseReach(plan, run, FRONT_THICKNESS), d: [0, carcass], z }));
  }
  const plinth = plan.baseDepth - plan.plinth.recess;
  for (const { run, side } of all) {
    const a = baseReach(plan, run, plan.plinth.recess);
    addPlinth(parts, boxAt(side, { a, d: [0, plinth], z: [0, plan.plinth.top] }), side.along);
  }
  for (const { run, side } of all) for (const panel of run.panels) addEndPanel(parts, plan, side, panel);
  for (const { run, side } of all) {
    const zone = baseZone(plan, side);
    for (const unit of run.base.units) addUnitFronts(parts, plan, zone, unit);
  }
  for (const { run, side } of all) addFillers(parts, plan, run, side);
}

export const baseZone = (plan: Plan, side: Side): FrontZone => ({
  side,
  back: plan.baseDepth - FRONT_THICKNESS,
  z: [plan.plinth.top, plan.counter.bottom],
  surface: 'base-fronts',
  handleEnd: 'top',
});

/** One long box per run; where the sink hangs it is hollow, its bottom open for lamps in the toe kick. */
function addCarcass(parts: Assembly, plan: Plan, [min, max]: ReturnType<typeof boxAt>): void {
  const skin = { surface: 'base-fronts', coordinates: grained(2, parts.newPiece()) } as const;
  parts.hollowBox(skin, min, max, sinkBowls(plan), lampHoles(plan));
}

export function addPlinth(parts: Assembly, [min, max]: ReturnType<typeof boxAt>, along: 0 | 1): void {
  parts.box({ surface: 'plinth', coordinates: grained(along, parts.newPiece()), piece: parts.newPiece() }, min, max);
}

function addEndPanel(parts: Assembly, plan: Plan, side: Side, { from, to }: Span): void {
  const panel = { surface: 'base-fronts', coordinates: grained(2, parts.newPiece()), piece: parts.newPiece() } as const;
  parts.made.push({ kind: 'panel', surface: 'base-fronts', length: plan.baseDepth, width: plan.counter.bottom });
  parts.box(panel, ...boxAt(side, { a: [from, to], d: [0, plan.baseDepth], z: [0, plan.counter.bottom] }));
}

/** Strips flush with the fronts, half a joint from the units; in an inner corner two of them meet. */
function addFillers(parts: Assembly, plan: Plan, run: RunRows, side: Side): void {
  const carcass = plan.baseDepth - FRONT_THICKNESS;
  const z: [number, number] = [plan.plinth.top + GAP_BELOW, plan.counter.bottom - GAP_ABOVE];
  for (const filler of run.base.fillers) {
    const a = [fillerEnd(plan, run, filler, 'from'), fillerEnd(plan, run, filler, 'to')] as const;
    const skin = {
      surface: 'base-fronts',
      coordinates: grained(2, parts.newPiece()),
      piece: parts.newPiece(),
    } as const;
    parts.made.push({ kind: 'filler', surface: 'base-fronts', length: a[1] - a[0], width: z[1] - z[0] });
    parts.box(skin, ...boxAt(side, { a, d: [carcass, plan.baseDepth], z }));
  }
}

/** In a corner that the run owns the strip reaches in to the carcass of the other run. */
function fillerEnd(plan: Plan, run: RunRows, filler: Span, end: End): number {
  const other = end === 'from' ? 'to' : 'from';
  const at = filler[end];
  if (run.base.units.some((unit) => Math.abs(unit[other] - at) < 1e-6)) {
    return end === 'from' ? at + FRONT_GAP / 2 : at - FRONT_GAP / 2;
  }
  return run.ends[end] === 'owns-corner' ? behindFrontsAcross(plan, run, end, FRONT_THICKNESS) : at;
}
