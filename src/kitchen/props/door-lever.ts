import type { PropMesh, Vec3 } from '../../engine/light/types';
import { SURFACES } from '../../engine/surface';
import { FRONT_THICKNESS } from '../parts/front';
import { LEAF_DEPTH, leavesOf } from '../parts/opening-leaves';
import { pointAt, type Side, wallSide } from '../parts/side';
import type { Plan } from '../plan/types';
import { append, emptyMesh, type Mesh, toProp } from './mesh';
import { tube } from './tube';

/** Height and distance from the leaf's free edge, m. Common practice. */
const LEVER = { height: 1.05, fromEdge: 0.06, stand: 0.055, length: 0.12 };

/** Rose and lever on the door of the room and on every glazed door. */
export function doorLevers(plan: Plan): PropMesh {
  const mesh = emptyMesh();
  addLever(mesh, wallSide(plan, 'front'), plan.door.from + LEVER.fromEdge, FRONT_THICKNESS, 1);
  for (const opening of plan.openings) {
    if (opening.kind !== 'glazed-door') continue;
    const leaf = leavesOf(opening)[Math.floor((opening.leaves - 1) / 2)]!;
    const side = wallSide(plan, opening.wall);
    addLever(mesh, side, leaf.a[1] - LEVER.fromEdge, LEAF_DEPTH - opening.reveal, -1);
  }
  return toProp(mesh, SURFACES.indexOf('hardware'), 'door levers');
}

/** At `a` along a wall, on a leaf whose face stands at `d`; the lever points along the wall by `way`. */
function addLever(mesh: Mesh, side: Side, a: number, d: number, way: 1 | -1): void {
  const at = (out: number, along = 0): Vec3 => pointAt(side, a + way * along, d + out, LEVER.height);
  append(mesh, tube([at(0), at(0.007), at(0.009)], [0.026, 0.026, 0.023], 16));
  append(
    mesh,
    tube(
      [at(0.008), at(LEVER.stand - 0.012), at(LEVER.stand, 0.012), at(LEVER.stand, LEVER.length)],
      [0.009, 0.009, 0.009, 0.008],
      10,
    ),
  );
}
