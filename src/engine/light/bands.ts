import { GRID_COUNT, GRID_START_NM, GRID_STEP_NM, wavelengthNm } from '../spectrum/grid';
import { type Observer, observer2 } from '../spectrum/observers';
import { LUMENS_PER_WATT } from '../spectrum/per-lux';
import type { EmissionSpd, ReflectanceSpd } from '../spectrum/types';

/** Bands for interreflection: 24 keep colours within 0.2 CIEDE2000 of 81 samples (tests/physics/bands.test.ts). */
export const BAND_COUNT = 24;

const TAPS = 4;

const BANDS = layoutBands(observer2);

/** Wavelength of each band's centre, nm: the centre of its weight. */
export const BAND_CENTER_NM: Float64Array = BANDS.center;

/**
 * The reflectance that stands for each band: the mean of the two samples around the band's centre, weighted by nearness.
 * A mean over the whole band would flatten peaks before interreflection sharpens them, and costs five times the error.
 */
export function bandMeansFromReflectance(rho: ReflectanceSpd): Float64Array {
  return BANDS.center.map((nm) => {
    const x = (nm - GRID_START_NM) / GRID_STEP_NM;
    const i = Math.floor(x);
    return rho[i]! + (rho[i + 1]! - rho[i]!) * (x - i);
  });
}

/** 24 band values on the 81 samples: cubic through the band centres, held beyond the first and last. */
export function expandBands(bands: ArrayLike<number>): Float64Array {
  const out = new Float64Array(GRID_COUNT);
  for (let i = 0; i < GRID_COUNT; i++) {
    for (let m = 0; m < TAPS; m++) out[i]! += BANDS.tapWeight[i * TAPS + m]! * bands[BANDS.tap[i * TAPS + m]!]!;
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
    for (let m = i * TAPS; m < (i + 1) * TAPS; m++) {
      addColor(matrix, 3 * BANDS.tap[m]!, power * BANDS.tapWeight[m]!, observer, i);
    }
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
  readonly center: Float64Array;
  /** Per sample: the four bands its value is made of, and their weights. */
  readonly tap: Uint8Array;
  readonly tapWeight: Float64Array;
}

/** Bands of equal weight sqrt(x + y + z): narrow where the observer tells wavelengths apart. */
function layoutBands(observer: Observer): BandLayout {
  const center = bandCenters(observer);
  const tap = new Uint8Array(TAPS * GRID_COUNT);
  const tapWeight = new Float64Array(TAPS * GRID_COUNT);
  for (let i = 0; i < GRID_COUNT; i++) {
    const nm = Math.min(center[BAND_COUNT - 1]!, Math.max(center[0]!, wavelengthNm(i)));
    let k = 0;
    while (k < BAND_COUNT - 2 && center[k + 1]! <= nm) k++;
    const last = BAND_COUNT - 1;
    const around = [Math.max(0, k - 1), k, k + 1, Math.min(last, k + 2)];
    tap.set(around, TAPS * i);
    const weights = cubicWeights(around.map((band) => center[band]!) as [number, number, number, number], nm);
    tapWeight.set(weights, TAPS * i);
  }
  return { center, tap, tapWeight };
}

function bandCenters(observer: Observer): Float64Array {
  const weight = observer.x.map((x, i) => Math.sqrt(x + observer.y[i]! + observer.z[i]!));
  const perBand = weight.reduce((sum, w) => sum + w, 0) / BAND_COUNT;
  const center = new Float64Array(BAND_COUNT);
  let below = 0;
  for (let i = 0; i < GRID_COUNT; i++) {
    const above = below + weight[i]!;
    for (let k = 0; k < BAND_COUNT; k++) {
      const from = Math.max(below, k * perBand);
      const overlap = Math.min(above, (k + 1) * perBand) - from;
      if (overlap <= 0) continue;
      // The middle of the overlap within the sample's 5 nm cell.
      const middle = (from + overlap / 2 - below) / weight[i]! - 0.5;
      center[k]! += (overlap / perBand) * (wavelengthNm(i) + middle * GRID_STEP_NM);
    }
    below = above;
  }
  return center;
}

/**
 * Weights of four values at x0 <= x1 < x2 <= x3 for the cubic between x1 and x2 whose slopes are those of parabolas
 * through three neighbours (at an end, where x0 = x1 or x2 = x3, of the line through two).
 */
function cubicWeights([x0, x1, x2, x3]: [number, number, number, number], x: number): number[] {
  const h = x2 - x1;
  const f = (x - x1) / h;
  const value1 = (1 + 2 * f) * (1 - f) ** 2;
  const value2 = f * f * (3 - 2 * f);
  const slope1 = f * (1 - f) ** 2 * h;
  const slope2 = f * f * (f - 1) * h;
  const before = x1 - x0;
  const after = x3 - x2;
  // Share of the middle chord in each slope; the outer chord has the rest.
  const p = before > 0 ? before / (before + h) : 1;
  const q = after > 0 ? after / (after + h) : 1;
  const outer1 = before > 0 ? (1 - p) / before : 0;
  const outer2 = after > 0 ? (1 - q) / after : 0;
  const chord = (slope1 * p + slope2 * q) / h;
  return [-slope1 * outer1, value1 + slope1 * outer1 - chord, value2 - slope2 * outer2 + chord, slope2 * outer2];
}
