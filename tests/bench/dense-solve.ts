import type { Transport } from '../../src/engine/light/transport';

/** Form factors written out in full: the plainest form of the same matrix. */
export function denseFactors({ bounce }: Pick<Transport, 'bounce'>): Float32Array {
  const { count, start, column, value } = bounce;
  const dense = new Float32Array(count * count);
  for (let i = 0; i < count; i++) {
    for (let e = start[i]!; e < start[i + 1]!; e++) dense[i * count + column[e]!] = value[e]!;
  }
  return dense;
}

/**
 * Radiosity by plain Gauss-Seidel over the full matrix, one band after the other, from the direct light on: what one
 * writes first. The same equation, bands and stopping rule as the engine's.
 */
export function solveDense(
  { patches }: Pick<Transport, 'patches'>,
  dense: Float32Array,
  reflectance: Float32Array,
  direct: Float32Array,
  bands: number,
): Float32Array {
  const { count, surface } = patches;
  const out = new Float32Array(count * bands);
  const b = new Float64Array(count);
  for (let k = 0; k < bands; k++) {
    const rho = Float64Array.from(surface, (s) => (s < 0 ? 0 : reflectance[s * bands + k]!));
    let mean = 0;
    for (let i = 0; i < count; i++) {
      b[i] = rho[i]! * direct[i]!;
      mean += b[i]! / count;
    }
    let last = 0;
    for (let sweep = 0; sweep < 2000; sweep++) {
      let change = 0;
      for (let i = 0; i < count; i++) {
        let received = 0;
        for (let j = 0; j < count; j++) received += dense[i * count + j]! * b[j]!;
        const next = rho[i]! * (direct[i]! + received);
        change = Math.max(change, Math.abs(next - b[i]!) / mean);
        b[i] = next;
      }
      const ratio = last > 0 ? Math.min(0.99, Math.max(0.2, change / last)) : 0.9;
      if ((change * ratio) / (1 - ratio) < 1e-5) break;
      last = change;
    }
    for (let i = 0; i < count; i++) out[i * bands + k] = b[i]!;
  }
  return out;
}
