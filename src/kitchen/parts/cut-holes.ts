import { cutRect, splitContacts } from '../../engine/light/split-contacts';
import type { FineRect, Rect, Solid } from '../../engine/light/types';

/** A piece of a fine rectangle, with its pattern running on. */
export function cutFineRect(rect: FineRect, u0: number, u1: number, v0: number, v1: number): FineRect {
  const { s0, t0, su, tu, sv, tv } = rect.pattern;
  return {
    ...cutRect(rect, u0, u1, v0, v1),
    pattern: {
      s0: s0 + su * u0 + sv * v0,
      t0: t0 + tu * u0 + tv * v0,
      su: su * (u1 - u0),
      tu: tu * (u1 - u0),
      sv: sv * (v1 - v0),
      tv: tv * (v1 - v0),
    },
    piece: rect.piece,
  };
}

/** The rectangle without the places where it passes through `holes` (boxes that straddle its plane). */
export const cutHoles = (rect: FineRect, holes: readonly Solid[]): FineRect[] =>
  splitContacts([rect], holes, cutFineRect);

/** The rectangles of a hole pattern as plain ones. */
export const plainRect = ({ origin, u, v, surface }: Rect): Rect => ({ origin, u, v, surface });

/** What several cavities leave of a solid. */
export const hollowAll = (solid: Solid, cavities: readonly Solid[]): Solid[] =>
  cavities.reduce<Solid[]>((rest, cavity) => rest.flatMap((part) => hollow(part, cavity)), [solid]);

/** A solid less a cavity inside it: up to six boxes round the cavity, without those of no thickness. */
export function hollow(solid: Solid, cavity: Solid): Solid[] {
  const boxes: Solid[] = [];
  let { min, max } = solid;
  for (const axis of [0, 1, 2] as const) {
    const low = Math.max(cavity.min[axis], min[axis]);
    const high = Math.min(cavity.max[axis], max[axis]);
    if (low >= high) return [solid];
    if (low > min[axis]) boxes.push({ min, max: replaced(max, axis, low) });
    if (high < max[axis]) boxes.push({ min: replaced(min, axis, high), max });
    min = replaced(min, axis, low);
    max = replaced(max, axis, high);
  }
  return boxes;
}

const replaced = (p: Solid['min'], axis: 0 | 1 | 2, value: number): Solid['min'] => [
  axis === 0 ? value : p[0],
  axis === 1 ? value : p[1],
  axis === 2 ? value : p[2],
];
