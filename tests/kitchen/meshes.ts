import type { PropMesh, Vec3 } from '../../src/engine/light/types';

type Triangles = Pick<PropMesh, 'positions' | 'normals' | 'indices'>;

export const vertex = (values: ArrayLike<number>, i: number): Vec3 => [
  values[3 * i]!,
  values[3 * i + 1]!,
  values[3 * i + 2]!,
];

function cornersOf({ positions, indices }: Pick<Triangles, 'positions' | 'indices'>, i: number): [Vec3, Vec3, Vec3] {
  return [0, 1, 2].map((k) => vertex(positions, indices[i + k]!)) as [Vec3, Vec3, Vec3];
}

/** The normal of a triangle, twice as long as its area. */
function areaNormal([p, q, r]: readonly [Vec3, Vec3, Vec3]): Vec3 {
  const e = [0, 1, 2].map((k) => q[k]! - p[k]!);
  const f = [0, 1, 2].map((k) => r[k]! - p[k]!);
  return [e[1]! * f[2]! - e[2]! * f[1]!, e[2]! * f[0]! - e[0]! * f[2]!, e[0]! * f[1]! - e[1]! * f[0]!];
}

/** Triangles that look away from the normals of their vertices, or have no area. */
export function turnedTriangles(mesh: Triangles): number {
  let turned = 0;
  for (let i = 0; i < mesh.indices.length; i += 3) {
    const face = areaNormal(cornersOf(mesh, i));
    const n = vertex(mesh.normals, mesh.indices[i]!);
    if (n[0] * face[0] + n[1] * face[1] + n[2] * face[2] <= 0) turned++;
  }
  return turned;
}

/** Signed volume by the divergence theorem: positive when triangles run counter-clockwise from outside. */
export function volume(positions: ArrayLike<number>, indices: ArrayLike<number>): number {
  let total = 0;
  for (let i = 0; i < indices.length; i += 3) {
    const [a, b, c] = [0, 1, 2].map((k) => vertex(positions, indices[i + k]!)) as [Vec3, Vec3, Vec3];
    total +=
      a[0] * (b[1] * c[2] - b[2] * c[1]) + a[1] * (b[2] * c[0] - b[0] * c[2]) + a[2] * (b[0] * c[1] - b[1] * c[0]);
  }
  return total / 6;
}

export function meshArea(mesh: Triangles): number {
  let total = 0;
  for (let i = 0; i < mesh.indices.length; i += 3) total += Math.hypot(...areaNormal(cornersOf(mesh, i))) / 2;
  return total;
}
