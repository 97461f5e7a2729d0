import { BAND_COUNT } from './bands';
import { lightKernel } from './kernel/kernel';
import type { Transport } from './transport';

export interface SolveOptions {
  /** Bands per surface and patch; 24 unless said otherwise. */
  readonly bands?: number;
  /** A solution of a similar room (N * bands) to start from. */
  readonly warmStart?: Float32Array;
  /** Relative error left in any patch and band. */
  readonly tolerance?: number;
}

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
  const n = transport.patches.count;
  const b = options.warmStart
    ? Float64Array.from(options.warmStart)
    : startAmbient(transport, reflectance, direct, bands);
  lightKernel().relax(
    {
      rows: transport.bounce,
      surface: transport.patches.surface,
      bands,
      reflectance,
      direct,
      scale: bandMeans(b, n, bands),
      relaxation: RELAXATION,
      tolerance: options.tolerance ?? 1e-5,
    },
    b,
  );
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

/** Mean per band; 1 where a band is dark, whose changes then count as they are. */
function bandMeans(b: Float64Array, n: number, bands: number): Float64Array {
  const means = new Float64Array(bands);
  for (let i = 0; i < n; i++) for (let k = 0; k < bands; k++) means[k]! += b[i * bands + k]! / n;
  return means.map((mean) => (mean > 0 ? mean : 1));
}
