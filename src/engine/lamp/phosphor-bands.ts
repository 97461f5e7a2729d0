import { emissionSpd, GRID_COUNT, wavelengthNm } from '../spectrum/grid';
import type { EmissionSpd } from '../spectrum/types';

/** A blue LED under a green-yellow and a red phosphor: their spectra, each 1 at its peak. */
export interface PhosphorBands {
  readonly blue: EmissionSpd;
  readonly green: EmissionSpd;
  readonly red: EmissionSpd;
}

const LN16 = 4 * Math.LN2;

/**
 * The pump: peak and the half-maximum widths of its two sides, each as the width of a whole Gaussian. CIE LED-B1 to
 * LED-B5 have 448-452 nm, 22-27 nm and 22-32 nm.
 */
const BLUE = { peak_nm: 451, left_nm: 24, right_nm: 26 };

/** Temperature from which the mix for high rendering is counted, mired (6500 K). */
const COOL_MIRED = 1e6 / 6500;

/**
 * The bands of a white LED, as makers shift them: `quality` 0 is one narrow yellow with some orange, 1 a broad green
 * with a deep red, and Ra rises in between. Phosphors are Gaussians over wavenumber, as vibronic bands are.
 * Range of the peaks: green-yellow 525-565 nm (garnets with cerium: LuAG 520-540, YAG 540-565, about 110 nm wide), red
 * 593-652 nm (nitrides with europium: Sr2Si5N8 610-630, CaAlSiN3 650, about 90 nm wide; reviews: Ye et al. 2010, Mater.
 * Sci. Eng. R 71, 1; Xie et al. 2010, Materials 3, 3777; figures from memory). The constants are ours, fitted to the
 * colours under CIE LED-B1 to LED-B5 and so that Ra rises steadily over 1800-8000 K.
 */
export function phosphorBands(cct_k: number, quality: number): PhosphorBands {
  const warmth = 1e6 / cct_k - COOL_MIRED;
  const between = (low: number, high: number) => low + (high - low) * quality;
  return {
    blue: PUMP,
    green: phosphor(between(559, 525 + 0.128 * warmth), between(91, 126)),
    red: phosphor(between(593, 636 + 0.05 * warmth), between(69, 99)),
  };
}

const PUMP = band((nm) => {
  const width_nm = nm < BLUE.peak_nm ? BLUE.left_nm : BLUE.right_nm;
  return (nm - BLUE.peak_nm) / width_nm;
});

function phosphor(peak_nm: number, width_nm: number): EmissionSpd {
  // Width over wavenumber that is `width_nm` at the peak.
  const scale = peak_nm ** 2 / width_nm;
  return band((nm) => scale * (1 / nm - 1 / peak_nm));
}

function band(offset: (nm: number) => number): EmissionSpd {
  return emissionSpd(
    Float64Array.from({ length: GRID_COUNT }, (_, i) => Math.exp(-LN16 * offset(wavelengthNm(i)) ** 2)),
  );
}
