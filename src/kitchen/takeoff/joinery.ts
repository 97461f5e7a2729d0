import { splitContacts } from '../../engine/light/split-contacts';
import { SURFACES } from '../../engine/surface';
import { Assembly } from '../parts/assembly';
import { cutFineRect } from '../parts/cut-holes';
import { addRoomSkirting } from '../parts/door';
import { allSolids, type Drawn } from './drawn';
import { grouped, type Part, real } from './measured-parts';
import type { SurfaceTakeoff } from './types';

/**
 * Windows, glazed doors, the door of the room and skirting, as drawn: the area of their faces in this room, to be painted. Their
 * number is that of leaves, their length that of the skirting; stools, drawn in the same finish, are not counted.
 */
export function measureJoinery(drawn: Drawn): SurfaceTakeoff {
  const { plan, joinery } = drawn;
  const skirting = new Assembly();
  addRoomSkirting(skirting, plan);
  const faces = [...joinery.rects, ...skirting.rects].filter(({ surface }) => surface === SURFACES.indexOf('frame'));
  const area = splitContacts(faces, [...allSolids(drawn), ...skirting.solids], cutFineRect).reduce(
    (sum, { u, v }) => sum + Math.hypot(...u) * Math.hypot(...v),
    0,
  );
  const strips = real(
    skirting.solids.map(({ min, max }): Part => {
      const length = Math.max(max[0] - min[0], max[1] - min[1]);
      return { kind: 'strip', length, width: max[2] - min[2] };
    }),
  );
  const openings = plan.openings.map(
    ({ kind, from, to, sill, head }): Part => ({ kind, length: to - from, width: head - sill }),
  );
  const door: Part = { kind: 'room-door', length: plan.door.to - plan.door.from, width: plan.door.height };
  return {
    surface: 'frame',
    area_m2: area,
    gross_m2: area,
    deductions: [],
    parts: grouped([...openings, door, ...strips]),
    count: plan.openings.reduce((sum, { leaves }) => sum + leaves, 1),
    ...(strips.length > 0 && { length_m: strips.reduce((sum, { length }) => sum + length, 0) }),
  };
}
