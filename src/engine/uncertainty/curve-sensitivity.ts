import { labD65FromReflectance } from '../color/lab-from-reflectance';
import { BorderedTridiagonal } from '../spectrum/bordered-tridiagonal';
import { GRID_COUNT } from '../spectrum/grid';
import { WEIGHTS_D65_2 } from '../spectrum/tristimulus-weights';
import type { ReflectanceSpd } from '../spectrum/types';
import { xyzByLab } from './lab-slopes';

/** Least slope of reflectance in z taken for: a reading of 0 or 1 could not move at all. */
const MIN_SLOPE = 1e-3;

const system = new BorderedTridiagonal(GRID_COUNT, -2);

/**
 * How a reflectance moves when its colour under D65 was said wrong by one unit of L*, of a*, of b*: by the smoothest change
 * in z = atanh(2 rho - 1) with that colour, which is how the plausible curves themselves are made (Burns 2019). A measured
 * curve moves the same way and keeps its own features.
 */
export function curveSensitivity(spectrum: ReflectanceSpd): readonly [Float64Array, Float64Array, Float64Array] {
  const slopeInZ = spectrum.map((rho) => Math.max(MIN_SLOPE, 2 * rho * (1 - rho)));
  system.f.fill(0);
  for (let i = 0; i < GRID_COUNT; i++) {
    system.diagonal[i] = i === 0 || i === GRID_COUNT - 1 ? 2 : 4;
    for (let r = 0; r < 3; r++) system.border[3 * i + r] = slopeInZ[i]! * WEIGHTS_D65_2.rows[3 * i + r]!;
  }
  const wanted = xyzByLab(labD65FromReflectance(spectrum));
  const along = (column: number): Float64Array => {
    for (let r = 0; r < 3; r++) system.g[r] = wanted[3 * r + column]! / 100;
    if (!system.solve()) throw new RangeError('a reflectance that no change of color moves');
    return system.x.map((dz, i) => slopeInZ[i]! * dz);
  };
  return [along(0), along(1), along(2)];
}
