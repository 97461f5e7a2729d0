import type { FinishClass } from '../finish/types';
import { GRID_COUNT, GRID_END_NM, GRID_START_NM } from '../spectrum/grid';
import { DESIGN_RUNS, designSign } from './design';
import { CLASS_SPREAD } from './spread.data';

/** Cosine terms of a departure; more would be finer than any correlation length here. */
const TERMS = 12;

const byClass = new Map<FinishClass, readonly Float64Array[]>();

/** Departures in z from the curve computed with, one per run of the design; made once per class. */
export function departuresOf(finishClass: FinishClass): readonly Float64Array[] {
  const known = byClass.get(finishClass);
  if (known) return known;
  const departures = makeDepartures(finishClass);
  byClass.set(finishClass, departures);
  return departures;
}

function makeDepartures(finishClass: FinishClass): readonly Float64Array[] {
  const { amplitude, correlation_nm } = CLASS_SPREAD[finishClass];
  const terms = smoothTerms(amplitude, correlation_nm);
  return Array.from({ length: DESIGN_RUNS }, (_, run) => {
    const sum = new Float64Array(GRID_COUNT);
    terms.forEach((term, k) => {
      const sign = designSign(run, k);
      for (let i = 0; i < GRID_COUNT; i++) sum[i] = sum[i]! + sign * term[i]!;
    });
    return sum;
  });
}

/**
 * Cosines over the visible range whose sum with random signs is a Gaussian process of this standard deviation with a
 * squared-exponential correlation (its spectral density at each frequency; Rasmussen and Williams 2006, 4.2.1).
 */
function smoothTerms(amplitude: number, correlation_nm: number): Float64Array[] {
  const range_nm = GRID_END_NM - GRID_START_NM;
  const densities = Array.from({ length: TERMS }, (_, k) =>
    Math.exp(-((((k + 1) * Math.PI * correlation_nm) / range_nm) ** 2) / 2),
  );
  // A constant departure is taken back by the colour, so the zeroth term counts in the sum but makes no member.
  const whole = densities.reduce((sum, value) => sum + value, 0.5);
  return densities.map((density, k) => {
    const height = amplitude * Math.sqrt((2 * density) / whole);
    return Float64Array.from(
      { length: GRID_COUNT },
      (_, i) => height * Math.cos(((k + 1) * Math.PI * i) / (GRID_COUNT - 1)),
    );
  });
}
