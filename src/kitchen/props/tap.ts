import type { PropMesh, Solid, Vec3 } from '../../engine/light/types';
import { SURFACES } from '../../engine/surface';
import { pointAt } from '../parts/side';
import { bowlExtents, sinkMiddle, sinkSide } from '../parts/sink';
import type { Plan } from '../plan/types';
import { append, emptyMesh, type Mesh, toProp } from './mesh';
import { tube } from './tube';

/** Distance of the tap's axis behind the bowl; arched spout, m. Common practice, no source. */
const BEHIND = 0.045;
const ARCH = { radius: 0.011, rise: 0.29, reach: 0.2, drop: 0.07, steps: 14, sides: 12 };
/** Straight spout: height of the body, where the spout leaves it, how far and how high it reaches. */
const STRAIGHT = { body: 0.2, from: 0.165, radius: 0.0115, reach: 0.215, rise: 0.028, drop: 0.022 };

/** The foot of an arched spout: radius of its body, how high it is; radius of the body of a straight one. */
const BODY = { arch: 0.019, height: 0.09, straight: 0.021 };

/** Measures of the taps, m. */
export const TAP = { BEHIND, ARCH, STRAIGHT, BODY } as const;

/** A place by the tap: along the run, out from the wall, above the counter. */
type At = (a: number, d: number, z: number) => Vec3;

/** A mixer tap behind the bowls: base, body, arched or straight spout, lever; and the waste of each bowl. */
export function tapProp(plan: Plan): PropMesh {
  const side = sinkSide(plan);
  const bowls = bowlExtents(plan);
  const at = tapFoot(plan);
  const mesh = emptyMesh();
  upright(mesh, at, [0, 0.004, 0.006], [0.027, 0.027, 0.024]);
  if (plan.sink.tap === 'arch') addArch(mesh, at);
  else addStraight(mesh, at);
  for (const { a, d, z } of bowls) {
    const waste: At = (x, y, h) => pointAt(side, (a[0] + a[1]) / 2 + x, (d[0] + d[1]) / 2 + y, z[0] + h);
    upright(mesh, waste, [0.0005, 0.003, 0.004], [0.045, 0.045, 0.041]);
  }
  return toProp(mesh, SURFACES.indexOf('tap'), 'tap');
}

/** The body of the tap as a box. */
export function tapShade(plan: Plan): Solid {
  const at = tapFoot(plan);
  const [x, y, z] = at(0, 0, 0);
  const half = 0.017;
  return { min: [x - half, y - half, z], max: [x + half, y + half, at(0, 0, 0.19)[2]] };
}

/** From the middle of the tap's foot on the counter. */
function tapFoot(plan: Plan): At {
  const middle = sinkMiddle(plan);
  const back = bowlExtents(plan)[0]!.d[0] - BEHIND;
  return (a, d, z) => pointAt(sinkSide(plan), middle + a, back + d, plan.counter.top + z);
}

/** Up, over in a half circle towards the bowl, a little down; the lever at the side. */
function addArch(mesh: Mesh, at: At): void {
  upright(mesh, at, [0.006, BODY.height, BODY.height + 0.004], [BODY.arch, BODY.arch, 0.016]);
  const r = ARCH.reach / 2;
  const base = BODY.height;
  const top = base + ARCH.rise - r;
  const path = [at(0, 0, base)];
  for (let i = 0; i <= ARCH.steps; i++) {
    const angle = Math.PI * (1 - i / ARCH.steps);
    path.push(at(0, r + r * Math.cos(angle), top + r * Math.sin(angle)));
  }
  path.push(at(0, ARCH.reach, top - ARCH.drop));
  append(mesh, tube(path, Array(path.length).fill(ARCH.radius), ARCH.sides));
  append(mesh, tube([at(0.017, 0, 0.062), at(0.045, 0, 0.062), at(0.12, 0.012, 0.085)], [0.009, 0.0075, 0.005], 8));
}

/** A spout that leaves the body near its top and rises a little; the lever on top. */
function addStraight(mesh: Mesh, at: At): void {
  const { body, from, radius, reach, rise, drop } = STRAIGHT;
  upright(mesh, at, [0.006, body / 2, body, body + 0.004], [BODY.straight, BODY.straight, BODY.straight, 0.018]);
  const spout = [at(0, 0.012, from), at(0, reach / 2, from + rise / 2), at(0, reach - 0.015, from + rise)];
  spout.push(at(0, reach, from + rise - 0.006), at(0, reach, from + rise - drop));
  append(mesh, tube(spout, Array(spout.length).fill(radius), 12));
  upright(mesh, at, [body + 0.006, body + 0.026, body + 0.03], [0.0195, 0.0195, 0.016]);
  append(
    mesh,
    tube([at(0.01, 0, body + 0.02), at(0.06, 0, body + 0.03), at(0.125, 0, body + 0.05)], [0.007, 0.006, 0.0045], 8),
  );
}

function upright(mesh: Mesh, at: At, heights: readonly number[], radii: readonly number[]): void {
  append(
    mesh,
    tube(
      heights.map((h) => at(0, 0, h)),
      radii,
      16,
    ),
  );
}
