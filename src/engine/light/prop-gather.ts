import { addDirect, CHANNELS, type DirectLayer, type DirectScene, directScene } from './direct-scene';
import { finishGather, gatherPoint, startGather } from './gather-rows';
import type { Transport } from './transport';
import type { LightRoom, SparseRows } from './types';

/** What each prop vertex receives from the patches: rows of all props one after another. */
export interface PropGather {
  readonly rows: SparseRows;
  /** Per prop: its first row; one more entry at the end. */
  readonly first: Uint32Array;
}

export function buildPropGather(
  room: LightRoom,
  transport: Transport,
  { rays = 144, seed = 11 }: { readonly rays?: number; readonly seed?: number } = {},
): PropGather {
  const gatherer = startGather(room, transport, rays, seed);
  const first = new Uint32Array(room.props.length + 1);
  room.props.forEach(({ positions, normals }, p) => {
    for (let k = 0; k < positions.length; k += 3) {
      gatherPoint(gatherer, positions[k]!, positions[k + 1]!, positions[k + 2]!, ...unit(normals, k));
    }
    first[p + 1] = first[p]! + positions.length / 3;
  });
  return { rows: finishGather(gatherer), first };
}

/** Direct light per prop and vertex: the four groups of a layer (or the first four), lx at level 1. Props shade each other by their boxes. */
export function propDirect(room: LightRoom, transport: Transport, layer?: DirectLayer): Float32Array[] {
  const scene = propScene(transport, layer);
  const firstGroup = layer?.firstGroup ?? 0;
  const sum = new Float64Array(Math.max(firstGroup + CHANNELS, room.groups.length));
  return room.props.map(({ positions, normals }) => {
    const out = new Float32Array((CHANNELS * positions.length) / 3);
    for (let k = 0; k < positions.length; k += 3) {
      sum.fill(0);
      addDirect(scene, positions[k]!, positions[k + 1]!, positions[k + 2]!, ...unit(normals, k), sum);
      for (let g = 0; g < CHANNELS; g++) out[(CHANNELS * k) / 3 + g] = sum[firstGroup + g]!;
    }
    return out;
  });
}

/** Direct light at one vertex of a prop, lx per group at level 1. */
export function directAtVertex(room: LightRoom, transport: Transport, prop: number, vertex: number): Float64Array {
  const { positions, normals } = room.props[prop]!;
  const out = new Float64Array(room.groups.length);
  const k = 3 * vertex;
  addDirect(propScene(transport), positions[k]!, positions[k + 1]!, positions[k + 2]!, ...unit(normals, k), out);
  return out;
}

const propScene = (transport: Transport, layer?: DirectLayer): DirectScene =>
  directScene({ ...transport, shadowBvh: transport.propShadowBvh }, layer);

function unit(normals: Float32Array, k: number): [number, number, number] {
  const x = normals[k]!;
  const y = normals[k + 1]!;
  const z = normals[k + 2]!;
  const length = Math.hypot(x, y, z) || 1;
  return [x / length, y / length, z / length];
}
