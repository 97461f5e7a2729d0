import type { Rect } from './types';

/**
 * A bounding volume hierarchy over axis-aligned one-sided rectangles, as flat arrays. Rectangles are stored in leaf
 * order ("slots"); `rect` leads back to the caller's index. A rectangle on axis a spans axes b = a + 1 and c = a + 2
 * (mod 3). Lengths in m.
 */
export interface RectBvh {
  readonly rectCount: number;
  /** Per slot: index of the caller's rectangle. */
  readonly rect: Uint32Array;
  readonly axis: Uint8Array;
  /** +1 or -1: which way along the axis the front looks. */
  readonly sign: Int8Array;
  readonly plane: Float64Array;
  /** Per slot: low b, high b, low c, high c, widened by a micrometre so that neighbours leave no crack. */
  readonly extent: Float64Array;
  /** Per slot: axis of the u edge, and of the v edge; fraction along u = (p[axis] - start) * inverse. */
  readonly uAxis: Uint8Array;
  readonly vAxis: Uint8Array;
  readonly uStart: Float64Array;
  readonly vStart: Float64Array;
  readonly uInverse: Float64Array;
  readonly vInverse: Float64Array;
  /**
   * Per slot: 1 where a ray is stopped only by the front, and not within `SKIN_M` of it: what starts inside a closed box, or on its
   * skin, then gets out.
   */
  readonly oneSided: Uint8Array;
  /** Per node: low x, y, z, high x, y, z. */
  readonly bounds: Float64Array;
  /** Per node: slots in a leaf, 0 for an inner node. */
  readonly leafCount: Uint16Array;
  /** Per node: first slot of a leaf, or the second child (the first child is the next node). */
  readonly link: Uint32Array;
  readonly splitAxis: Uint8Array;
  /** Distance of the last nearest hit. */
  readonly hitDistance: Float64Array;
  /** Slot that blocked the last shadow ray (the next one is likely blocked by the same), and shadow rays so far. */
  readonly lastBlocker: Float64Array;
}

const CRACK_M = 1e-6;
/** A point this near to a one-sided face counts as on it, m: props are rounder than the boxes that stand for them. */
export const SKIN_M = 0.002;
const LEAF_SIZE = 3;
const BINS = 12;

/**
 * Builds the hierarchy by the surface area heuristic. Rectangles must be axis-aligned; those from index `oneSidedFrom` on are
 * one-sided.
 */
export function buildRectBvh(rects: readonly Rect[], oneSidedFrom = rects.length): RectBvh {
  const n = rects.length;
  const bvh: RectBvh = {
    rectCount: n,
    rect: Uint32Array.from(rects, (_, i) => i),
    axis: new Uint8Array(n),
    sign: new Int8Array(n),
    plane: new Float64Array(n),
    extent: new Float64Array(4 * n),
    uAxis: new Uint8Array(n),
    vAxis: new Uint8Array(n),
    uStart: new Float64Array(n),
    vStart: new Float64Array(n),
    uInverse: new Float64Array(n),
    vInverse: new Float64Array(n),
    oneSided: new Uint8Array(n),
    bounds: new Float64Array(12 * Math.max(1, n)),
    leafCount: new Uint16Array(2 * Math.max(1, n)),
    link: new Uint32Array(2 * Math.max(1, n)),
    splitAxis: new Uint8Array(2 * Math.max(1, n)),
    hitDistance: new Float64Array(1),
    lastBlocker: Float64Array.of(-1, 0),
  };
  const boxes = new Float64Array(6 * n);
  for (let i = 0; i < n; i++) writeBox(rects[i]!, boxes, 6 * i);
  buildNodes(bvh, boxes);
  for (let slot = 0; slot < n; slot++) {
    writeSlot(bvh, slot, rects[bvh.rect[slot]!]!);
    bvh.oneSided[slot] = bvh.rect[slot]! >= oneSidedFrom ? 1 : 0;
  }
  return bvh;
}

/** Axis of the longest component of an edge. */
function edgeAxis(edge: readonly [number, number, number]): 0 | 1 | 2 {
  const x = Math.abs(edge[0]);
  const y = Math.abs(edge[1]);
  const z = Math.abs(edge[2]);
  return x >= y && x >= z ? 0 : y >= z ? 1 : 2;
}

/** Axis and direction of a rectangle's front normal. */
export function rectNormal(rect: Rect): { readonly axis: 0 | 1 | 2; readonly sign: 1 | -1 } {
  const axis = (3 - edgeAxis(rect.u) - edgeAxis(rect.v)) as 0 | 1 | 2;
  const b = (axis + 1) % 3;
  const c = (axis + 2) % 3;
  return { axis, sign: rect.u[b]! * rect.v[c]! - rect.u[c]! * rect.v[b]! > 0 ? 1 : -1 };
}

function writeBox(rect: Rect, boxes: Float64Array, at: number): void {
  const { axis } = rectNormal(rect);
  for (let k = 0; k < 3; k++) {
    const a = rect.origin[k]!;
    const b = a + rect.u[k]! + rect.v[k]!;
    const widen = k === axis ? 0 : CRACK_M;
    boxes[at + k] = k === axis ? a : Math.min(a, b) - widen;
    boxes[at + 3 + k] = k === axis ? a : Math.max(a, b) + widen;
  }
}

