import type { Row, RunRows, Span } from '../../model/layout/types';
import { ENDS, inwards, meetsOtherRow, overReach } from '../plan/run-ends';
import type { Plan } from '../plan/types';
import type { Assembly, Skin } from './assembly';
import { FRONT_GAP, FRONT_THICKNESS } from './front';
import { lampHoles } from './lamps';
import { addRail, endsFree } from './light-rail';
import { grained } from './pattern-coordinates';
import { boxAt, wallSide } from './side';
import { addUnitFronts, GAP_ABOVE, GAP_BELOW } from './unit-fronts';

/** Wall units of every row: carcass with slots for lamps, light rail, fronts and fillers. */
export function addWallUnits(parts: Assembly, plan: Plan): void {
  for (const run of plan.runs) {
    for (const row of run.over) {
      addWallCarcass(parts, plan, run, row, plan.wallUnits.depth - FRONT_THICKNESS, {
        surface: 'wall-fronts',
        coordinates: grained(2, parts.newPiece()),
      });
      for (const end of ENDS) if (endsFree(plan, run, row, end)) makeSide(parts, plan);
      addRail(parts, plan, run, row);
      addWallFronts(parts, plan, run, row);
    }
  }
}

/** A side that shows is made as the fronts are. */
const makeSide = (parts: Assembly, { wallUnits: { bottom, top, depth } }: Plan): number =>
  parts.made.push({ kind: 'panel', surface: 'wall-fronts', length: depth - FRONT_THICKNESS, width: top - bottom });

/** The box of one row, as deep as given, its bottom and top open for lamp strips. */
export function addWallCarcass(parts: Assembly, plan: Plan, run: RunRows, row: Span, depth: number, skin: Skin): void {
  const { bottom, top, depth: toFronts } = plan.wallUnits;
  const a = overReach(plan, run, row, toFronts - depth);
  const [min, max] = boxAt(wallSide(plan, run.wall), { a, d: [0, depth], z: [bottom, top] });
  parts.box(skin, min, max, ['z-', 'z+']);
  for (const face of ['z-', 'z+'] as const) parts.face(skin, min, max, face, lampHoles(plan));
}

function addWallFronts(parts: Assembly, plan: Plan, run: RunRows, row: Row & Span): void {
  const { bottom, top, depth } = plan.wallUnits;
  const side = wallSide(plan, run.wall);
  const back = depth - FRONT_THICKNESS;
  for (const unit of row.units) {
    addUnitFronts(parts, plan, { side, back, z: [bottom, top], surface: 'wall-fronts', handleEnd: 'bottom' }, unit);
  }
  for (const filler of row.fillers) {
    const piece = parts.newPiece();
    const [from, to] = ENDS.map((end) => {
      const other = end === 'from' ? 'to' : 'from';
      const at = filler[end];
      if (row.units.some((unit) => Math.abs(unit[other] - at) < 1e-6)) return at + (inwards(end) * FRONT_GAP) / 2;
      const isInCorner = run.ends[end] === 'owns-corner' && meetsOtherRow(plan, run, row, end);
      return isInCorner ? at - inwards(end) * FRONT_THICKNESS : at;
    });
    const z = [bottom + GAP_BELOW, top - GAP_ABOVE] as const;
    parts.made.push({ kind: 'filler', surface: 'wall-fronts', length: to! - from!, width: z[1] - z[0] });
    parts.box(
      { surface: 'wall-fronts', coordinates: grained(2, piece), piece },
      ...boxAt(side, { a: [from!, to!], d: [back, depth], z }),
    );
  }
}
