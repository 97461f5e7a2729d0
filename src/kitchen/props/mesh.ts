import type { PropMesh, Vec3 } from '../../engine/light/types';

/** Triangles as they are put together; counter-clockwise seen from outside. */
export interface Mesh {
  readonly positions: number[];
  readonly normals: number[];
  readonly indices: number[];
}

export const emptyMesh = (): Mesh => ({ positions: [], normals: [], indices: [] });

/** Adds `part` to `mesh`. */
export function append(mesh: Mesh, part: Mesh): void {
  const first = mesh.positions.length / 3;
  for (const value of part.positions) mesh.positions.push(value);
  for (const value of part.normals) mesh.normals.push(value);
  for (const index of part.indices) mesh.indices.push(first + index);
}

export function toProp(mesh: Mesh, surface: number, name: string): PropMesh {
  return {
    surface,
    name,
    positions: Float32Array.from(mesh.positions),
    normals: Float32Array.from(mesh.normals),
    indices: Uint32Array.from(mesh.indices),
  };
}

export const plus = (a: Vec3, b: Vec3, k = 1): Vec3 => [a[0] + b[0] * k, a[1] + b[1] * k, a[2] + b[2] * k];

export const cross = (a: Vec3, b: Vec3): Vec3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

export const dot = (a: Vec3, b: Vec3): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

export function normalized(a: Vec3): Vec3 {
  const length = Math.hypot(a[0], a[1], a[2]);
  return [a[0] / length, a[1] / length, a[2] / length];
}
