import type { Solid } from '../../engine/light/types';
import type { Plan } from '../plan/types';
import type { Assembly } from './assembly';
import { grained } from './pattern-coordinates';

/** A plain stool: seat size and thickness, leg, foot rail, seat below the counter top, seat under the counter, m. */
const SEAT = { width: 0.36, depth: 0.34, thickness: 0.032, below: 0.25, clear: 0.07 };
const LEG = 0.03;
const RAIL = { height: 0.025, z: 0.22 };

/** One stool per seat, pushed in as far as the overhang lets it. */
export function addStools(parts: Assembly, plan: Plan): void {
  for (const seat of seats(plan)) addStool(parts, seat);
}

/** The seats alone, as boxes: what of the stools light bounces from. */
export function seats({ island: { counter, body, stools }, counter: { top: counterTop } }: Plan): Solid[] {
  const y1 = counter.y0 + Math.max(0, body.y0 - counter.y0 - SEAT.clear);
  const top = counterTop - SEAT.below;
  return stools.map((x) => ({
    min: [x - SEAT.width / 2, y1 - SEAT.depth, top - SEAT.thickness],
    max: [x + SEAT.width / 2, y1, top],
  }));
}

function addStool(parts: Assembly, { min: [x0, y0, under], max: [x1, y1, top] }: Solid): void {
  const piece = parts.newPiece();
  const skin = (along: 0 | 1 | 2) => ({ surface: 'frame', coordinates: grained(along, piece), piece }) as const;
  parts.box(skin(0), [x0, y0, under], [x1, y1, top]);
  for (const lx of [x0 + 0.01, x1 - 0.01 - LEG]) {
    for (const ly of [y0 + 0.01, y1 - 0.01 - LEG]) parts.box(skin(2), [lx, ly, 0], [lx + LEG, ly + LEG, under]);
  }
  parts.box(skin(0), [x0 + 0.01 + LEG, y0 + 0.01, RAIL.z], [x1 - 0.01 - LEG, y0 + 0.01 + LEG, RAIL.z + RAIL.height]);
}
