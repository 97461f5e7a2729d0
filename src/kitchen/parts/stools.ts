import type { Solid } from '../../engine/light/types';
import type { Plan } from '../plan/types';

/** A stool: diameter and thickness of its round seat, seat below the counter top, seat under the counter, m. Common practice, no source. */
export const SEAT = { diameter: 0.36, thickness: 0.034, below: 0.25, clear: 0.07 };

/** The seats as boxes, one stool per seat, pushed in as far as the overhang lets it: what of the stools light bounces from. */
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
