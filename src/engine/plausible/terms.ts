import { GRID_COUNT, GRID_END_NM, GRID_START_NM, wavelengthNm } from '../spectrum/grid';

// Shapes by which curves of one colour differ, on the scale of z = atanh(2 rho - 1). Places and widths as the measured
// curves of spread.data.ts show them; what causes them, from memory of Sherman and Waite 1985 (Am. Mineral. 70, 1262) for
// the iron oxides and of common pigment handbooks for the rest.

/** Titanium white absorbs in the violet: rutile's band gap of 3.0 eV is at 410 nm. */
export const TITANIUM_EDGE = edge(405, -7);

/** The tail of the ultraviolet absorption of iron in minerals, of lignin in wood, of binders and organic pigments. */
export const VIOLET = edge(415, -14);

/** Where goethite (yellow ochre) and organic yellows begin to reflect. */
export const YELLOW_EDGE = edge(515, 10);

/** Where hematite (terracotta, red sandstone, pink granite) begins to reflect. */
export const RED_EDGE = edge(575, 8);

/** Where cobalt blue (Co2+, 540-640 nm) and phthalocyanines (Q bands, 600-700 nm) reflect again. */
export const FAR_RED = edge(665, 15);

/** With a correlation of 40 nm the eleventh would carry less than 1 % of the variance. */
const SMOOTH_TERMS = 10;

const byLength = new Map<number, readonly Float64Array[]>();

/**
 * Cosines over the visible range whose sum with random signs is a Gaussian process of standard deviation 1 and a
 * squared-exponential correlation (heights by its spectral density; Rasmussen and Williams 2006, section 4.2.1).
 */
export function smoothTerms(correlation_nm: number): readonly Float64Array[] {
  const known = byLength.get(correlation_nm);
  if (known) return known;
  const frequencies = Array.from({ length: SMOOTH_TERMS }, (_, k) => (k + 1) * Math.PI);
  const densities = frequencies.map((frequency) =>
    Math.exp(-(((frequency * correlation_nm) / (GRID_END_NM - GRID_START_NM)) ** 2) / 2),
  );
  // A constant has its part in the variance, but the colour takes it back: it makes no member.
  const whole = densities.reduce((sum, density) => sum + density, 0.5);
  const terms = frequencies.map((frequency, k) => {
    const height = Math.sqrt((2 * densities[k]!) / whole);
    return onGrid((nm) => height * Math.cos((frequency * (nm - GRID_START_NM)) / (GRID_END_NM - GRID_START_NM)));
  });
  byLength.set(correlation_nm, terms);
  return terms;
}

/** From 0 to 1 about `center_nm`; falling for a negative width. */
function edge(center_nm: number, width_nm: number): Float64Array {
  return onGrid((nm) => 1 / (1 + Math.exp((center_nm - nm) / width_nm)));
}

function onGrid(value: (nm: number) => number): Float64Array {
  return Float64Array.from({ length: GRID_COUNT }, (_, i) => value(wavelengthNm(i)));
}
