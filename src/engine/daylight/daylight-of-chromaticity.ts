import type { Chromaticity } from '../color/types';
import { S0, S1, S2 } from '../spectrum/daylight-components.data';
import { emissionSpd, GRID_COUNT } from '../spectrum/grid';
import { type Observer, observer2 } from '../spectrum/observers';
import type { EmissionSpd } from '../spectrum/types';

/**
 * Spectrum of daylight with a given chromaticity (2 degree observer): S0 + M1 S1 + M2 S2 with the components of CIE 15, as
 * for the D illuminants, but M1 and M2 solved on this grid, so that the chromaticity is met exactly and may leave the
 * daylight locus and its 4000-25000 K. Where the sum would fall below zero it is held there; then the color is
 * missed a little. The scale is that of CIE 15, near 100 at 560 nm.
 */
export function daylightSpdOfChromaticity({ x, y }: Chromaticity): EmissionSpd {
  const [a, b, c] = [S0, S1, S2].map((component) => tristimulus(component, observer2)) as [Sums, Sums, Sums];
  // X = x (X + Y + Z) and Y = y (X + Y + Z), both linear in M1 and M2.
  const missX = (sums: Sums) => sums.x - x * sums.all;
  const missY = (sums: Sums) => sums.y - y * sums.all;
  const determinant = missX(b) * missY(c) - missX(c) * missY(b);
  const m1 = (missX(c) * missY(a) - missX(a) * missY(c)) / determinant;
  const m2 = (missX(a) * missY(b) - missX(b) * missY(a)) / determinant;
  const spd = new Float64Array(GRID_COUNT);
  for (let i = 0; i < GRID_COUNT; i++) spd[i] = Math.max(0, at(S0, i) + m1 * at(S1, i) + m2 * at(S2, i));
  return emissionSpd(spd);
}

interface Sums {
  readonly x: number;
  readonly y: number;
  readonly all: number;
}

function tristimulus(component: readonly number[], observer: Observer): Sums {
  let [x, y, z] = [0, 0, 0];
  for (let i = 0; i < GRID_COUNT; i++) {
    x += at(component, i) * observer.x[i]!;
    y += at(component, i) * observer.y[i]!;
    z += at(component, i) * observer.z[i]!;
  }
  return { x, y, all: x + y + z };
}

/** Components are tabulated at 10 nm; CIE 15 prescribes linear interpolation between them. */
const at = (component: readonly number[], i: number): number => (component[i >> 1]! + component[(i + 1) >> 1]!) / 2;
