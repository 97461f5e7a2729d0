import type { PropMesh, Vec3 } from '../../engine/light/types';
import { SURFACES } from '../../engine/surface';
import { bowlBox, sinkMiddle } from '../parts/sink';
import type { Plan } from '../plan/types';
import { append, emptyMesh, toProp } from './mesh';
import { tube } from './tube';

/** Distance of the tap's axis behind the bowl; arched spout, m. */
const BEHIND = 0.045;
const SPOUT = { radius: 0.011, rise: 0.29, reach: 0.2, drop: 0.07, steps: 14, sides: 12 };

/** A mixer tap behind the bowl: base and body, arched spout over the bowl, lever at the side; and the bowl's waste. */
export function tapProp(plan: Plan): PropMesh {
  const bowl = bowlBox(plan);
  const x = bowl.min[0] - BEHIND;
  const y = sinkMiddle(plan);
  const z = plan.counter.top;
  const mesh = emptyMesh();
  const upright = (heights: readonly number[], radii: readonly number[], at: Vec3 = [x, y, z]): void =>
    append(
      mesh,
      tube(
        heights.map((h): Vec3 => [at[0], at[1], at[2] + h]),
        radii,
        16,
      ),
    );
  upright([0, 0.004, 0.006], [0.027, 0.027, 0.024]);
  upright([0.006, 0.09, 0.094], [0.019, 0.019, 0.016]);
  append(mesh, tube(spoutPath(x, y, z + 0.09), Array(SPOUT.steps + 3).fill(SPOUT.radius), SPOUT.sides));
  append(
    mesh,
    tube(
      [
        [x, y + 0.017, z + 0.062],
        [x, y + 0.045, z + 0.062],
        [x + 0.012, y + 0.12, z + 0.085],
      ],
      [0.009, 0.0075, 0.005],
      8,
    ),
  );
  const middle: Vec3 = [(bowl.min[0] + bowl.max[0]) / 2, y, bowl.min[2]];
  upright([0.0005, 0.003, 0.004], [0.045, 0.045, 0.041], middle);
  return toProp(mesh, SURFACES.indexOf('tap'), 'tap');
}

/** Up, over in a half circle towards the bowl, a little down. */
function spoutPath(x: number, y: number, z: number): Vec3[] {
  const r = SPOUT.reach / 2;
  const top = z + SPOUT.rise - r;
  const path: Vec3[] = [[x, y, z]];
  for (let i = 0; i <= SPOUT.steps; i++) {
    const angle = Math.PI * (1 - i / SPOUT.steps);
    path.push([x + r + r * Math.cos(angle), y, top + r * Math.sin(angle)]);
  }
  path.push([x + SPOUT.reach, y, top - SPOUT.drop]);
  return path;
}
