import { flatBoxOf, patchLines } from './patch-lines';
import { rectNormal } from './rect-bvh';
import type { Rect } from './types';

/** Coarse rectangles cut into patches by a grid of uneven lines; the patches of a rectangle stand together, u fastest. */
export interface Patches {
  readonly count: number;
  /** Per patch: coarse rectangle, surface (-1 black), area in m2, centre (x, y, z) in m. */
  readonly rect: Uint32Array;
  readonly surface: Int32Array;
  readonly area: Float64Array;
  readonly center: Float64Array;
  /** Per patch: where it begins along u, how far it goes, and the same along v, as fractions of its rectangle's edges. */
  readonly span: Float64Array;
  /** Per coarse rectangle: first patch, patches along u and along v, normal axis and direction. */
  readonly first: Uint32Array;
  readonly alongU: Uint16Array;
  readonly alongV: Uint16Array;
  readonly axis: Uint8Array;
  readonly sign: Int8Array;
  /** Ends of the patches along u of rectangle 0, along v of rectangle 0, along u of rectangle 1 and so on. */
  readonly ends: Float64Array;
  /** Per edge (u, v of each rectangle): its first end; and for each 64th of it, the patch at the 64th's beginning. */
  readonly firstEnd: Uint32Array;
  readonly start: Uint8Array;
}

const BUCKETS = 64;

/**
 * Cuts rectangles into patches no longer than `size` m on either edge, finer towards `faces` that shine on them (lamps,
 * windows) and towards inner edges.
 */
export function layoutPatches(rects: readonly Rect[], size: number, faces: readonly Rect[] = []): Patches {
  const boxes = rects.map(flatBoxOf);
  const shining = faces.map(flatBoxOf);
  const lines = rects.map((rect, r) => patchLines(rect, boxes[r]!, boxes, shining, size));
  const first = new Uint32Array(rects.length);
  const firstEnd = new Uint32Array(2 * rects.length + 1);
  let count = 0;
  lines.forEach(({ u, v }, r) => {
    first[r] = count;
    count += (u.length - 1) * (v.length - 1);
    firstEnd[2 * r + 1] = firstEnd[2 * r]! + u.length - 1;
    firstEnd[2 * r + 2] = firstEnd[2 * r + 1]! + v.length - 1;
  });
  const normals = rects.map(rectNormal);
  const patches: Patches = {
    count,
    rect: new Uint32Array(count),
    surface: new Int32Array(count),
    area: new Float64Array(count),
    center: new Float64Array(3 * count),
    span: new Float64Array(4 * count),
    first,
    alongU: Uint16Array.from(lines, ({ u }) => u.length - 1),
    alongV: Uint16Array.from(lines, ({ v }) => v.length - 1),
    axis: Uint8Array.from(normals, ({ axis }) => axis),
    sign: Int8Array.from(normals, ({ sign }) => sign),
    ends: Float64Array.from(lines.flatMap(({ u, v }) => [...u.subarray(1), ...v.subarray(1)])),
    firstEnd,
    start: Uint8Array.from(lines.flatMap(({ u, v }) => [...bucketStarts(u), ...bucketStarts(v)])),
  };
  rects.forEach((rect, r) => {
    fillRect(patches, rect, r, lines[r]!.u, lines[r]!.v);
  });
  return patches;
}

/** For each 64th of an edge, the patch that holds its beginning. */
function bucketStarts(lines: Float64Array): Uint8Array {
  const starts = new Uint8Array(BUCKETS);
  let i = 0;
  for (let b = 0; b < BUCKETS; b++) {
    while (lines[i + 1]! <= b / BUCKETS) i++;
    starts[b] = i;
  }
  return starts;
}

function fillRect(patches: Patches, rect: Rect, r: number, us: Float64Array, vs: Float64Array): void {
  const area = Math.hypot(...rect.u) * Math.hypot(...rect.v);
  let p = patches.first[r]!;
  for (let j = 0; j + 1 < vs.length; j++) {
    for (let i = 0; i + 1 < us.length; i++, p++) {
      const du = us[i + 1]! - us[i]!;
      const dv = vs[j + 1]! - vs[j]!;
      patches.rect[p] = r;
      patches.surface[p] = rect.surface;
      patches.area[p] = area * du * dv;
      patches.span.set([us[i]!, du, vs[j]!, dv], 4 * p);
      for (let k = 0; k < 3; k++) {
        patches.center[3 * p + k] = rect.origin[k]! + rect.u[k]! * (us[i]! + du / 2) + rect.v[k]! * (vs[j]! + dv / 2);
      }
    }
  }
}

/** The patch of coarse rectangle `r` at fractions fu, fv (clamped to 0-1). */
export function patchAt(patches: Patches, r: number, fu: number, fv: number): number {
  const i = placeAlong(patches, 2 * r, patches.alongU[r]!, fu);
  const j = placeAlong(patches, 2 * r + 1, patches.alongV[r]!, fv);
  return patches.first[r]! + j * patches.alongU[r]! + i;
}

function placeAlong({ ends, firstEnd, start }: Patches, edge: number, count: number, f: number): number {
  if (f <= 0) return 0;
  if (f >= 1) return count - 1;
  const from = firstEnd[edge]!;
  let i = start[BUCKETS * edge + ((BUCKETS * f) | 0)]!;
  while (f >= ends[from + i]!) i++;
  return i;
}
