import { GRID_COUNT, GRID_START_NM, GRID_STEP_NM, wavelengthNm } from '../spectrum/grid';
import { type Observer, observer2 } from '../spectrum/observers';
import { LUMENS_PER_WATT } from '../spectrum/per-lux';
import type { EmissionSpd, ReflectanceSpd } from '../spectrum/types';

/** Bands for interreflection: 24 keep colours within 0.2 CIEDE2000 of 81 samples (tests/physics/bands.test.ts). */
export const BAND_COUNT = 24;

const BANDS = layoutBands(observer2);

/** Wavelength of each band's centre, nm: its centre of weight. */
export const BAND_CENTER_NM: Float64Array = BANDS.center;

/** Weighted mean of a reflectance in each band. */
export function bandMeansFromReflectance(rho: ReflectanceSpd): Float64Array {
  const means = new Float64Array(BAND_COUNT);
  for (let i = 0; i < GRID_COUNT; i++) {
    for (let k = 0; k < BAND_COUNT; k++) means[k]! += BANDS.share[k * GRID_COUNT + i]! * rho[i]!;
  }
  return means;
}

/** 24 band values on the 81 samples: linear between band centres, held beyond the first and last. */
export function expandBands(bands: ArrayLike<number>): Float64Array {
  const out = new Float64Array(GRID_COUNT);
  for (let i = 0; i < GRID_COUNT; i++) {
    const k = BANDS.lower[i]!;
    const f = BANDS.fraction[i]!;
    out[i] = bands[k]! * (1 - f) + bands[Math.min(k + 1, BAND_COUNT - 1)]! * f;
  }
  return out;
}

/**
 * X, Y, Z for one unit in each band (24 * 3): for an indirect transport t the tristimulus values of t(lambda) s(lambda)
 * rho(lambda) are the sum over bands of t_k W_k. On the scale of `xyzFromEmission`: with a spectrum per lux, Y is lx.
 */
export function bandColorMatrix(spd: EmissionSpd, rho: ReflectanceSpd | null, observer: Observer): Float64Array {
  const matrix = new Float64Array(3 * BAND_COUNT);
  for (let i = 0; i < GRID_COUNT; i++) {
    const power = LUMENS_PER_WATT * GRID_STEP_NM * spd[i]! * (rho ? rho[i]! : 1);
    const f = BANDS.fraction[i]!;
    const k = 3 * BANDS.lower[i]!;
    const next = Math.min(k + 3, 3 * (BAND_COUNT - 1));
    addColor(matrix, k, power * (1 - f), observer, i);
    addColor(matrix, next, power * f, observer, i);
  }
  return matrix;
}

/** X, Y, Z of a surface of reflectance `rho` (null: perfect white) under 1 lx of direct light, same scale as above. */
export function directColor(spd: EmissionSpd, rho: ReflectanceSpd | null, observer: Observer): Float64Array {
  const color = new Float64Array(3);
  for (let i = 0; i < GRID_COUNT; i++) {
    addColor(color, 0, LUMENS_PER_WATT * GRID_STEP_NM * spd[i]! * (rho ? rho[i]! : 1), observer, i);
  }
  return color;
}

function addColor(to: Float64Array, at: number, power: number, observer: Observer, i: number): void {
  to[at]! += power * observer.x[i]!;
  to[at + 1]! += power * observer.y[i]!;
  to[at + 2]! += power * observer.z[i]!;
}

interface BandLayout {
  /** 24 x 81: weight of each sample in each band, rows sum to 1. */
  readonly share: Float64Array;
  readonly center: Float64Array;
  /** Per sample: the band centre at or below it, and how far it is on the way to the next. */
  readonly lower: Uint8Array;
  readonly fraction: Float64Array;
}

/** Bands of equal weight sqrt(x + y + z): narrow where the observer tells wavelengths apart. */
function layoutBands(observer: Observer): BandLayout {
  const weight = observer.x.map((x, i) => Math.sqrt(x + observer.y[i]! + observer.z[i]!));
  const perBand = weight.reduce((sum, w) => sum + w, 0) / BAND_COUNT;
  const share = new Float64Array(BAND_COUNT * GRID_COUNT);
  const center = new Float64Array(BAND_COUNT);
  let below = 0;
  for (let i = 0; i < GRID_COUNT; i++) {
    const above = below + weight[i]!;
    for (let k = 0; k < BAND_COUNT; k++) {
      const overlap = Math.min(above, (k + 1) * perBand) - Math.max(below, k * perBand);
      if (overlap <= 0) continue;
      share[k * GRID_COUNT + i] = overlap / perBand;
      // The middle of the overlap within the sample's 5 nm cell.
      const middle = (Math.max(below, k * perBand) + overlap / 2 - below) / weight[i]! - 0.5;
      center[k]! += (overlap / perBand) * (wavelengthNm(i) + middle * GRID_STEP_NM);
    }
    below = above;
  }
  const lower = new Uint8Array(GRID_COUNT);
  const fraction = new Float64Array(GRID_COUNT);
  for (let i = 0; i < GRID_COUNT; i++) {
    const nm = GRID_START_NM + i * GRID_STEP_NM;
    let k = 0;
    while (k < BAND_COUNT - 1 && center[k + 1]! <= nm) k++;
    lower[i] = k;
    if (k < BAND_COUNT - 1) fraction[i] = Math.max(0, (nm - center[k]!) / (center[k + 1]! - center[k]!));
  }
  return { share, center, lower, fraction };
}
