import type { PropMesh, Vec3 } from '../../engine/light/types';
import { SURFACES } from '../../engine/surface';
import { coarseSeats, SEAT } from '../parts/stools';
import type { Plan } from '../plan/types';
import { lathe, type Turned } from './lathe';
import { append, emptyMesh, type Mesh, plus, toProp } from './mesh';
import { tube } from './tube';

// Measures of stools, m. Common practice, no source.
const SIDES = 40;
const EDGE = 0.012;
const TOP_RINGS = 4;
/** Legs: from the seat's middle along x and y above and at the floor, radii, light taken this many times along them. */
const LEG = { top: 0.095, foot: 0.15, topRadius: 0.0145, footRadius: 0.0095, rings: 7, sides: 8 };
/** The slanted end of a leg stays clear of the floor. */
const CLEAR = 0.002;
/** Foot rails: height at the front and back, and at the sides. */
const RAIL = { front: 0.2, beside: 0.27, radius: 0.0075, sides: 6 };

/** The stools: round seats with rounded edges on four tapered legs that spread, with foot rails. None without stools. */
export function stoolProps(plan: Plan): PropMesh[] {
  const seats = coarseSeats(plan);
  if (seats.length === 0) return [];
  const mesh = emptyMesh();
  for (const { min, max } of seats) addStool(mesh, [(min[0] + max[0]) / 2, (min[1] + max[1]) / 2, min[2]]);
  return [toProp(mesh, SURFACES.indexOf('frame'), 'stools')];
}

function addStool(mesh: Mesh, middle: Vec3): void {
  const [x, y, under] = middle;
  append(mesh, lathe(middle, seatOf(), SIDES));
  /** On the axis of the leg at a corner. */
  const onLeg = (cx: 1 | -1, cy: 1 | -1, z: number): Vec3 => {
    const out = LEG.foot + ((LEG.top - LEG.foot) * z) / under;
    return [x + cx * out, y + cy * out, z];
  };
  for (const cx of [-1, 1] as const) {
    for (const cy of [-1, 1] as const) {
      const share = (i: number): number => i / (LEG.rings - 1);
      const path = Array.from({ length: LEG.rings }, (_, i) => onLeg(cx, cy, CLEAR + (under - CLEAR) * share(i)));
      const radii = path.map((_, i) => LEG.footRadius + (LEG.topRadius - LEG.footRadius) * share(i));
      append(mesh, tube(path, radii, LEG.sides));
    }
  }
  const rail = (p: Vec3, q: Vec3): void => {
    append(mesh, tube([p, plus(p, plus(q, p, -1), 0.5), q], [RAIL.radius, RAIL.radius, RAIL.radius], RAIL.sides));
  };
  for (const c of [-1, 1] as const) {
    rail(onLeg(-1, c, RAIL.front), onLeg(1, c, RAIL.front));
    rail(onLeg(c, -1, RAIL.beside), onLeg(c, 1, RAIL.beside));
  }
}

function seatOf(): readonly (readonly Turned[])[] {
  const radius = SEAT.diameter / 2;
  const top = SEAT.thickness;
  const rounded = [0, 1, 2, 3].map((i): Turned => {
    const angle = (Math.PI / 2) * (i / 3);
    return [radius - EDGE * (1 - Math.cos(angle)), top - EDGE * (1 - Math.sin(angle))];
  });
  // Light is taken at every vertex: rings near enough for the shadow of a counter's edge that falls across the seat.
  const hollowed = Array.from({ length: TOP_RINGS }, (_, i): Turned => {
    const out = (radius - EDGE) * (1 - (i + 1) / (TOP_RINGS + 1));
    return [out, top - 0.002 * (1 - (out / radius) ** 2)];
  });
  return [
    [
      [0, 0],
      [radius - 0.004, 0],
    ],
    [[radius - 0.004, 0], [radius, 0.004], ...rounded, ...hollowed, [0, top - 0.002]],
  ];
}
