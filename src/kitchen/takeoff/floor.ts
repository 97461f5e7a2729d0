import { splitContacts } from '../../engine/light/split-contacts';
import type { Solid } from '../../engine/light/types';
import { SURFACES } from '../../engine/surface';
import type { FloorReach } from '../../model/quantity/assumptions';
import type { Assembly } from '../parts/assembly';
import { cutFineRect } from '../parts/cut-holes';
import { allSolids, type Drawn, furniture } from './drawn';
import { grouped, type Part, real } from './measured-parts';
import { covered, type PlaneField, uncovered } from './plane-area';
import type { Deduction, SurfaceTakeoff } from './types';

/**
 * The floor of the room, under the units or up to plinths, panels and waterfall ends; the next room is not counted. Its length is
 * that of its whole outline, doors and the open side included: a gap round a floating floor follows it.
 */
export function measureFloor(drawn: Drawn, reach: FloorReach): SurfaceTakeoff {
  const { width, depth } = drawn.plan;
  const whole: PlaneField = { a: [0, width], z: [0, depth] };
  const kinds = [
    ['units', drawn.units],
    ['tall-units', drawn.tall],
    ['island', drawn.island],
  ] as const;
  const covers: PlaneField[] = [];
  const deductions: Deduction[] = [];
  for (const [kind, parts] of reach === 'to-plinth' ? kinds : []) {
    const before = covered(whole, covers);
    covers.push(...standing(parts));
    const area_m2 = covered(whole, covers) - before;
    if (area_m2 > 0) deductions.push({ kind, area_m2 });
  }
  const { area, outline } = uncovered(whole, covers);
  return {
    surface: 'floor',
    area_m2: area,
    gross_m2: width * depth,
    deductions,
    parts: grouped([{ kind: 'field', length: width, width: depth }]),
    length_m: outline,
  };
}

/** Where solids stand on the floor. */
const standing = ({ solids }: Assembly): PlaneField[] =>
  solids
    .filter(({ min }) => Math.abs(min[2]) < 1e-6)
    .map(({ min, max }) => ({ a: [min[0], max[0]], z: [min[1], max[1]] }));

/** The whole ceiling of the room. */
export function measureCeiling({ plan: { width, depth } }: Drawn): SurfaceTakeoff {
  const parts = grouped([{ kind: 'field', length: width, width: depth }]);
  const area = width * depth;
  return { surface: 'ceiling', area_m2: area, gross_m2: area, deductions: [], parts };
}

/** Faces of plinths that show, where they stand back. Null without any. */
export function measurePlinths(drawn: Drawn): SurfaceTakeoff | null {
  const strips = real(furniture(drawn).flatMap((parts) => plinthStrips(parts, allSolids(drawn))));
  if (strips.length === 0) return null;
  const area = strips.reduce((sum, { length, width }) => sum + length * width, 0);
  const length_m = strips.reduce((sum, { length }) => sum + length, 0);
  return { surface: 'plinth', area_m2: area, gross_m2: area, deductions: [], parts: grouped(strips), length_m };
}

function plinthStrips({ rects }: Assembly, solids: readonly Solid[]): Part[] {
  const upright = rects.filter(({ surface, u, v }) => surface === SURFACES.indexOf('plinth') && (u[2] || v[2]));
  return splitContacts(upright, solids, cutFineRect).map(({ u, v }) => {
    const [along, up] = u[2] ? [v, u] : [u, v];
    return { kind: 'strip', length: Math.hypot(...along), width: Math.hypot(...up) };
  });
}
