import type { Solid } from '../../engine/light/types';
import type { Plan } from '../plan/types';
import type { Assembly } from './assembly';
import { grained } from './pattern-coordinates';

/** A stool: diameter and thickness of its round seat, seat below the counter top, seat under the counter, m. Common practice, no source. */
export const SEAT = { diameter: 0.36, thickness: 0.034, below: 0.25, clear: 0.07 };
/** Legs stand this far in from the square round the seat; bearers under the seat; foot rails, front and back lower than the sides. */
const LEG = { side: 0.026, inset: 0.035 };
const BEARER = 0.035;
const RAIL = { height: 0.022, front: 0.22, beside: 0.3 };

/** One stool per seat, pushed in as far as the overhang lets it: legs, bearers and foot rails; the seat itself is a prop. */
export function addStools(parts: Assembly, plan: Plan): void {
  for (const seat of coarseSeats(plan)) addStool(parts, seat);
}

/** The seats alone, as boxes: what of the stools light bounces from. */
export function coarseSeats({ island, counter: { top: counterTop } }: Plan): Solid[] {
  if (!island) return [];
  const { counter, body, stools } = island;
  const half = SEAT.diameter / 2;
  const y1 = counter.y0 + Math.max(0, body.y0 - counter.y0 - SEAT.clear);
  const top = counterTop - SEAT.below;
  return stools.map((x) => ({
    min: [x - half, y1 - SEAT.diameter, top - SEAT.thickness],
    max: [x + half, y1, top],
  }));
}

function addStool(parts: Assembly, { min: [sx0, sy0, under], max: [sx1, sy1] }: Solid): void {
  const piece = parts.newPiece();
  const skin = (along: 0 | 1 | 2) => ({ surface: 'frame', coordinates: grained(along, piece), piece }) as const;
  const [x0, x1, y0, y1] = [sx0 + LEG.inset, sx1 - LEG.inset, sy0 + LEG.inset, sy1 - LEG.inset];
  const [left, right] = [x0 + LEG.side, x1 - LEG.side];
  const [near, far] = [y0 + LEG.side, y1 - LEG.side];
  for (const x of [[x0, left] as const, [right, x1] as const]) {
    for (const y of [[y0, near] as const, [far, y1] as const]) parts.box(skin(2), [x[0], y[0], 0], [x[1], y[1], under]);
  }
  const level = (y: readonly [number, number], z: number, height: number): void =>
    parts.box(skin(0), [left, y[0], z], [right, y[1], z + height]);
  const beside = (x: readonly [number, number], z: number, height: number): void =>
    parts.box(skin(1), [x[0], near, z], [x[1], far, z + height]);
  for (const y of [[y0, near] as const, [far, y1] as const]) {
    level(y, under - BEARER, BEARER);
    level(y, RAIL.front, RAIL.height);
  }
  for (const x of [[x0, left] as const, [right, x1] as const]) {
    beside(x, under - BEARER, BEARER);
    beside(x, RAIL.beside, RAIL.height);
  }
}
