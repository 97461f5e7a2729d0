import type { Vec3 } from '../../engine/light/types';
import type { Mesh } from './mesh';

/** A point of a turned profile, from the axis and from the foot, m. */
export type Turned = readonly [radius: number, height: number];

/**
 * A body turned about an upright axis through `foot`. Facets are followed with the outside to their right (from the foot's
 * middle outward, up the outside, down the inside); normals are smooth within a facet.
 */
export function lathe([x, y, z]: Vec3, facets: readonly (readonly Turned[])[], sides: number): Mesh {
  const mesh: Mesh = { positions: [], normals: [], indices: [] };
  for (const facet of facets) {
    const first = mesh.positions.length / 3;
    facet.forEach(([radius, height], i) => {
      const [r0, h0] = facet[Math.max(0, i - 1)]!;
      const [r1, h1] = facet[Math.min(facet.length - 1, i + 1)]!;
      const length = Math.hypot(r1 - r0, h1 - h0);
      // On the axis a smooth body lies level, whichever way its last step slopes.
      const isPole = radius === 0;
      const out = isPole ? 0 : (h1 - h0) / length;
      const up = isPole ? -Math.sign(r1 - r0) : -(r1 - r0) / length;
      for (let k = 0; k < sides; k++) {
        const angle = (2 * Math.PI * k) / sides;
        mesh.positions.push(x + radius * Math.cos(angle), y + radius * Math.sin(angle), z + height);
        mesh.normals.push(out * Math.cos(angle), out * Math.sin(angle), up);
      }
    });
    for (let i = 0; i + 1 < facet.length; i++) {
      for (let k = 0; k < sides; k++) {
        const a = first + i * sides + k;
        const b = first + i * sides + ((k + 1) % sides);
        if (facet[i]![0] > 0) mesh.indices.push(a, b, b + sides);
        if (facet[i + 1]![0] > 0) mesh.indices.push(a, b + sides, a + sides);
      }
    }
  }
  return mesh;
}
