import type { RectBvh } from '../rect-bvh';
import type { Arena } from './arena';
import type { RayFan, Targets } from './types';

// Where hierarchies and rays lie in a module's memory, in bytes: see trace.as.ts.

export interface PlacedBvh {
  readonly nodes: number;
  readonly slots: number;
  readonly stack: number;
  /** Of the slot that blocked a shadow ray last. */
  readonly last: number;
}

export interface PlacedFan {
  readonly rays: number;
  readonly hits: number;
  readonly distances: number;
}

export interface PlacedTargets {
  readonly targets: number;
  readonly blocked: number;
}

const NODE_BYTES = 32;
const SLOT_BYTES = 64;
const STACK_BYTES = 512;

/**
 * Boxes grow by this much where they become float32, m, so that rounding never hides what is in them: three roundings of coordinates
 * up to `COORDINATE_M` are together less.
 */
const WIDER_M = 1e-5;
const COORDINATE_M = 20;

/** Starts a call that sends rays at a hierarchy. */
export function beginBvh(arena: Arena, bvh: RectBvh): PlacedBvh {
  const bytes = NODE_BYTES * bvh.leafCount.length + SLOT_BYTES * bvh.rectCount + STACK_BYTES + 64;
  return arena.beginWith(bvh, bytes, () => ({
    nodes: arena.place(nodesOf(bvh)),
    slots: arena.place(slotsOf(bvh)),
    stack: arena.reserve(STACK_BYTES),
    last: arena.place(Uint32Array.of(bvh.rectCount)),
  }));
}

export const alsoFan = (arena: Arena, fan: RayFan): PlacedFan =>
  arena.also(fan, 8 * (fan.groups.length + fan.hits.length + fan.distances.length) + 48, () => ({
    rays: arena.place(fan.groups),
    hits: arena.reserve(8 * fan.hits.length),
    distances: arena.reserve(8 * fan.distances.length),
  }));

export const alsoTargets = (arena: Arena, targets: Targets): PlacedTargets =>
  arena.also(targets, 8 * targets.groups.length + 4 * targets.blocked.length + 32, () => ({
    targets: arena.place(targets.groups),
    blocked: arena.reserve(4 * targets.blocked.length),
  }));

function nodesOf({ bounds, leafCount, link, splitAxis }: RectBvh): Float32Array {
  const count = leafCount.length;
  const out = new Float32Array((NODE_BYTES / 4) * count);
  const halves = new Uint16Array(out.buffer);
  const words = new Uint32Array(out.buffer);
  const farthest = bounds.reduce((most, one) => (Number.isFinite(one) ? Math.max(most, Math.abs(one)) : most), 0);
  const wider = WIDER_M * Math.max(1, farthest / COORDINATE_M);
  // The box round nothing is inside out, which sorting its sides would undo; what is not a number is met by no ray.
  const side = (bound: number, by: number): number => (Number.isFinite(bound) ? bound + by : Number.NaN);
  for (let node = 0, at = 0; node < count; node++, at += 8) {
    for (let k = 0; k < 3; k++) {
      out[at + k] = side(bounds[6 * node + k]!, -wider);
      out[at + 3 + k] = side(bounds[6 * node + 3 + k]!, wider);
    }
    halves[2 * (at + 6)] = leafCount[node]!;
    halves[2 * (at + 6) + 1] = splitAxis[node]!;
    words[at + 7] = link[node]!;
  }
  return out;
}

function slotsOf({ rectCount, plane, extent, axis, oneSided, sign }: RectBvh): Float64Array {
  const out = new Float64Array((SLOT_BYTES / 8) * rectCount);
  const words = new Uint32Array(out.buffer);
  for (let slot = 0, at = 0; slot < rectCount; slot++, at += 8) {
    out[at] = plane[slot]!;
    out.set(extent.subarray(4 * slot, 4 * slot + 4), at + 1);
    words[2 * (at + 5)] = axis[slot]!;
    words[2 * (at + 5) + 1] = oneSided[slot]!;
    out[at + 6] = sign[slot]!;
  }
  return out;
}