function writeSlot(bvh: RectBvh, slot: number, rect: Rect): void {
  const { axis, sign } = rectNormal(rect);
  const box = new Float64Array(6);
  writeBox(rect, box, 0);
  const b = (axis + 1) % 3;
  const c = (axis + 2) % 3;
  bvh.axis[slot] = axis;
  bvh.sign[slot] = sign;
  bvh.plane[slot] = rect.origin[axis];
  bvh.extent.set([box[b]!, box[3 + b]!, box[c]!, box[3 + c]!], 4 * slot);
  const ua = edgeAxis(rect.u);
  const va = edgeAxis(rect.v);
  bvh.uAxis[slot] = ua;
  bvh.vAxis[slot] = va;
  bvh.uStart[slot] = rect.origin[ua];
  bvh.vStart[slot] = rect.origin[va];
  bvh.uInverse[slot] = 1 / rect.u[ua];
  bvh.vInverse[slot] = 1 / rect.v[va];
}

function buildNodes(bvh: RectBvh, boxes: Float64Array): void {
  let next = 0;
  const build = (from: number, to: number): number => {
    const node = next++;
    boundSlots(bvh, boxes, from, to, node);
    const middle = to - from > LEAF_SIZE ? partition(bvh, boxes, from, to, node) : -1;
    if (middle < 0) {
      bvh.leafCount[node] = to - from;
      bvh.link[node] = from;
    } else {
      build(from, middle);
      bvh.link[node] = build(middle, to);
    }
    return node;
  };
  build(0, bvh.rectCount);
}

function boundSlots(bvh: RectBvh, boxes: Float64Array, from: number, to: number, node: number): void {
  const at = 6 * node;
  for (let k = 0; k < 3; k++) {
    let low = Infinity;
    let high = -Infinity;
    for (let s = from; s < to; s++) {
      const box = 6 * bvh.rect[s]!;
      low = Math.min(low, boxes[box + k]!);
      high = Math.max(high, boxes[box + 3 + k]!);
    }
    bvh.bounds[at + k] = low;
    bvh.bounds[at + 3 + k] = high;
  }
}

/** Orders slots from-to by the cheapest binned split; gives the first slot of the second half, -1 to stay a leaf. */
function partition(bvh: RectBvh, boxes: Float64Array, from: number, to: number, node: number): number {
  let bestCost = Infinity;
  let bestAxis = 0;
  let bestLine = 0;
  for (let k = 0; k < 3; k++) {
    let low = Infinity;
    let high = -Infinity;
    for (let s = from; s < to; s++) {
      const middle = center(boxes, bvh.rect[s]!, k);
      low = Math.min(low, middle);
      high = Math.max(high, middle);
    }
    if (high - low < 1e-9) continue;
    for (let bin = 1; bin < BINS; bin++) {
      const line = low + ((high - low) * bin) / BINS;
      const cost = splitCost(bvh, boxes, from, to, k, line);
      if (cost < bestCost) {
        bestCost = cost;
        bestAxis = k;
        bestLine = line;
      }
    }
  }
  if (bestCost === Infinity) return -1;
  bvh.splitAxis[node] = bestAxis;
  let middle = from;
  for (let s = from; s < to; s++) {
    const rect = bvh.rect[s]!;
    if (center(boxes, rect, bestAxis) < bestLine) {
      bvh.rect[s] = bvh.rect[middle]!;
      bvh.rect[middle++] = rect;
    }
  }
  return middle;
}

const center = (boxes: Float64Array, rect: number, axis: number): number =>
  boxes[6 * rect + axis]! + boxes[6 * rect + 3 + axis]!;

const sideBoxes = new Float64Array(12);

function splitCost(bvh: RectBvh, boxes: Float64Array, from: number, to: number, axis: number, line: number): number {
  sideBoxes.fill(Infinity);
  sideBoxes.fill(-Infinity, 3, 6);
  sideBoxes.fill(-Infinity, 9, 12);
  let first = 0;
  for (let s = from; s < to; s++) {
    const rect = bvh.rect[s]!;
    const inFirst = center(boxes, rect, axis) < line;
    const side = inFirst ? 0 : 6;
    if (inFirst) first++;
    for (let k = 0; k < 3; k++) {
      sideBoxes[side + k] = Math.min(sideBoxes[side + k]!, boxes[6 * rect + k]!);
      sideBoxes[side + 3 + k] = Math.max(sideBoxes[side + 3 + k]!, boxes[6 * rect + 3 + k]!);
    }
  }
  const second = to - from - first;
  return first === 0 || second === 0 ? Infinity : first * halfArea(0) + second * halfArea(6);
}

function halfArea(side: number): number {
  const x = sideBoxes[side + 3]! - sideBoxes[side]!;
  const y = sideBoxes[side + 4]! - sideBoxes[side + 1]!;
  const z = sideBoxes[side + 5]! - sideBoxes[side + 2]!;
  return x * y + y * z + z * x;
}
