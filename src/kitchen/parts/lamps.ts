import type { LampFace, Solid } from '../../engine/light/types';
import { spreadLamps } from '../../model/layout/spread-lamps';
import type { Span } from '../../model/layout/types';
import { type Fixture, GROUPS } from '../../model/project';
import type { Plan } from '../plan/types';
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

type Panels = Extract<Fixture, { kind: 'panel' }>;

const panelHoles = (plan: Plan, { count, width, length, at }: Panels): Solid[] =>
  (at?.map(([x, y]) => [x / 1000, y / 1000] as const) ?? spreadLamps(count, freeFloor(plan))).map(([x, y]) => {
    const [w, l] = [width / 2000, length / 2000];
    return { min: [x - w, y - l, plan.height - 0.01], max: [x + w, y + l, plan.height + 0.01] };
  });

const freeFloor = ({ width, depth, counter }: Plan) => ({
  x0: counter.depth,
  x1: width,
  y0: 0,
  y1: depth - counter.depth,
});

/** The ceiling lamps' openings: boxes that straddle the ceiling. */
export const ceilingHoles = (plan: Plan): Solid[] =>
  plan.fixtures.flatMap((fixture) => (fixture.kind === 'panel' ? panelHoles(plan, fixture) : []));

/** The opening for the lamp strip in the bottom of a row of wall units, near its front. */
export function stripHole(plan: Plan, row: Span, width: number): Solid {
  const front = plan.wallUnits.depth - RAIL.back - STRIP_CLEARANCE;
  const [min, max] = boxAt(backSide(plan), {
    a: [row.from + STRIP_END, row.to - STRIP_END],
    d: [front - width, front],
    z: [plan.wallUnits.bottom - 0.01, plan.wallUnits.bottom + 0.01],
  });
  return { min, max };
}

/** Every lamp face of the room, facing down; lumens are per face. */
export function lampFaces(plan: Plan): LampFace[] {
  return plan.fixtures.flatMap((fixture): LampFace[] => {
    const group = GROUPS.indexOf(fixture.group);
    if (fixture.kind === 'panel') {
      return panelHoles(plan, fixture).map((hole) => ({
        group,
        rect: faceDown(hole, plan.height),
        lumens: fixture.lumens_each,
      }));
    }
    if (fixture.kind !== 'under-cabinet') return [];
    return plan.wallUnits.rows.map((row) => {
      const hole = stripHole(plan, row, fixture.width / 1000);
      return {
        group,
        rect: faceDown(hole, plan.wallUnits.bottom),
        lumens: fixture.lumens_per_m * (hole.max[0] - hole.min[0]),
      };
    });
  });
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
