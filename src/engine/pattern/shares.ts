const BINS = 4096;

/**
 * Turns a presence field into weights (in place) whose sum over `room` (the area still free per texel) is `share` of all
 * texels. The only free number, a threshold or an exponent, is found by bisection on the field's histogram.
 */
export function fitShare(presence: Float32Array, edge: number | null, room: Float32Array, share: number): void {
  let low = Infinity;
  let high = -Infinity;
  for (let i = 0; i < presence.length; i++) {
    const f = presence[i]!;
    if (f < low) low = f;
    if (f > high) high = f;
  }
  const span = Math.max(high - low, 1e-9);
  const area = new Float64Array(BINS);
  const scale = (BINS - 1) / span;
  for (let i = 0; i < presence.length; i++) area[((presence[i]! - low) * scale + 0.5) | 0]! += room[i]!;
  const wanted = share * presence.length;
  const weigh = edge === null ? powerWeight : edgeWeight;
  // Both bounds are ordered so that the covered area falls as the number grows.
  let from = edge === null ? -6 : low - edge;
  let to = edge === null ? 6 : high + edge;
  for (let step = 0; step < 40; step++) {
    const middle = (from + to) / 2;
    let covered = 0;
    for (let b = 0; b < BINS; b++) if (area[b]! > 0) covered += area[b]! * weigh(low + b / scale, middle, edge ?? 0);
    if (covered > wanted) from = middle;
    else to = middle;
  }
  const found = (from + to) / 2;
  const table = new Float32Array(BINS + 1);
  for (let b = 0; b < BINS; b++) table[b] = weigh(low + b / scale, found, edge ?? 0);
  table[BINS] = table[BINS - 1]!;
  for (let i = 0; i < presence.length; i++) {
    const x = (presence[i]! - low) * scale;
    const b = x | 0;
    presence[i] = table[b]! + (x - b) * (table[b + 1]! - table[b]!);
  }
}

function edgeWeight(f: number, threshold: number, edge: number): number {
  const x = (f - threshold) / edge + 0.5;
  return x <= 0 ? 0 : x >= 1 ? 1 : x * x * (3 - 2 * x);
}

function powerWeight(f: number, logExponent: number): number {
  return f <= 0 ? 0 : f >= 1 ? 1 : f ** Math.exp(logExponent);
}

/**
 * Scales the gain (in place) so that within each component it averages 1: then the area average of the colours, lightness
 * variation included, is exactly the mixture by shares. `weights[k]` belongs to component k + 1; the rest to component 0.
 * Each component's factor applies where it is by its weight; the factors solve one linear equation per component.
 */
export function balanceGain(gain: Float32Array, weights: readonly Float32Array[]): void {
  const n = weights.length + 1;
  const area = new Float64Array(n);
  const moments = new Float64Array(n * n);
  const [w1, w2, w3] = weights;
  for (let i = 0; i < gain.length; i++) {
    const g = gain[i]!;
    const b = w1 ? w1[i]! : 0;
    const c = w2 ? w2[i]! : 0;
    const d = w3 ? w3[i]! : 0;
    const a = 1 - b - c - d;
    const ag = a * g;
    area[0]! += a;
    moments[0]! += a * ag;
    if (b > 0) {
      area[1]! += b;
      moments[n]! += b * ag;
      moments[n + 1]! += b * b * g;
    }
    if (c > 0) {
      area[2]! += c;
      moments[2 * n]! += c * ag;
      moments[2 * n + 1]! += c * b * g;
      moments[2 * n + 2]! += c * c * g;
    }
    if (d > 0) {
      area[3]! += d;
      moments[3 * n]! += d * ag;
      moments[3 * n + 1]! += d * b * g;
      moments[3 * n + 2]! += d * c * g;
      moments[3 * n + 3]! += d * d * g;
    }
  }
  for (let k = 0; k < n; k++) for (let j = k + 1; j < n; j++) moments[k * n + j] = moments[j * n + k]!;
  const factor = solveSymmetric(moments, area, n);
  const [f0 = 1, f1 = 1, f2 = 1, f3 = 1] = factor;
  for (let i = 0; i < gain.length; i++) {
    const b = w1 ? w1[i]! : 0;
    const c = w2 ? w2[i]! : 0;
    const d = w3 ? w3[i]! : 0;
    gain[i]! *= f0 + (f1 - f0) * b + (f2 - f0) * c + (f3 - f0) * d;
  }
}

/** Solves m x = b for a small symmetric m (Gauss-Jordan); a component that is nowhere gets factor 1. */
function solveSymmetric(m: Float64Array, b: Float64Array, n: number): Float64Array {
  const x = b.slice();
  for (let k = 0; k < n; k++) {
    if (m[k * n + k]! < 1e-9) {
      for (let j = 0; j < n; j++) m[k * n + j] = j === k ? 1 : 0;
      x[k] = 1;
    }
  }
  for (let k = 0; k < n; k++) {
    const pivot = m[k * n + k]!;
    for (let r = 0; r < n; r++) {
      if (r === k) continue;
      const ratio = m[r * n + k]! / pivot;
      if (ratio === 0) continue;
      for (let j = k; j < n; j++) m[r * n + j]! -= ratio * m[k * n + j]!;
      x[r]! -= ratio * x[k]!;
    }
  }
  for (let k = 0; k < n; k++) x[k]! /= m[k * n + k]!;
  return x;
}
