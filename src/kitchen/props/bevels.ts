import type { PropMesh, Vec3 } from '../../engine/light/types';
import { SURFACES, type SurfaceId } from '../../engine/surface';
import type { Recess } from '../parts/assembly';
import { pointAt } from '../parts/side';
import { emptyMesh, type Mesh, normalized, plus, toProp } from './mesh';

/** Width and height of the bevel in the corner between a frame's step and its panel, m. Common practice, no source. */
const BEVEL = 0.005;
/** Light is taken at every vertex: along a bevel at most this far apart, m. */
const STEP = 0.15;
const APPLIANCES: readonly SurfaceId[] = ['appliance'];

interface Out {
  readonly mesh: Mesh;
  readonly pattern: number[];
}

/** The bevels that lead from frames down to their panels, mitred in the corners; the grain runs on. One mesh per finish. */
export function bevelProps(recesses: readonly Recess[]): PropMesh[] {
  const meshes = new Map<SurfaceId, Out>();
  for (const recess of recesses) {
    if (APPLIANCES.includes(recess.surface)) continue;
    const out = meshes.get(recess.surface) ?? { mesh: emptyMesh(), pattern: [] };
    meshes.set(recess.surface, out);
    addBevels(out, recess);
  }
  return [...meshes].map(([surface, { mesh, pattern }]) => ({
    ...toProp(mesh, SURFACES.indexOf(surface), `${surface} bevels`),
    pattern: Float32Array.from(pattern),
    isNarrow: true,
  }));
}

/** A place on a recess: along its side, up, out from its panel. */
type At = readonly [a: number, z: number, out: number];

function addBevels(out: Out, recess: Recess): void {
  const { a, z } = recess.extent;
  const corners: readonly (readonly [number, number])[] = [
    [a[0], z[0]],
    [a[1], z[0]],
    [a[1], z[1]],
    [a[0], z[1]],
  ];
  const inward: readonly (readonly [number, number])[] = [
    [1, 1],
    [-1, 1],
    [-1, -1],
    [1, -1],
  ];
  corners.forEach(([a0, z0], i) => {
    const next = (i + 1) % 4;
    const [a1, z1] = corners[next]!;
    const foot = (k: number): At => [corners[k]![0] + BEVEL * inward[k]![0], corners[k]![1] + BEVEL * inward[k]![1], 0];
    addStrip(out, recess, [[a0, z0, BEVEL], [a1, z1, BEVEL], foot(next), foot(i)]);
  });
}

/** One bevel from its upper edge (the first two places) to its foot (the last two, against the way). */
function addStrip({ mesh, pattern }: Out, recess: Recess, [p, q, r, s]: readonly [At, At, At, At]): void {
  const { side, extent, coordinates } = recess;
  const at = ([a, z, out]: At): Vec3 => pointAt(side, a, extent.d[0] + out, z);
  const isLevel = p[1] === q[1];
  // Inward along the panel and out from it, in equal parts.
  const inwardA = isLevel ? 0 : Math.sign(s[0] - p[0]);
  const inwardZ = isLevel ? Math.sign(s[1] - p[1]) : 0;
  const normal = normalized(plus(at([inwardA, inwardZ, 1]), at([0, 0, 0]), -1));
  const count = Math.ceil(Math.hypot(q[0] - p[0], q[1] - p[1]) / STEP);
  const first = mesh.positions.length / 3;
  for (let i = 0; i <= count; i++) {
    for (const [from, to] of [
      [p, q],
      [s, r],
    ] as const) {
      const place = [0, 1, 2].map((k) => from[k]! + ((to[k]! - from[k]!) * i) / count) as unknown as At;
      const point = at(place);
      mesh.positions.push(...point);
      mesh.normals.push(...normal);
      pattern.push(...coordinates(point, side.along === 0 ? 1 : 0, side.outward));
    }
  }
  // Which way round it is seen from the room depends on the side.
  const isFlipped = (side.along === 0) === side.outward > 0;
  for (let i = 0; i < count; i++) {
    const [b, c] = [first + 2 * i, first + 2 * i + 2];
    if (isFlipped) mesh.indices.push(b, b + 1, c, b + 1, c + 1, c);
    else mesh.indices.push(b, c, b + 1, b + 1, c, c + 1);
  }
}
