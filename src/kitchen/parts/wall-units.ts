import type { Row, Span } from '../../model/layout/types';
import type { Plan } from '../plan/types';
import type { Assembly, Skin } from './assembly';
import { backSide } from './base-units';
import { FRONT_GAP, FRONT_THICKNESS } from './front';
import { lampHoles } from './lamps';
import { addRail } from './light-rail';
import { grained } from './pattern-coordinates';
import { boxAt } from './side';
import { addUnitFronts, GAP_ABOVE, GAP_BELOW } from './unit-fronts';

/** Wall units of both rows: carcass with slots for lamps, fillers, light rail and fronts. */
export function addWallUnits(parts: Assembly, plan: Plan): void {
  for (const row of plan.wallUnits.rows) {
    addWallCarcass(parts, plan, row, plan.wallUnits.depth - FRONT_THICKNESS, {
      surface: 'wall-fronts',
      coordinates: grained(2, parts.newPiece()),
    });
    addRail(parts, plan, row);
    addWallFronts(parts, plan, row);
  }
}

/** The box of one row, as deep as given, its bottom and top open for lamp strips. */
export function addWallCarcass(parts: Assembly, plan: Plan, row: Span, depth: number, skin: Skin): void {
  const { bottom, top } = plan.wallUnits;
  const [min, max] = boxAt(backSide(plan), {
    a: [row.from, row.to],
    d: [0, depth],
    z: [bottom, top],
  });
  parts.box(skin, min, max, ['z-', 'z+']);
  for (const face of ['z-', 'z+'] as const) parts.face(skin, min, max, face, lampHoles(plan));
}

function addWallFronts(parts: Assembly, plan: Plan, row: Row): void {
  const { bottom, top, depth } = plan.wallUnits;
  const side = backSide(plan);
  const back = depth - FRONT_THICKNESS;
  const { fivePiece } = plan;
  for (const unit of row.units) {
    addUnitFronts(
      parts,
      { side, back, z: [bottom, top], surface: 'wall-fronts', fivePiece, handleEnd: 'bottom' },
      unit,
    );
  }
  for (const filler of row.fillers) {
    const piece = parts.newPiece();
    parts.box(
      { surface: 'wall-fronts', coordinates: grained(2, piece), piece },
      ...boxAt(side, {
        a: [filler.from, filler.to - FRONT_GAP / 2],
        d: [back, depth],
        z: [bottom + GAP_BELOW, top - GAP_ABOVE],
      }),
    );
  }
}
