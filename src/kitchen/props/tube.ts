import type { Vec3 } from '../../engine/light/types';
import { cross, dot, type Mesh, normalized, plus } from './mesh';

/**
 * A round tube along a path, with a radius (m) per path point, smooth round its girth and along it, closed by flat caps.
 * Consecutive path points must differ. The ring is carried along without twist (parallel transport).
 */
export function tube(path: readonly Vec3[], radii: readonly number[], sides: number): Mesh {
  const mesh: Mesh = { positions: [], normals: [], indices: [] };
  const last = path.length - 1;
  const tangents = path.map((_, i) => normalized(plus(path[Math.min(last, i + 1)]!, path[Math.max(0, i - 1)]!, -1)));
  let across = anyAcross(tangents[0]!);
  for (let i = 0; i <= last; i++) {
    const tangent = tangents[i]!;
    across = normalized(plus(across, tangent, -dot(across, tangent)));
    addRing(mesh, path[i]!, radii[i]!, across, cross(tangent, across), slope(path, radii, i), tangent, sides);
  }
  for (let i = 0; i < last; i++) {
    for (let k = 0; k < sides; k++) {
      const a = i * sides + k;
      const b = i * sides + ((k + 1) % sides);
      mesh.indices.push(a, b, a + sides, b, b + sides, a + sides);
    }
  }
  addCap(mesh, 0, path[0]!, plus([0, 0, 0], tangents[0]!, -1), sides, true);
  addCap(mesh, last * sides, path[last]!, tangents[last]!, sides, false);
  return mesh;
}

/** How fast the radius grows along the path there: tilts the normals. */
function slope(path: readonly Vec3[], radii: readonly number[], i: number): number {
  const from = Math.max(0, i - 1);
  const to = Math.min(path.length - 1, i + 1);
  const along = plus(path[to]!, path[from]!, -1);
  return (radii[to]! - radii[from]!) / Math.hypot(along[0], along[1], along[2]);
}

function addRing(
  mesh: Mesh,
  center: Vec3,
  radius: number,
  e: Vec3,
  f: Vec3,
  growth: number,
  tangent: Vec3,
  sides: number,
): void {
  for (let k = 0; k < sides; k++) {
    const angle = (2 * Math.PI * k) / sides;
    const out = plus(plus([0, 0, 0], e, Math.cos(angle)), f, Math.sin(angle));
    mesh.positions.push(...plus(center, out, radius));
    mesh.normals.push(...normalized(plus(out, tangent, -growth)));
  }
}

function addCap(mesh: Mesh, ring: number, center: Vec3, normal: Vec3, sides: number, start: boolean): void {
  const first = mesh.positions.length / 3;
  for (let k = 0; k < sides; k++) {
    const at = (ring + k) * 3;
    mesh.positions.push(mesh.positions[at]!, mesh.positions[at + 1]!, mesh.positions[at + 2]!);
    mesh.normals.push(...normal);
  }
  mesh.positions.push(...center);
  mesh.normals.push(...normal);
  const middle = first + sides;
  for (let k = 0; k < sides; k++) {
    const a = first + k;
    const b = first + ((k + 1) % sides);
    mesh.indices.push(middle, start ? b : a, start ? a : b);
  }
}

function anyAcross(tangent: Vec3): Vec3 {
  const helper: Vec3 = Math.abs(tangent[2]) < 0.9 ? [0, 0, 1] : [1, 0, 0];
  return normalized(cross(tangent, helper));
}
