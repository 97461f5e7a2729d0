import { type Patches, patchAt } from './patches';
import { rectNormal } from './rect-bvh';
import type { Rect } from './types';

/** Detail (a door's frame, a rounded front) may stand this far from the coarse rectangle it belongs to. */
const SAME_PLANE_M = 0.1;
/** A face of another surface that stands farther before one than this does not speak for it. */
const BEFORE_M = 0.005;
/** Coarse rectangles this near to a fine one are looked at. */
const REACH_M = 0.3;
/**
 * A strip narrower than this speaks for its own surface only: a rail a centimeter before a lamp is lit like nothing round it, and
 * all that faces its way would glow with it. Our judgment: over a rail's height and a shelf's edge, under an upstand's.
 */
const NARROW_M = 0.08;

/** For each fine rectangle, the coarse rectangles whose patches speak for it. */
export interface FineToCoarse {
  readonly start: Uint32Array;
  readonly coarse: Uint32Array;
  readonly rects: readonly Rect[];
  readonly patches: Patches;
  /** Per coarse rectangle: low x, y, z, high x, y, z. */
  readonly boxes: Float64Array;
}

/**
 * Candidates by preference: near ones of the same surface in the same plane or facing alike; near ones of any surface facing
 * alike; near ones at a right angle; whatever is near; far ones of the same surface. Black fine rectangles have none; those from index
 * `shadesFrom` on have no surface of their own and take what is near.
 */
export function mapFineToCoarse(
  fine: readonly Rect[],
  coarse: readonly Rect[],
  patches: Patches,
  shadesFrom = fine.length,
): FineToCoarse {
  const boxes = new Float64Array(6 * coarse.length);
  coarse.forEach((rect, i) => {
    boxes.set(boxOf(rect), 6 * i);
  });
  const bySurface = new Map<number, number[]>();
  const lit: number[] = [];
  coarse.forEach((rect, i) => {
    if (rect.surface < 0) return;
    lit.push(i);
    const list = bySurface.get(rect.surface);
    if (list) list.push(i);
    else bySurface.set(rect.surface, [i]);
  });
  const start = new Uint32Array(fine.length + 1);
  const found: number[] = [];
  fine.forEach((rect, f) => {
    if (rect.surface >= 0 || f >= shadesFrom)
      found.push(...candidates(rect, coarse, boxes, bySurface.get(rect.surface) ?? [], lit));
    start[f + 1] = found.length;
  });
  return { start, coarse: Uint32Array.from(found), rects: coarse, patches, boxes };
}

/** The patch that stands for a point on a fine rectangle, -1 on black. Nearest candidate, clamped to its edges. */
export function patchForFine(map: FineToCoarse, fine: number, x: number, y: number, z: number): number {
  const { start, coarse, boxes } = map;
  const from = start[fine]!;
  const to = start[fine + 1]!;
  if (from === to) return -1;
  let best = coarse[from]!;
  if (to - from > 1) {
    let least = Infinity;
    for (let k = from; k < to; k++) {
      const at = 6 * coarse[k]!;
      const dx = outside(x, boxes[at]!, boxes[at + 3]!);
      const dy = outside(y, boxes[at + 1]!, boxes[at + 4]!);
      const dz = outside(z, boxes[at + 2]!, boxes[at + 5]!);
      const d = dx * dx + dy * dy + dz * dz;
      if (d < least) {
        least = d;
        best = coarse[k]!;
      }
    }
  }
  const { origin, u, v } = map.rects[best]!;
  const px = x - origin[0];
  const py = y - origin[1];
  const pz = z - origin[2];
  const fu = (px * u[0] + py * u[1] + pz * u[2]) / (u[0] * u[0] + u[1] * u[1] + u[2] * u[2]);
  const fv = (px * v[0] + py * v[1] + pz * v[2]) / (v[0] * v[0] + v[1] * v[1] + v[2] * v[2]);
  return patchAt(map.patches, best, fu, fv);
}

const outside = (x: number, low: number, high: number): number => (x < low ? low - x : x > high ? x - high : 0);

function candidates(
  rect: Rect,
  coarse: readonly Rect[],
  boxes: Float64Array,
  same: readonly number[],
  lit: readonly number[],
): readonly number[] {
  const { axis, sign } = rectNormal(rect);
  const box = boxOf(rect);
  const within = (i: number): boolean => {
    for (let k = 0; k < 3; k++) {
      if (boxes[6 * i + k]! > box[3 + k]! + REACH_M || boxes[6 * i + 3 + k]! < box[k]! - REACH_M) return false;
    }
    return true;
  };
  const facing = (i: number): number => {
    const normal = rectNormal(coarse[i]!);
    return normal.axis !== axis ? 0 : normal.sign === sign ? 1 : -1;
  };
  // What stands before a face is in its own light: the top edge of a door has nothing of the sun on the counter above it.
  const isOpenTo = (i: number): boolean => (boxes[6 * i + axis]! - box[axis]!) * sign < BEFORE_M;
  const near = same.filter(within);
  const alike = near.filter((i) => facing(i) === 1);
  const inPlane = alike.filter((i) => Math.abs(boxes[6 * i + axis]! - box[axis]!) <= SAME_PLANE_M);
  // Light changes more from place to place than from finish to finish: a neighbour beats a namesake across the room. And the
  // underside of a sill has nothing of the light on its top.
  const around = lit.filter((i) => within(i) && !isNarrow(coarse[i]!));
  const choices = [
    inPlane,
    alike,
    around.filter((i) => facing(i) === 1 && isOpenTo(i)),
    near.filter((i) => facing(i) === 0),
    around.filter((i) => facing(i) === 0),
    near,
    around,
    same,
  ];
  for (const list of choices) if (list.length > 0) return list;
  return lit;
}

const isNarrow = ({ u, v }: Rect): boolean => Math.min(Math.hypot(...u), Math.hypot(...v)) < NARROW_M;

function boxOf(rect: Rect): number[] {
  const far = rect.origin.map((o, k) => o + rect.u[k]! + rect.v[k]!);
  return [...far.map((f, k) => Math.min(f, rect.origin[k]!)), ...far.map((f, k) => Math.max(f, rect.origin[k]!))];
}
