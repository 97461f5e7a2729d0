import { addDirect, CHANNELS, type DirectLayer, directScene } from './direct-scene';
import { directionThrough, lensTowards } from './lens';
import type { NodeGather } from './nodes';
import { castRay } from './ray';
import { rectNormal } from './rect-bvh';
import { solveGroup } from './solve';
import type { Transport } from './transport';
import type { LightRoom, Vec3, Viewpoint } from './types';

/** Reflectances lighting designers assume before finishes are chosen: common practice, no source. */
const REFERENCE_REFLECTANCE: Readonly<Record<string, number>> = { ceiling: 0.8, wall: 0.5, floor: 0.2 };
const REFERENCE_OTHER = 0.4;

const COLUMNS = 32;
const ROWS = 20;
const ASPECT = 1.6;

/**
 * Radiosity of every patch in a room of standard reflectances, one value a patch, per group at level 1, lx; dark in groups outside
 * the layer. It depends on the room and its lamps and on no finish.
 */
export function referenceRadiosity(room: LightRoom, transport: Transport, anew?: DirectLayer): Float32Array[] {
  const reflectance = Float32Array.from(room.surfaces, (name) => REFERENCE_REFLECTANCE[name] ?? REFERENCE_OTHER);
  const isWanted = (group: number) => !anew || (group >= anew.firstGroup && group < anew.firstGroup + CHANNELS);
  return transport.direct.map((direct, group) =>
    isWanted(group) ? solveGroup(transport, reflectance, direct, { bands: 1 }) : new Float32Array(direct.length),
  );
}

/**
 * Illuminance of what one sees from the given viewpoints in a room of standard reflectances (`referenceRadiosity`): one row of points per group at
 * level 1, lx. The exposure is taken from it, which so depends on the room and its lamps and not on the finishes compared. With a
 * layer only its groups are filled. Sun that falls on a place directly is left out: one exposes for the room, and a patch of sun
 * may burn out.
 */
export function referenceView(
  room: LightRoom,
  transport: Transport,
  nodes: NodeGather,
  radiosity: readonly Float32Array[],
  viewpoints: readonly Viewpoint[],
  anew?: DirectLayer,
): Float64Array[] {
  const scene = directScene(transport, anew);
  const seen: number[][] = radiosity.map(() => []);
  const direct = new Float64Array(room.groups.length);
  const suns = new Set(transport.windows.map(({ sunGroup }) => sunGroup));
  for (const viewpoint of viewpoints) {
    for (const direction of directionsOf(viewpoint)) {
      const hit = castRay(transport.fineBvh, viewpoint.eye, direction);
      const rect = hit ? room.fine[hit.rect]! : null;
      if (!hit || !rect || rect.surface < 0) continue;
      const { axis, sign } = rectNormal(rect);
      const at = (k: 0 | 1 | 2) => rect.origin[k] + rect.u[k] * hit.u + rect.v[k] * hit.v;
      const normal = [0, 1, 2].map((k) => (k === axis ? sign : 0)) as unknown as Vec3;
      direct.fill(0);
      addDirect(scene, at(0), at(1), at(2), ...normal, direct);
      for (const sun of suns) direct[sun] = 0;
      const row = nearestNode(nodes, hit.rect, hit.u, hit.v);
      for (const [group, b] of radiosity.entries()) seen[group]!.push(direct[group]! + rowTimes(nodes, row, b));
    }
  }
  return seen.map((values) => Float64Array.from(values));
}

function* directionsOf({ eye, target, fov_deg }: Viewpoint): Generator<Vec3> {
  const lens = lensTowards(eye, target);
  const high = Math.tan((fov_deg * Math.PI) / 360);
  for (let j = 0; j < ROWS; j++) {
    for (let i = 0; i < COLUMNS; i++) {
      const x = (2 * (i + 0.5)) / COLUMNS - 1;
      const y = 1 - (2 * (j + 0.5)) / ROWS;
      yield directionThrough(lens, x * high * ASPECT, y * high);
    }
  }
}

function nearestNode({ atlas, first }: NodeGather, rect: number, u: number, v: number): number {
  const nu = atlas.blocks[4 * rect + 2]!;
  const nv = atlas.blocks[4 * rect + 3]!;
  return first[rect]! + Math.round(v * (nv - 1)) * nu + Math.round(u * (nu - 1));
}

function rowTimes({ rows }: NodeGather, row: number, radiosity: Float32Array): number {
  let sum = 0;
  for (let e = rows.start[row]!; e < rows.start[row + 1]!; e++) sum += rows.value[e]! * radiosity[rows.column[e]!]!;
  return sum;
}
