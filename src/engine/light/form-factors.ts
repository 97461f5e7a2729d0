import { mulberry32 } from '../random';
import { type Patches, patchAt } from './patches';
import type { RectBvh } from './rect-bvh';
import { traceNearest } from './rect-trace';
import type { Rect, SparseRows } from './types';

/** Rays start this far in front of their surface, so that they do not meet it. */
export const RAY_OFFSET_M = 1e-4;

export interface FormFactors {
  /** F_ij, row i = from patch i: reciprocal (A_i F_ij = A_j F_ji) and closed (rows sum to 1). */
  readonly factors: SparseRows;
  /** Share of light that left the room or met a rectangle from behind, before normalising: 0 in a closed room. */
  readonly leak: number;
  /** The same share for each coarse rectangle, to find where a room is open. */
  readonly leakByRect: Float32Array;
}

/** Rays between two yields: some milliseconds. */
const RAYS_PER_STEP = 8000;
/** Share of the work that rays take. */
const CAST_SHARE = 0.8;

/**
 * Form factors between patches by stratified cosine-distributed rays with origins spread over each patch. The two
 * estimates of a pair are pooled by their precision, F_ij = A_j (f_ij + f_ji) / (A_i + A_j), which is reciprocal;
 * symmetric (Sinkhorn) scaling then closes every row. Yields the share done every few thousand rays.
 */
export function* formFactorsInSteps(
  rects: readonly Rect[],
  patches: Patches,
  bvh: RectBvh,
  raysPerPatch: number,
  seed: number,
): Generator<number, FormFactors> {
  const side = Math.max(2, Math.round(Math.sqrt(raysPerPatch)));
  const rays = side * side;
  const hits = startHits(patches, rays, seed);
  const pace = Math.max(1, Math.round(RAYS_PER_STEP / rays));
  for (let i = 0; i < patches.count; i++) {
    castPatch(rects, patches, bvh, hits, i);
    if ((i + 1) % pace === 0) yield (CAST_SHARE * i) / patches.count;
  }
  const factors = poolPairs(patches, hits, rays);
  yield CAST_SHARE;
  for (const _ of closeRows(factors)) yield CAST_SHARE;
  return { factors, ...leaks(rects.length, patches, hits) };
}

/** Shares of the light of the patches that is lost, by area. */
function leaks(rects: number, patches: Patches, hits: Hits): Omit<FormFactors, 'factors'> {
  const lost = new Float32Array(rects);
  const areas = new Float64Array(rects);
  let all = 0;
  let area = 0;
  for (let i = 0; i < patches.count; i++) {
    const part = (patches.area[i]! * hits.lost[i]!) / hits.perPatch;
    lost[patches.rect[i]!]! += part;
    areas[patches.rect[i]!]! += patches.area[i]!;
    all += part;
    area += patches.area[i]!;
  }
  return { leak: area > 0 ? all / area : 0, leakByRect: lost.map((part, r) => part / areas[r]!) };
}

interface Hits {
  readonly start: Uint32Array;
  readonly column: Uint32Array;
  readonly rays: Uint16Array;
  readonly lost: Uint32Array;
  /** Rays cast from each patch. */
  readonly perPatch: number;
  readonly slotOf: Int32Array;
  /** Where the sequence stands. It runs on from patch to patch, so that a whole rectangle is covered evenly too. */
  readonly sequence: Float64Array;
}

// Steps 1/g^k of the additive recurrence in four dimensions, g^5 = g + 1: points that fill origin and direction evenly
// together (M. Roberts, The unreasonable effectiveness of quasirandom sequences, 2018).
const STEP_U = 0.8566748838545029;
const STEP_V = 0.733891856627126;
const STEP_R = 0.6287067210378087;
const STEP_PHI = 0.5385972572236101;

const next = (x: number, step: number): number => (x + step >= 1 ? x + step - 1 : x + step);

function startHits(patches: Patches, perPatch: number, seed: number): Hits {
  const random = mulberry32(seed);
  const n = patches.count;
  return {
    start: new Uint32Array(n + 1),
    column: new Uint32Array(n * perPatch),
    rays: new Uint16Array(n * perPatch),
    lost: new Uint32Array(n),
    perPatch,
    slotOf: new Int32Array(n).fill(-1),
    sequence: Float64Array.from({ length: 4 }, random),
  };
}

const o = new Float64Array(3);
const d = new Float64Array(3);
const p = new Float64Array(3);

