import type { SampledReflectance } from '../engine/spectrum/resample';

/** One line of a table, rising wavelengths. */
export interface SpectrumRow {
  readonly line: number;
  readonly nm: number;
  readonly value: number;
}

/** Steps at least this fine are evened out to 1 nm by taking means, coarser ones by interpolation. */
const DENSE_NM = 0.6;

/** Wavelengths printed as whole numbers may stand for thirds, both ends among them; others may miss by their last digit. */
const ROUNDED_WHOLE_NM = 0.75;
const ROUNDED_NM = 0.05;

/** The median step, nm. At least two rows. */
export function stepOf(rows: readonly SpectrumRow[]): number {
  const steps = rows.slice(1).map(({ nm }, i) => nm - rows[i]!.nm);
  return steps.toSorted((a, b) => a - b)[(steps.length - 1) >> 1]!;
}

/**
 * Rows at even steps: as they are where their wavelengths are even to within rounding; else brought to 1 nm, or to 5 nm where
 * their own steps are 5 nm and more, by means of what lies within half a step or by cubic interpolation (Lagrange).
 */
export function evenSteps(rows: readonly SpectrumRow[]): {
  readonly sampled: SampledReflectance;
  readonly isEvened: boolean;
} {
  const start_nm = rows[0]!.nm;
  const end_nm = rows.at(-1)!.nm;
  const step = (end_nm - start_nm) / (rows.length - 1);
  const off = rows.reduce((most, { nm }, i) => Math.max(most, Math.abs(nm - start_nm - i * step)), 0);
  if (off <= (rows.every(({ nm }) => Number.isInteger(nm)) ? ROUNDED_WHOLE_NM : ROUNDED_NM)) {
    const step_nm = Number(step.toFixed(6));
    return { sampled: { start_nm, step_nm, reflectance: rows.map(({ value }) => value) }, isEvened: false };
  }
  const usual_nm = stepOf(rows);
  const step_nm = usual_nm < 5 ? 1 : 5;
  const first_nm = Math.ceil(start_nm / step_nm) * step_nm;
  const count = Math.floor((end_nm - first_nm) / step_nm + 1e-9) + 1;
  const valueAt = usual_nm < DENSE_NM ? meanAbout : cubicAt;
  const reflectance = Array.from({ length: Math.max(0, count) }, (_, i) =>
    Number(valueAt(rows, first_nm + i * step_nm).toFixed(6)),
  );
  return { sampled: { start_nm: first_nm, step_nm, reflectance }, isEvened: true };
}

/** Mean of the values within half a nanometre. */
function meanAbout(rows: readonly SpectrumRow[], nm: number): number {
  const near = rows.slice(indexFrom(rows, nm - 0.5), indexFrom(rows, nm + 0.5 + 1e-9));
  return near.length > 0 ? near.reduce((sum, { value }) => sum + value, 0) / near.length : cubicAt(rows, nm);
}

/** The cubic through the four rows about a wavelength (fewer where there are not four). */
function cubicAt(rows: readonly SpectrumRow[], nm: number): number {
  const from = Math.min(Math.max(indexFrom(rows, nm) - 2, 0), Math.max(0, rows.length - 4));
  const near = rows.slice(from, from + 4);
  return near.reduce((sum, one) => {
    const weight = near.reduce((w, other) => (other === one ? w : (w * (nm - other.nm)) / (one.nm - other.nm)), 1);
    return sum + weight * one.value;
  }, 0);
}

/** Index of the first row at a wavelength or beyond. */
function indexFrom(rows: readonly SpectrumRow[], nm: number): number {
  let low = 0;
  let high = rows.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (rows[middle]!.nm < nm) low = middle + 1;
    else high = middle;
  }
  return low;
}
