import type { PropMesh } from '../../engine/light/types';
import { SURFACES } from '../../engine/surface';
import { coarseSeats, SEAT } from '../parts/stools';
import type { Plan } from '../plan/types';
import { lathe, type Turned } from './lathe';
import { append, emptyMesh, toProp } from './mesh';

const SIDES = 28;
const EDGE = 0.012;

/** The round seats of the stools, their edges rounded. None without stools. */
export function seatProps(plan: Plan): PropMesh[] {
  const seats = coarseSeats(plan);
  if (seats.length === 0) return [];
  const mesh = emptyMesh();
  for (const { min, max } of seats)
    append(mesh, lathe([(min[0] + max[0]) / 2, (min[1] + max[1]) / 2, min[2]], seatOf(), SIDES));
  return [toProp(mesh, SURFACES.indexOf('frame'), 'seats')];
}

function seatOf(): readonly (readonly Turned[])[] {
  const radius = SEAT.diameter / 2;
  const top = SEAT.thickness;
  const rounded = [0, 1, 2, 3].map((i): Turned => {
    const angle = (Math.PI / 2) * (i / 3);
    return [radius - EDGE * (1 - Math.cos(angle)), top - EDGE * (1 - Math.sin(angle))];
  });
  return [
    [
      [0, 0],
      [radius - 0.004, 0],
    ],
    [[radius - 0.004, 0], [radius, 0.004], ...rounded, [0.09, top - 0.001], [0, top - 0.002]],
  ];
}
