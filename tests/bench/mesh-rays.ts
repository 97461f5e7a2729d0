import { BufferAttribute, BufferGeometry, DoubleSide, Ray } from 'three';
import { MeshBVH } from 'three-mesh-bvh';
import type { RectBvh } from '../../src/engine/light/rect-bvh';
import { traceNearest } from '../../src/engine/light/rect-trace';
import type { Rect } from '../../src/engine/light/types';
import { mulberry32 } from '../../src/engine/random';

/** Rays from points just in front of rectangles to all sides: origin and direction, six numbers a ray. */
export function raysFrom(rects: readonly Rect[], count: number, seed: number): Float64Array {
  const random = mulberry32(seed);
  const rays = new Float64Array(6 * count);
  for (let i = 0; i < count; i++) {
    const { origin, u, v } = rects[Math.floor(random() * rects.length)]!;
    const normal = [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]];
    const length = Math.hypot(...normal);
    const [fu, fv, z, turn] = [random(), random(), 2 * random() - 1, 2 * Math.PI * random()];
    const around = Math.sqrt(1 - z * z);
    const ball = [around * Math.cos(turn), around * Math.sin(turn), z];
    const direction = normal.map((n, k) => n / length + ball[k]!);
    for (let k = 0; k < 3; k++) {
      rays[6 * i + k] = origin[k]! + u[k]! * fu + v[k]! * fv + (1e-4 * normal[k]!) / length;
      rays[6 * i + 3 + k] = direction[k]! / Math.hypot(...direction);
    }
  }
  return rays;
}

/** Distances by the engine's hierarchy of rectangles; Infinity for none. */
export function distancesByRects(bvh: RectBvh, rays: Float64Array): Float64Array {
  const out = new Float64Array(rays.length / 6);
  for (let i = 0; i < out.length; i++) {
    const at = 6 * i;
    const slot = traceNearest(
      bvh,
      rays[at]!,
      rays[at + 1]!,
      rays[at + 2]!,
      rays[at + 3]!,
      rays[at + 4]!,
      rays[at + 5]!,
      Infinity,
    );
    out[i] = slot < 0 ? Infinity : bvh.hitDistance[0]!;
  }
  return out;
}

/** The rectangles as two triangles each, in three-mesh-bvh's hierarchy. */
export function meshOf(rects: readonly Rect[]): MeshBVH {
  const positions = new Float32Array(12 * rects.length);
  const index = new Uint32Array(6 * rects.length);
  rects.forEach(({ origin, u, v }, r) => {
    for (let k = 0; k < 3; k++) {
      positions[12 * r + k] = origin[k]!;
      positions[12 * r + 3 + k] = origin[k]! + u[k]!;
      positions[12 * r + 6 + k] = origin[k]! + u[k]! + v[k]!;
      positions[12 * r + 9 + k] = origin[k]! + v[k]!;
    }
    index.set(
      [0, 1, 2, 0, 2, 3].map((corner) => 4 * r + corner),
      6 * r,
    );
  });
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(positions, 3));
  geometry.setIndex(new BufferAttribute(index, 1));
  return new MeshBVH(geometry);
}

/** Distances of the same rays by three-mesh-bvh. */
export function distancesByMesh(mesh: MeshBVH, rays: Float64Array): Float64Array {
  const ray = new Ray();
  const out = new Float64Array(rays.length / 6);
  for (let i = 0; i < out.length; i++) {
    ray.origin.fromArray(rays, 6 * i);
    ray.direction.fromArray(rays, 6 * i + 3);
    out[i] = mesh.raycastFirst(ray, DoubleSide)?.distance ?? Infinity;
  }
  return out;
}
