import type { Arena } from './arena';
import type { RayFan } from './types';

/** Where a fan lies in a module's memory, in bytes: see trace.as.ts. */
export interface PlacedFan {
  readonly nodes: number;
  readonly slots: number;
  readonly rays: number;
  readonly stack: number;
  readonly hits: number;
  readonly distances: number;
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

/** Memory a fan takes at most. */
export const fanBytes = ({ bvh, groups, hits }: RayFan): number =>
  NODE_BYTES * bvh.leafCount.length +
  SLOT_BYTES * bvh.rectCount +
  8 * groups.length +
  STACK_BYTES +
  16 * hits.length +
  96;

/** Copies the hierarchy and the rays of a fan, and makes room for what they meet. */
export function placeFan(arena: Arena, fan: RayFan): PlacedFan {
  const nodes = arena.place(nodesOf(fan));
  const slots = arena.place(slotsOf(fan));
  return {
    nodes,
    slots,
    rays: arena.place(fan.groups),
    stack: arena.reserve(STACK_BYTES),
    hits: arena.reserve(8 * fan.hits.length),
    distances: arena.reserve(8 * fan.distances.length),
  };
}

function nodesOf({ bvh: { bounds, leafCount, link, splitAxis } }: RayFan): Float32Array {
  const count = leafCount.length;
  const out = new Float32Array((NODE_BYTES / 4) * count);
  const halves = new Uint16Array(out.buffer);
  const words = new Uint32Array(out.buffer);
  const farthest = bounds.reduce((most, one) => (Number.isFinite(one) ? Math.max(most, Math.abs(one)) : most), 0);
  const wider = WIDER_M * Math.max(1, farthest / COORDINATE_M);
  for (let node = 0, at = 0; node < count; node++, at += 8) {
    for (let k = 0; k < 3; k++) {
      out[at + k] = bounds[6 * node + k]! - wider;
      out[at + 3 + k] = bounds[6 * node + 3 + k]! + wider;
    }
    halves[2 * (at + 6)] = leafCount[node]!;
    halves[2 * (at + 6) + 1] = splitAxis[node]!;
    words[at + 7] = link[node]!;
  }
  return out;
}

function slotsOf({ bvh: { rectCount, plane, extent, axis, oneSided, sign } }: RayFan): Float64Array {
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
