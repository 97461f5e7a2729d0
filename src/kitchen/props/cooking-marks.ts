import type { PropMesh, Vec3 } from '../../engine/light/types';
import { SURFACES } from '../../engine/surface';
import { cooktopExtent, cooktopSide } from '../parts/cooktop';
import { pointAt } from '../parts/side';
import type { Plan } from '../plan/types';
import { append, emptyMesh, type Mesh, toProp } from './mesh';

const RING = { width: 0.0022, above: 0.0004, sides: 40 };
/** Marks of the controls near the front edge, m. Common practice, no source. */
const CONTROL = { radius: 0.005, sides: 12, apart: 0.045, count: 5, fromFront: 0.032 };

/** Middles and radii of the cooking zones, as shares of the plate along the run and back from its front, m. */
export const ZONES = [
  { along: 0.24, back: 0.3, radius: 0.105 },
  { along: 0.24, back: 0.74, radius: 0.08 },
  { along: 0.76, back: 0.3, radius: 0.08 },
  { along: 0.76, back: 0.74, radius: 0.105 },
] as const;

/** The printed rings of the cooking zones and their controls, on the glass; in the light color of the joinery. */
export function zoneMarks(plan: Plan): PropMesh {
  const side = cooktopSide(plan);
  const { a, d, z } = cooktopExtent(plan);
  const level = z[1] + RING.above;
  const mesh = emptyMesh();
  for (const { along, back, radius } of ZONES) {
    const at = pointAt(side, a[0] + along * (a[1] - a[0]), d[1] - back * (d[1] - d[0]), level);
    append(mesh, flatRing(at, radius, RING.sides));
  }
  const middle = (a[0] + a[1]) / 2;
  for (let i = 0; i < CONTROL.count; i++) {
    const along = middle + (i - (CONTROL.count - 1) / 2) * CONTROL.apart;
    append(mesh, flatRing(pointAt(side, along, d[1] - CONTROL.fromFront, level), CONTROL.radius, CONTROL.sides));
  }
  return toProp(mesh, SURFACES.indexOf('frame'), 'cooking zones');
}

function flatRing([x, y, z]: Vec3, radius: number, sides: number): Mesh {
  const mesh = emptyMesh();
  for (let k = 0; k < sides; k++) {
    const angle = (2 * Math.PI * k) / sides;
    for (const r of [radius, radius + RING.width]) {
      mesh.positions.push(x + r * Math.cos(angle), y + r * Math.sin(angle), z);
      mesh.normals.push(0, 0, 1);
    }
    const a = 2 * k;
    const b = (2 * k + 2) % (2 * sides);
    mesh.indices.push(a, a + 1, b, a + 1, b + 1, b);
  }
  return mesh;
}
