import { rectNormal } from './rect-bvh';
import type { Rect, Vec3 } from './types';

/** Where the patches of one rectangle are cut: fractions of its edges from 0 to 1, rising. */
export interface PatchLines {
  readonly u: Float64Array;
  readonly v: Float64Array;
}

/** A rectangle as a flat box with a front. */
export interface FlatBox {
  readonly axis: 0 | 1 | 2;
  readonly sign: 1 | -1;
  readonly low: Vec3;
  readonly high: Vec3;
}

// How long a patch may be where none is longer than 0.3 m: chosen by what brings the light-check room nearest to its limit
// per patch spent. For other sizes all of it is longer or shorter in proportion.
const USUAL_SIZE_M = 0.3;
/** Per metre from the end of a lamp or window that shines on it. Direct light changes as fast as this distance does. */
const PER_M_FROM_FACE = 0.7;
const LEAST_M = 0.04;
/** At an inner edge, and how much more per metre from it. What a corner gets from itself changes right up to it. */
const AT_INNER_EDGE_M = 0.05;
const PER_M_FROM_EDGE = 1;
/** Rectangles narrower than this send little light: their patches are longer by the root of the ratio. */
const NARROW_M = 0.6;

/** Parts in which the wanted length of patches is summed up along an edge. */
const PARTS = 256;
const IN_FRONT_M = 1e-6;
const TOUCH_M = 2e-3;

/** The box of an axis-aligned rectangle. */
export function flatBoxOf(rect: Rect): FlatBox {
  const far = rect.origin.map((o, k) => o + rect.u[k]! + rect.v[k]!);
  const corner = (pick: (a: number, b: number) => number): Vec3 => [
    pick(rect.origin[0], far[0]!),
    pick(rect.origin[1], far[1]!),
    pick(rect.origin[2], far[2]!),
  ];
  return { ...rectNormal(rect), low: corner(Math.min), high: corner(Math.max) };
}

/**
 * Lines that cut a rectangle (`own`, its box) finely where light changes fast: near the `faces` (lamps, windows) that
 * shine on it and towards the edges at which one of the `others` stands up before it. No patch is longer than `size` m.
 */
export function patchLines(
  rect: Rect,
  own: FlatBox,
  others: readonly FlatBox[],
  faces: readonly FlatBox[],
  size: number,
): PatchLines {
  const shining = faces.filter((face) => reachesBefore(own, face) && reachesBefore(face, own));
  const narrow = Math.max(1, Math.sqrt(NARROW_M / Math.min(Math.hypot(...rect.u), Math.hypot(...rect.v))));
  const along = (edge: Vec3): Float64Array => {
    const k = edge[0] !== 0 ? 0 : edge[1] !== 0 ? 1 : 2;
    const lines = linesAlong(own, k, wantedLength(own, k, others, shining, narrow), size / USUAL_SIZE_M);
    return edge[k] < 0 ? lines.map((_, i) => 1 - lines[lines.length - 1 - i]!) : lines;
  };
  return { u: along(rect.u), v: along(rect.v) };
}

/** How long a patch at a place along axis k may be. */
function wantedLength(
  own: FlatBox,
  k: 0 | 1 | 2,
  others: readonly FlatBox[],
  shining: readonly FlatBox[],
  narrow: number,
): (place: number) => number {
  const ends = shining.map(({ low, high }, i) => ({
    gap: Math.hypot(...[0, 1, 2].filter((m) => m !== k).map((m) => gapAlong(own, shining[i]!, m))),
    low: low[k],
    high: high[k],
  }));
  const [low, high] = [own.low[k], own.high[k]];
  const innerLow = isInner(own, others, k, low, 1);
  const innerHigh = isInner(own, others, k, high, -1);
  return (place) => {
    let length = USUAL_SIZE_M;
    for (const end of ends) {
      const away = Math.hypot(end.gap, Math.min(Math.abs(place - end.low), Math.abs(place - end.high)));
      length = Math.min(length, narrow * Math.max(LEAST_M, PER_M_FROM_FACE * away));
    }
    if (innerLow) length = Math.min(length, narrow * (AT_INNER_EDGE_M + PER_M_FROM_EDGE * (place - low)));
    if (innerHigh) length = Math.min(length, narrow * (AT_INNER_EDGE_M + PER_M_FROM_EDGE * (high - place)));
    return length;
  };
}

/** Fractions between which patches are about as long as wanted. */
function linesAlong(
  { low, high }: FlatBox,
  k: 0 | 1 | 2,
  wanted: (place: number) => number,
  scale: number,
): Float64Array {
  const part = (high[k] - low[k]) / PARTS;
  const patchesTo = new Float64Array(PARTS + 1);
  for (let i = 0; i < PARTS; i++) patchesTo[i + 1] = patchesTo[i]! + part / (scale * wanted(low[k] + (i + 0.5) * part));
  const all = patchesTo[PARTS]!;
  const count = Math.max(1, Math.ceil(all - 1e-6));
  const lines = new Float64Array(count + 1);
  lines[count] = 1;
  let i = 0;
  for (let line = 1; line < count; line++) {
    const at = (all * line) / count;
    while (patchesTo[i + 1]! < at) i++;
    lines[line] = (i + (at - patchesTo[i]!) / (patchesTo[i + 1]! - patchesTo[i]!)) / PARTS;
  }
  return lines;
}

/** Whether some of `other` lies before the front of `own`. */
const reachesBefore = (own: FlatBox, other: FlatBox): boolean =>
  own.sign > 0
    ? other.high[own.axis] > own.low[own.axis] + IN_FRONT_M
    : other.low[own.axis] < own.low[own.axis] - IN_FRONT_M;

const gapAlong = (a: FlatBox, b: FlatBox, k: number): number =>
  Math.max(0, a.low[k]! - b.high[k]!, b.low[k]! - a.high[k]!);

/** Whether a rectangle that looks along axis k in direction `sign` stands up before `own`'s edge at `place`. */
function isInner(own: FlatBox, others: readonly FlatBox[], k: 0 | 1 | 2, place: number, sign: 1 | -1): boolean {
  const m = 3 - k - own.axis;
  return others.some(
    (other) =>
      other.axis === k &&
      other.sign === sign &&
      Math.abs(other.low[k] - place) < TOUCH_M &&
      reachesBefore(own, other) &&
      gapAlong(own, other, own.axis) < TOUCH_M &&
      Math.min(own.high[m]!, other.high[m]!) - Math.max(own.low[m]!, other.low[m]!) > TOUCH_M,
  );
}
