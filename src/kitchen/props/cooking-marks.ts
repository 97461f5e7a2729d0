import type { PropMesh, Vec3 } from '../../engine/light/types';
import { SURFACES } from '../../engine/surface';
import { cooktopBox } from '../parts/cooking';
import { OVEN_HEIGHT } from '../parts/tall-units';
import type { Plan } from '../plan/types';
import { append, emptyMesh, type Mesh, toProp } from './mesh';
import { tube } from './tube';

const RING = { width: 0.0022, above: 0.0004, sides: 40 };
const KNOB = { radius: 0.02, depth: 0.022, fromEnd: 0.12, fromTop: 0.05 };

/** The printed rings of the cooking zones, on the glass; in the light colour of the joinery. */
export function zoneMarks(plan: Plan): PropMesh {
  const [min, max] = cooktopBox(plan);
  const mesh = emptyMesh();
  const width = max[0] - min[0];
  const depth = max[1] - min[1];
  const z = max[2] + RING.above;
  for (const [u, v, radius] of [
    [0.24, 0.3, 0.105],
    [0.24, 0.74, 0.08],
    [0.76, 0.3, 0.08],
    [0.76, 0.74, 0.105],
  ] as const) {
    append(mesh, flatRing([min[0] + u * width, min[1] + v * depth, z], radius));
  }
  return toProp(mesh, SURFACES.indexOf('frame'), 'cooking zones');
}

/** Two knobs on the oven's control panel. */
export function ovenKnobs(plan: Plan): PropMesh {
  const mesh = emptyMesh();
  const front = plan.depth - plan.baseDepth;
  const z = plan.counter.bottom + OVEN_HEIGHT - KNOB.fromTop;
  for (const x of [plan.tall.oven.from + KNOB.fromEnd, plan.tall.oven.to - KNOB.fromEnd]) {
    const at = (out: number): Vec3 => [x, front - out, z];
    append(
      mesh,
      tube([at(0), at(KNOB.depth - 0.003), at(KNOB.depth)], [KNOB.radius, KNOB.radius * 0.94, KNOB.radius * 0.84], 16),
    );
  }
  return toProp(mesh, SURFACES.indexOf('appliance'), 'oven knobs');
}

function flatRing([x, y, z]: Vec3, radius: number): Mesh {
  const mesh = emptyMesh();
  for (let k = 0; k < RING.sides; k++) {
    const angle = (2 * Math.PI * k) / RING.sides;
    for (const r of [radius, radius + RING.width]) {
      mesh.positions.push(x + r * Math.cos(angle), y + r * Math.sin(angle), z);
      mesh.normals.push(0, 0, 1);
    }
    const a = 2 * k;
    const b = (2 * k + 2) % (2 * RING.sides);
    mesh.indices.push(a, a + 1, b, a + 1, b + 1, b);
  }
  return mesh;
}
