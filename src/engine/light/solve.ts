import { BAND_COUNT } from './bands';
import { gatherEight } from './gather-eight';
import type { Transport } from './transport';

export interface SolveOptions {
  /** Bands per surface and patch; 24 unless said otherwise. */
  readonly bands?: number;
  /** A solution of a similar room (N * bands) to start from. */
  readonly warmStart?: Float32Array;
  /** Relative error left in any patch and band. */
  readonly tolerance?: number;
}

const MAX_SWEEPS = 2000;
/** A little over-relaxation saves a quarter of the sweeps in kitchens; any value below 2 converges (Young, 1954). */
const RELAXATION = 1.1;

/**
 * Radiosity of every patch and band, lx-scaled (lm/m2): B = rho (D + F B), by over-relaxed Gauss-Seidel sweeps.
 * `reflectance`: per surface and band, 0 to below 1. `direct`: one value a patch (the same in every band), or one per
 * patch and band. The cold start is the uniform interreflection of a sphere, exact for the room's mean.
 */
export function solveGroup(
  transport: SolvableTransport,
  reflectance: Float32Array,
  direct: Float32Array,
  options: SolveOptions = {},
): Float32Array {
  const bands = options.bands ?? BAND_COUNT;
  const tolerance = options.tolerance ?? 1e-5;
  const n = transport.patches.count;
  const perBand = direct.length === n * bands && bands > 1;
  const b = options.warmStart
    ? Float64Array.from(options.warmStart)
    : startAmbient(transport, reflectance, direct, bands);
  const scale = bandMeans(b, n, bands);
  let last = 0;
  for (let sweep = 0; sweep < MAX_SWEEPS; sweep++) {
    const change = sweepPatches(transport, reflectance, direct, perBand, bands, b, scale);
    // Geometric tail: what the sweeps to come would still add.
    const ratio = last > 0 ? Math.min(0.99, Math.max(0.2, change / last)) : 0.9;
    if ((change * ratio) / (1 - ratio) < tolerance) break;
    last = change;
  }
  return Float32Array.from(b);
}

/** What the solver needs of a transport; the identity tests build it by hand. */
export type SolvableTransport = Pick<Transport, 'patches' | 'bounce'>;

function startAmbient(t: SolvableTransport, rho: Float32Array, direct: Float32Array, bands: number): Float64Array {
  const { count, area, surface } = t.patches;
  const perBand = direct.length === count * bands && bands > 1;
  const b = new Float64Array(count * bands);
  for (let k = 0; k < bands; k++) {
    let reflected = 0;
    let absorbed = 0;
    for (let i = 0; i < count; i++) {
      const s = surface[i]!;
      const r = s < 0 ? 0 : rho[s * bands + k]!;
      reflected += area[i]! * r * direct[perBand ? i * bands + k : i]!;
      absorbed += area[i]! * (1 - r);
    }
    const ambient = absorbed > 0 ? reflected / absorbed : 0;
    for (let i = 0; i < count; i++) {
      const s = surface[i]!;
      if (s >= 0) b[i * bands + k] = rho[s * bands + k]! * (direct[perBand ? i * bands + k : i]! + ambient);
    }
  }
  return b;
}

function bandMeans(b: Float64Array, n: number, bands: number): Float64Array {
  const means = new Float64Array(bands);
  for (let i = 0; i < n; i++) for (let k = 0; k < bands; k++) means[k]! += b[i * bands + k]! / n;
  return means;
}

const received = new Float64Array(8);

/** One sweep in place; gives the largest change relative to its band's mean. Eight bands at a time stay in registers. */
function sweepPatches(
  t: SolvableTransport,
  rho: Float32Array,
  direct: Float32Array,
  perBand: boolean,
  bands: number,
  b: Float64Array,
  scale: Float64Array,
): number {
  const { start, column, value } = t.bounce;
  const { count, surface } = t.patches;
  let worst = 0;
  for (let i = 0; i < count; i++) {
    const s = surface[i]!;
    if (s < 0) continue;
    for (let k0 = 0; k0 < bands; k0 += 8) {
      const width = Math.min(8, bands - k0);
      if (width === 8) gatherEight(start[i]!, start[i + 1]!, column, value, b, bands, k0, received, 0);
      else gatherFew(start[i]!, start[i + 1]!, column, value, b, bands, k0, width);
      for (let m = 0; m < width; m++) {
        const k = k0 + m;
        const at = i * bands + k;
        const next = rho[s * bands + k]! * (direct[perBand ? at : i]! + received[m]!);
        const step = RELAXATION * (next - b[at]!);
        const change = Math.abs(step);
        if (change > worst * scale[k]!) worst = scale[k]! > 0 ? change / scale[k]! : change;
        b[at]! += step;
      }
    }
  }
  return worst;
}

function gatherFew(
  from: number,
  to: number,
  column: Uint32Array,
  value: Float32Array,
  b: Float64Array,
  bands: number,
  k0: number,
  width: number,
): void {
  received.fill(0);
  for (let e = from; e < to; e++) {
    const f = value[e]!;
    const at = column[e]! * bands + k0;
    for (let m = 0; m < width; m++) received[m]! += f * b[at + m]!;
  }
}
