import type { Vec3 } from '../../engine/light/types';
import type { Mesh } from './mesh';

/** A box between two opposite corners, each face with corners of its own: 24 vertices. */
export function box(p: Vec3, q: Vec3): Mesh {
  const mesh: Mesh = { positions: [], normals: [], indices: [] };
  const low = [0, 1, 2].map((k) => Math.min(p[k]!, q[k]!));
  const high = [0, 1, 2].map((k) => Math.max(p[k]!, q[k]!));
  for (const axis of [0, 1, 2]) {
    for (const sign of [-1, 1]) {
      const [b, c] = sign > 0 ? [(axis + 1) % 3, (axis + 2) % 3] : [(axis + 2) % 3, (axis + 1) % 3];
      const first = mesh.positions.length / 3;
      for (const [u, v] of [
        [0, 0],
        [1, 0],
        [1, 1],
        [0, 1],
      ] as const) {
        const corner = [0, 0, 0];
        corner[axis] = sign > 0 ? high[axis]! : low[axis]!;
        corner[b!] = u ? high[b!]! : low[b!]!;
        corner[c!] = v ? high[c!]! : low[c!]!;
        mesh.positions.push(...corner);
        const normal = [0, 0, 0];
        normal[axis] = sign;
        mesh.normals.push(...normal);
      }
      mesh.indices.push(first, first + 1, first + 2, first, first + 2, first + 3);
    }
  }
  return mesh;
}
