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
  for (let i = 0; i < presence.length; i++) area[Math.round((presence[i]! - low) * scale)]! += room[i]!;
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
  if (edge === null) console.log('exponent', Math.exp((from + to) / 2));
  const found = (from + to) / 2;
  if (edge !== null) {
    for (let i = 0; i < presence.length; i++) presence[i] = edgeWeight(presence[i]!, found, edge);
    return;
  }
  const table = new Float32Array(BINS);
  for (let b = 0; b < BINS; b++) table[b] = powerWeight(low + b / scale, found);
  for (let i = 0; i < presence.length; i++) presence[i] = table[Math.round((presence[i]! - low) * scale)]!;
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
 */
export function balanceGain(gain: Float32Array, weights: readonly Float32Array[]): void {
  const n = weights.length + 1;
  const sum = new Float64Array(n);
  const lit = new Float64Array(n);
  for (let pass = 0; pass < 3; pass++) {
    sum.fill(0);
    lit.fill(0);
    for (let i = 0; i < gain.length; i++) {
      const g = gain[i]!;
      let rest = 1;
      for (let k = 1; k < n; k++) {
        const w = weights[k - 1]![i]!;
        rest -= w;
        sum[k]! += w;
        lit[k]! += w * g;
      }
      sum[0]! += rest;
      lit[0]! += rest * g;
    }
    for (let k = 0; k < n; k++) lit[k] = sum[k]! > 1e-6 ? sum[k]! / lit[k]! : 1;
    for (let i = 0; i < gain.length; i++) {
      let rest = 1;
      let factor = 0;
      for (let k = 1; k < n; k++) {
        const w = weights[k - 1]![i]!;
        rest -= w;
        factor += w * lit[k]!;
      }
      gain[i]! *= Math.min(1.9, Math.max(0.1, factor + rest * lit[0]!));
    }
  }
}
