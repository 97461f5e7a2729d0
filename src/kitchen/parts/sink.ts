import type { Solid } from '../../engine/light/types';
import type { Plan } from '../plan/types';
import type { Assembly } from './assembly';
import { inPlane } from './pattern-coordinates';

/** One bowl, inner size and distance of its back edge from the wall; the rim round it, m. Common practice. */
const BOWL = { length: 0.56, depth: 0.4, height: 0.19, fromWall: 0.12 };
const RIM = { width: 0.018, height: 0.003 };

/** The hollow of the sink, from its bottom to the top of the counter. */
export function bowlBox(plan: Plan): Solid {
  const middle = sinkMiddle(plan);
  return {
    min: [BOWL.fromWall, middle - BOWL.length / 2, plan.counter.top - BOWL.height],
    max: [BOWL.fromWall + BOWL.depth, middle + BOWL.length / 2, plan.counter.top],
  };
}

export const sinkMiddle = (plan: Plan): number => (plan.left.sink.from + plan.left.sink.to) / 2;

/** Bottom, four inner sides and a thin rim lying on the counter. */
export function addSink(parts: Assembly, plan: Plan): void {
  addBowl(parts, bowlBox(plan));
  const { min, max } = bowlBox(plan);
  const skin = { surface: 'sink', coordinates: inPlane(), piece: parts.newPiece() } as const;
  const z: readonly [number, number] = [plan.counter.top, plan.counter.top + RIM.height];
  const w = RIM.width;
  parts.box(skin, [min[0] - w, min[1] - w, z[0]], [max[0] + w, min[1], z[1]]);
  parts.box(skin, [min[0] - w, max[1], z[0]], [max[0] + w, max[1] + w, z[1]]);
  parts.box(skin, [min[0] - w, min[1], z[0]], [min[0], max[1], z[1]]);
  parts.box(skin, [max[0], min[1], z[0]], [max[0] + w, max[1], z[1]]);
}

/** The five inner faces of a bowl, seen from inside it. */
function addBowl(parts: Assembly, { min, max }: Solid): void {
  const skin = { surface: 'sink', coordinates: inPlane(), piece: parts.newPiece() } as const;
  const [x0, y0, z0] = min;
  const [x1, y1, z1] = max;
  parts.face(skin, min, [x1, y1, z0], 'z+');
  parts.face(skin, min, [x0, y1, z1], 'x+');
  parts.face(skin, [x1, y0, z0], max, 'x-');
  parts.face(skin, min, [x1, y0, z1], 'y+');
  parts.face(skin, [x0, y1, z0], max, 'y-');
}
