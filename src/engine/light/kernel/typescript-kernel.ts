import { BAND_COUNT } from '../bands';
import type { RectBvh } from '../rect-bvh';
import { isBlocked, traceNearest } from '../rect-trace';
import type { SparseRows } from '../types';
import { gatherEight } from './gather-eight';
import { inGroupsOfFour } from './groups';
import {
  type BandSum,
  type LightKernel,
  MAX_SWEEPS,
  type RayFan,
  type RayFrame,
  type Relaxation,
  type Targets,
} from './types';

/** The kernel without WebAssembly, for where there is none: sums in float64. */
export const typescriptKernel: LightKernel = { name: 'typescript', relax, gatherRows, sumBands, traceFan, shadeFan };

function relax(task: Relaxation, b: Float64Array): number {
  const received = new Float64Array(task.bands);
  let last = 0;
  for (let sweep = 1; sweep <= MAX_SWEEPS; sweep++) {
    const change = sweepPatches(task, b, received);
    // Geometric tail: what the sweeps to come would still add.
    const ratio = last > 0 ? Math.min(0.99, Math.max(0.2, change / last)) : 0.9;
    if ((change * ratio) / (1 - ratio) < task.tolerance) return sweep;
    last = change;
  }
  return MAX_SWEEPS;
}

/** One sweep in place; gives the largest change relative to its band's scale. */
function sweepPatches(task: Relaxation, b: Float64Array, received: Float64Array): number {
  const { rows, surface, bands, reflectance, direct, scale, relaxation } = task;
  const perBand = direct.length > rows.count;
  let worst = 0;
  for (let i = 0; i < rows.count; i++) {
    const s = surface[i]!;
    if (s < 0) continue;
    gatherRow(rows, i, b, bands, received);
    for (let k = 0; k < bands; k++) {
      const at = i * bands + k;
      const next = reflectance[s * bands + k]! * (direct[perBand ? at : i]! + received[k]!);
      const step = relaxation * (next - b[at]!);
      const change = Math.abs(step);
      if (change > worst * scale[k]!) worst = change / scale[k]!;
      b[at]! += step;
    }
  }
  return worst;
}

function gatherRows(rows: SparseRows, radiosity: Float32Array, bands: number, out: Float32Array): void {
  const sums = new Float64Array(bands);
  for (let i = 0; i < rows.count; i++) {
    gatherRow(rows, i, radiosity, bands, sums);
    out.set(sums, i * bands);
  }
}

/** Row i . B into `sums`: eight bands at a time, then one by one. */
function gatherRow(
  { start, column, value }: SparseRows,
  i: number,
  b: Float32Array | Float64Array,
  bands: number,
  sums: Float64Array,
): void {
  const from = start[i]!;
  const to = start[i + 1]!;
  let k = 0;
  for (; k + 8 <= bands; k += 8) gatherEight(from, to, column, value, b, bands, k, sums, k);
  for (; k < bands; k++) {
    let sum = 0;
    for (let e = from; e < to; e++) sum += value[e]! * b[column[e]! * bands + k]!;
    sums[k] = sum;
  }
}

function sumBands(light: readonly (Float32Array | null)[], sums: readonly BandSum[], out: Float32Array): void {
  let at = 0;
  for (const { first, count, colors } of sums) {
    for (let sample = first; sample < first + count; sample++, at += 3) sumSample(light, sample, colors, out, at);
  }
}

function sumSample(
  light: readonly (Float32Array | null)[],
  sample: number,
  colors: readonly (Float32Array | null)[],
  out: Float32Array,
  at: number,
): void {
  let r = 0;
  let g = 0;
  let b = 0;
  const base = sample * BAND_COUNT;
  for (let group = 0; group < colors.length; group++) {
    const color = colors[group];
    const values = light[group];
    if (!color || !values) continue;
    for (let band = 0, c = 0; band < BAND_COUNT; band++, c += 3) {
      const t = values[base + band]!;
      r += t * color[c]!;
      g += t * color[c + 1]!;
      b += t * color[c + 2]!;
    }
  }
  out[at] = r;
  out[at + 1] = g;
  out[at + 2] = b;
}

function traceFan({ bvh, count, groups, hits, distances }: RayFan, frame: RayFrame): void {
  const [x, y, z, tx, ty, tz, sx, sy, sz, nx, ny, nz] = frame;
  for (let k = 0; k < count; k++) {
    const at = inGroupsOfFour(k);
    const p = groups[at]!;
    const q = groups[at + 4]!;
    const r = groups[at + 8]!;
    const dx = tx * p + sx * q + nx * r;
    const dy = ty * p + sy * q + ny * r;
    const dz = tz * p + sz * q + nz * r;
    hits[k] = traceNearest(bvh, x, y, z, dx, dy, dz, Infinity);
    distances[k] = bvh.hitDistance[0]!;
  }
}

function shadeFan(bvh: RectBvh, { groups, blocked }: Targets, count: number, x: number, y: number, z: number): void {
  for (let k = 0; k < count; k++) {
    const at = inGroupsOfFour(k);
    const dx = groups[at]! - x;
    const dy = groups[at + 4]! - y;
    const dz = groups[at + 8]! - z;
    blocked[k] = isBlocked(bvh, x, y, z, dx, dy, dz, 1) ? 1 : 0;
  }
}
