import type { Vec3 } from '../../engine/light/types';
import type { Plan } from '../plan/types';
import type { Assembly } from './assembly';
import { inPlane } from './pattern-coordinates';
import { boxAt, type Extent, type Side, wallSide } from './side';

/** Plate of the cooktop: depth, clear of the unit's ends, thickness on the counter, distance from the wall, m. Common practice, no source. */
const COOKTOP = { depth: 0.51, end: 0.02, thickness: 0.004, fromWall: 0.06 };

/** The wall that the cooktop's run stands against. */
export const cooktopSide = (plan: Plan): Side => wallSide(plan, plan.cooktop.run);

/** The plate along its run. */
export const cooktopExtent = ({ cooktop: { module }, counter: { top } }: Plan): Extent => ({
  a: [module.from + COOKTOP.end, module.to - COOKTOP.end],
  d: [COOKTOP.fromWall, COOKTOP.fromWall + COOKTOP.depth],
  z: [top, top + COOKTOP.thickness],
});

export const cooktopBox = (plan: Plan): readonly [min: Vec3, max: Vec3] =>
  boxAt(cooktopSide(plan), cooktopExtent(plan));

/** The plate of the cooktop, glass or steel, lying on the counter. */
export function addCooktop(parts: Assembly, plan: Plan): void {
  const [min, max] = cooktopBox(plan);
  parts.box({ surface: 'appliance', coordinates: inPlane(min), piece: parts.newPiece() }, min, max);
}
