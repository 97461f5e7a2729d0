import type { PropMesh, Vec3 } from '../../engine/light/types';
import { SURFACES } from '../../engine/surface';
import { FRONT_THICKNESS } from '../parts/front';
import type { Plan } from '../plan/types';
import { append, emptyMesh, toProp } from './mesh';
import { tube } from './tube';

/** Height and distance from the leaf's free edge, m. Common practice. */
const LEVER = { height: 1.05, fromEdge: 0.06, stand: 0.055, length: 0.12 };

/** Rose and lever on the door of the room. */
export function doorLever(plan: Plan): PropMesh {
  const mesh = emptyMesh();
  const x = plan.door.from + LEVER.fromEdge;
  const at = (out: number, along = 0): Vec3 => [x + along, FRONT_THICKNESS + out, LEVER.height];
  append(mesh, tube([at(0), at(0.007), at(0.009)], [0.026, 0.026, 0.023], 16));
  append(
    mesh,
    tube(
      [at(0.008), at(LEVER.stand - 0.012), at(LEVER.stand, 0.012), at(LEVER.stand, LEVER.length)],
      [0.009, 0.009, 0.009, 0.008],
      10,
    ),
  );
  return toProp(mesh, SURFACES.indexOf('hardware'), 'door lever');
}
