import type { Vec3 } from '../../engine/light/types';
import { HOOD } from '../../model/layout/measures';
import type { Plan } from '../plan/types';
import type { Assembly, Skin } from './assembly';
import { backSide } from './base-units';
import { FRONT_GAP } from './front';
import { lampHoles } from './lamps';
import { inPlane } from './pattern-coordinates';
import { boxAt } from './side';

/** Glass cooktop: depth, clear of the unit's ends, thickness on the counter, distance from the wall, m. */
const COOKTOP = { depth: 0.51, end: 0.02, thickness: 0.004, fromWall: 0.06 };

export function cooktopBox(plan: Plan): readonly [min: Vec3, max: Vec3] {
  const { from, to } = plan.back.cooktop;
  const { top } = plan.counter;
  return boxAt(backSide(plan), {
    a: [from + COOKTOP.end, to - COOKTOP.end],
    d: [COOKTOP.fromWall, COOKTOP.fromWall + COOKTOP.depth],
    z: [top, top + COOKTOP.thickness],
  });
}

/** The glass of the cooktop, lying on the counter. */
export function addCooktop(parts: Assembly, plan: Plan): void {
  const [min, max] = cooktopBox(plan);
  parts.box({ surface: 'appliance', coordinates: inPlane(min), piece: parts.newPiece() }, min, max);
}

/** A flat canopy between the wall units, open for its lamps, and a chimney up to the ceiling. */
export function addHood(parts: Assembly, plan: Plan, skin: Skin): void {
  const side = backSide(plan);
  const { from, to, bottom } = plan.hood;
  const middle = (from + to) / 2;
  const { canopy, chimney } = HOOD;
  const top = bottom + canopy.height / 1000;
  const [min, max] = boxAt(side, {
    a: [from + FRONT_GAP, to - FRONT_GAP],
    d: [0, canopy.depth / 1000],
    z: [bottom, top],
  });
  parts.box(skin, min, max, ['z-']);
  parts.face(skin, min, max, 'z-', lampHoles(plan));
  parts.box(
    skin,
    ...boxAt(side, {
      a: [middle - chimney.width / 2000, middle + chimney.width / 2000],
      d: [0, chimney.depth / 1000],
      z: [top, plan.height],
    }),
  );
}
