import { emissionSpd, GRID_COUNT, GRID_END_NM, GRID_START_NM, GRID_STEP_NM, wavelengthNm } from './grid';
import type { EmissionSpd } from './types';

/** A measured lamp as an instrument or a file gives it: ascending wavelengths, power per nm in any unit. */
export interface SampledEmission {
  readonly nm: readonly number[];
  readonly power: readonly number[];
}

/**
 * A sampled spectrum, 400-700 nm at least, on the grid (see `emissionOnGrid` for the rule). Values below zero become
 * zero.
 */
export function gridFromSamples({ nm, power }: SampledEmission): EmissionSpd {
  // Held ends: a sample more on each side of the outermost triangles.
  const x = [Math.min(nm[0]!, GRID_START_NM - GRID_STEP_NM), ...nm, Math.max(nm.at(-1)!, GRID_END_NM + GRID_STEP_NM)];
  const p = [power[0]!, ...power, power.at(-1)!];
  const isFine = nm.some((value, k) => value - nm[k - 1]! < GRID_STEP_NM - 1e-6);
  // Noise is clipped after the mean, where most of it has cancelled.
  return emissionSpd((isFine ? triangularMeans(x, p) : interpolated(x, p)).map((value) => Math.max(0, value)));
}

/** Integrals of the straight line between samples with the triangle of each grid point, exactly. */
function triangularMeans(x: readonly number[], p: readonly number[]): Float64Array {
  const means = new Float64Array(GRID_COUNT);
  const add = (i: number, amount: number) => {
    if (i >= 0 && i < GRID_COUNT) means[i] = means[i]! + amount / GRID_STEP_NM;
  };
  for (let k = 1; k < x.length; k++) {
    const [from, to] = [x[k - 1]!, x[k]!];
    const slope = to > from ? (p[k]! - p[k - 1]!) / (to - from) : 0;
    let cell = Math.max(-1, Math.floor((from - GRID_START_NM) / GRID_STEP_NM));
    for (; cell < GRID_COUNT && wavelengthNm(cell) < to; cell++) {
      const low = Math.max(from, wavelengthNm(cell));
      const high = Math.min(to, wavelengthNm(cell + 1));
      if (high <= low) continue;
      const pLow = p[k - 1]! + slope * (low - from);
      const pHigh = p[k - 1]! + slope * (high - from);
      const tLow = (low - wavelengthNm(cell)) / GRID_STEP_NM;
      const tHigh = (high - wavelengthNm(cell)) / GRID_STEP_NM;
      const whole = ((pLow + pHigh) / 2) * (high - low);
      const upper = ((pLow * (2 * tLow + tHigh) + pHigh * (tLow + 2 * tHigh)) / 6) * (high - low);
      add(cell, whole - upper);
      add(cell + 1, upper);
    }
  }
  return means;
}

function interpolated(x: readonly number[], p: readonly number[]): Float64Array {
  let k = 1;
  return Float64Array.from({ length: GRID_COUNT }, (_, i) => {
    const nm = wavelengthNm(i);
    while (x[k]! < nm) k++;
    const t = (nm - x[k - 1]!) / (x[k]! - x[k - 1]!);
    return p[k - 1]! * (1 - t) + p[k]! * t;
  });
}