/** Casts the rays of patch i; patches must come in order. */
function castPatch(rects: readonly Rect[], patches: Patches, bvh: RectBvh, hits: Hits, i: number): void {
  const { column, rays, slotOf, sequence } = hits;
  const { span } = patches;
  let [su, sv, r2, turn] = sequence as unknown as [number, number, number, number];
  const r = patches.rect[i]!;
  const rect = rects[r]!;
  const u0 = span[4 * i]!;
  const du = span[4 * i + 1]!;
  const v0 = span[4 * i + 2]!;
  const dv = span[4 * i + 3]!;
  const a = patches.axis[r]!;
  const b = (a + 1) % 3;
  const c = (a + 2) % 3;
  const sign = patches.sign[r]!;
  const begin = hits.start[i]!;
  let end = begin;
  for (let k = 0; k < hits.perPatch; k++) {
    su = next(su, STEP_U);
    sv = next(sv, STEP_V);
    const fu = u0 + du * su;
    const fv = v0 + dv * sv;
    for (let m = 0; m < 3; m++) o[m] = rect.origin[m]! + rect.u[m]! * fu + rect.v[m]! * fv;
    o[a]! += sign * RAY_OFFSET_M;
    r2 = next(r2, STEP_R);
    turn = next(turn, STEP_PHI);
    const phi = 2 * Math.PI * turn;
    const radius = Math.sqrt(r2);
    d[a] = sign * Math.sqrt(1 - r2);
    d[b] = radius * Math.cos(phi);
    d[c] = radius * Math.sin(phi);
    const slot = traceNearest(bvh, o[0]!, o[1]!, o[2]!, d[0]!, d[1]!, d[2]!, Infinity);
    if (slot < 0 || d[bvh.axis[slot]!]! * bvh.sign[slot]! > 0) {
      hits.lost[i]!++;
      continue;
    }
    const t = bvh.hitDistance[0]!;
    for (let m = 0; m < 3; m++) p[m] = o[m]! + d[m]! * t;
    const hu = (p[bvh.uAxis[slot]!]! - bvh.uStart[slot]!) * bvh.uInverse[slot]!;
    const hv = (p[bvh.vAxis[slot]!]! - bvh.vStart[slot]!) * bvh.vInverse[slot]!;
    const j = patchAt(patches, bvh.rect[slot]!, hu, hv);
    const known = slotOf[j]!;
    if (known >= 0) rays[known]!++;
    else {
      slotOf[j] = end;
      column[end] = j;
      rays[end++] = 1;
    }
  }
  for (let e = begin; e < end; e++) slotOf[column[e]!] = -1;
  hits.start[i + 1] = end;
  sequence.set([su, sv, r2, turn]);
}

function poolPairs(patches: Patches, hits: Hits, rays: number): SparseRows {
  const n = patches.count;
  const total = hits.start[n]!;
  const backStart = new Uint32Array(n + 1);
  for (let e = 0; e < total; e++) backStart[hits.column[e]! + 1]!++;
  for (let i = 0; i < n; i++) backStart[i + 1]! += backStart[i]!;
  const fill = backStart.slice();
  const backColumn = new Uint32Array(total);
  const backRays = new Uint16Array(total);
  for (let i = 0; i < n; i++) {
    for (let e = hits.start[i]!; e < hits.start[i + 1]!; e++) {
      const at = fill[hits.column[e]!]!++;
      backColumn[at] = i;
      backRays[at] = hits.rays[e]!;
    }
  }
  const start = new Uint32Array(n + 1);
  const column = new Uint32Array(2 * total);
  const value = new Float32Array(2 * total);
  const slotOf = new Int32Array(n).fill(-1);
  let end = 0;
  for (let i = 0; i < n; i++) {
    const begin = end;
    for (let e = hits.start[i]!; e < hits.start[i + 1]!; e++) {
      const j = hits.column[e]!;
      slotOf[j] = end;
      column[end] = j;
      value[end++] = hits.rays[e]!;
    }
    for (let e = backStart[i]!; e < backStart[i + 1]!; e++) {
      const j = backColumn[e]!;
      const known = slotOf[j]!;
      if (known >= 0) value[known]! += backRays[e]!;
      else {
        column[end] = j;
        value[end++] = backRays[e]!;
      }
    }
    const area = patches.area[i]!;
    for (let e = begin; e < end; e++) {
      const other = patches.area[column[e]!]!;
      value[e]! *= other / (rays * (area + other));
      slotOf[column[e]!] = -1;
    }
    start[i + 1] = end;
  }
  return { count: n, start, column: column.slice(0, end), value: value.slice(0, end) };
}

/** Passes over all factors between two yields: some milliseconds. */
const PASSES_PER_STEP = 4;

/** Scales F_ij by s_i s_j until every row sums to 1; reciprocity stays, because A_i F_ij is scaled symmetrically. */
function* closeRows(rows: SparseRows): Generator<undefined, void> {
  const { count, start, column, value } = rows;
  const scale = new Float64Array(count).fill(1);
  for (let pass = 1; pass <= 200; pass++) {
    if (scaleRows(rows, scale) < 1e-8) break;
    if (pass % PASSES_PER_STEP === 0) yield;
  }
  for (let i = 0; i < count; i++) {
    for (let e = start[i]!; e < start[i + 1]!; e++) value[e] = value[e]! * scale[i]! * scale[column[e]!]!;
  }
}

/** One pass over the scales; gives the largest distance of a row's sum from 1 before it. */
function scaleRows({ count, start, column, value }: SparseRows, scale: Float64Array): number {
  let worst = 0;
  for (let i = 0; i < count; i++) {
    let sum = 0;
    for (let e = start[i]!; e < start[i + 1]!; e++) sum += value[e]! * scale[column[e]!]!;
    if (sum === 0) continue;
    const off = Math.abs(sum * scale[i]! - 1);
    if (off > worst) worst = off;
    // Geometric mean of the old and the exact factor: the damped form does not swing between two states.
    scale[i] = Math.sqrt(scale[i]! / sum);
  }
  return worst;
}
