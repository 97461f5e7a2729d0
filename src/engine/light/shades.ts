import type { LightRoom, Rect, Solid, Vec3 } from './types';

/** The faces of a shade have no finish: they are met by rays and never seen. */
const NO_SURFACE = -2;

/**
 * Gathered rays meet only what is this wide both ways, m: light that bounces is known every 20 cm (see nodes.ts), and a node that
 * happens to stand beside a tap would darken the counter as far as the next.
 */
const WIDE_M = 0.2;

/** The boxes that cast shadows: all but those that a lamp face stands in, which would put it out. */
export const shadesThatCast = ({ shades = [], lamps }: Pick<LightRoom, 'shades' | 'lamps'>): readonly Solid[] =>
  shades.filter((box) => !lamps.some(({ rect }) => isInside(box, middleOf(rect))));

/** Those of them that also hide what bounces. */
export const shadesThatHide = (room: Pick<LightRoom, 'shades' | 'lamps'>): readonly Solid[] =>
  shadesThatCast(room).filter(
    ({ min, max }) => [0, 1, 2].filter((k) => max[k as 0 | 1 | 2] - min[k as 0 | 1 | 2] >= WIDE_M).length >= 2,
  );

/** The six faces of each box, fronts outward. */
export function facesOfShades(shades: readonly Solid[]): Rect[] {
  return shades.flatMap(({ min, max }) => {
    const edge = (axis: 0 | 1 | 2): Vec3 =>
      [0, 1, 2].map((k) => (k === axis ? max[axis] - min[axis] : 0)) as unknown as Vec3;
    return ([0, 1, 2] as const).flatMap((axis): Rect[] => {
      const b = ((axis + 1) % 3) as 0 | 1 | 2;
      const c = ((axis + 2) % 3) as 0 | 1 | 2;
      const far = min.map((low, k) => (k === axis ? max[axis] : low)) as unknown as Vec3;
      return [
        { origin: far, u: edge(b), v: edge(c), surface: NO_SURFACE },
        { origin: min, u: edge(c), v: edge(b), surface: NO_SURFACE },
      ];
    });
  });
}

const middleOf = ({ origin, u, v }: Rect): Vec3 => origin.map((x, k) => x + (u[k]! + v[k]!) / 2) as unknown as Vec3;

const isInside = ({ min, max }: Solid, place: Vec3): boolean => place.every((x, k) => x > min[k]! && x < max[k]!);
