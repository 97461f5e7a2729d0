import type { LampFace, Solid } from '../../engine/light/types';
import { GROUPS } from '../../model/project';
import type { Plan, Span } from '../plan/types';
import { type Assembly, faceRect } from './assembly';
import { backSide } from './base-units';
import { plainRect } from './cut-holes';
import { RAIL } from './light-rail';
import { blank } from './pattern-coordinates';
import { boxAt } from './side';

const BLACK = { surface: 'black', coordinates: blank } as const;
/** Strip behind the light rail, and clear of the ends of its row, m. */
const STRIP_CLEARANCE = 0.01;
const STRIP_END = 0.06;

/** The ceiling lamps' openings: boxes that straddle the ceiling. */
export const ceilingHoles = (plan: Plan): Solid[] =>
  plan.lamps.centers.map(([x, y]) => {
    const half = plan.lamps.size / 2;
    return { min: [x - half, y - half, plan.height - 0.01], max: [x + half, y + half, plan.height + 0.01] };
  });

/** The opening for the lamp strip in the bottom of a row of wall units, near its front. */
export function stripHole(plan: Plan, row: Span): Solid {
  const front = plan.wallUnits.depth - RAIL.back - STRIP_CLEARANCE;
  const [min, max] = boxAt(backSide(plan), {
    a: [row.from + STRIP_END, row.to - STRIP_END],
    d: [front - plan.lamps.stripWidth, front],
    z: [plan.wallUnits.bottom - 0.01, plan.wallUnits.bottom + 0.01],
  });
  return { min, max };
}

/** Every lamp face of the room, facing down; lumens are per face. */
export function lampFaces(plan: Plan): LampFace[] {
  const ceiling = ceilingHoles(plan).map((hole) => ({
    group: GROUPS.indexOf('ceiling'),
    rect: faceDown(hole, plan.height),
    lumens: plan.lamps.lumens,
  }));
  const strips = plan.wallUnits.rows.map((row) => {
    const hole = stripHole(plan, row);
    return {
      group: GROUPS.indexOf('under-cabinet'),
      rect: faceDown(hole, plan.wallUnits.bottom),
      lumens: plan.lamps.stripLumensPerM * (hole.max[0] - hole.min[0]),
    };
  });
  return [...ceiling, ...strips];
}

/** The lamp faces as black rectangles: they give light but send none back. */
export function addLampFaces(parts: Assembly, plan: Plan): void {
  for (const { rect } of lampFaces(plan)) {
    parts.rects.push({ ...rect, pattern: { s0: 0, t0: 0, su: 0, tu: 0, sv: 0, tv: 0 }, piece: 0 });
  }
}

function faceDown({ min, max }: Solid, z: number) {
  return plainRect(faceRect(BLACK, [min[0], min[1], z], [max[0], max[1], z], 'z-'));
}
