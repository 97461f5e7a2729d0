import { adaptationMatrix } from '../../engine/color/adapt';
import { labD65FromXyzD65 } from '../../engine/color/lab';
import { apply } from '../../engine/color/matrix3';
import type { Lab, Xyz } from '../../engine/color/types';
import { D65_2 } from '../../engine/color/whites';
import { GRID_COUNT } from '../../engine/spectrum/grid';
import { observer2 } from '../../engine/spectrum/observers';
import type { EmissionSpd, ReflectanceSpd } from '../../engine/spectrum/types';

/** Reads what a reflectance looks like in one place; null reads a perfect white held there. */
export type PlaceColors = (rho: ReflectanceSpd | null) => Lab<'D65-2'>;

/**
 * `installedLab` of one place for many reflectances: light, observer and adaptation become one weight per wavelength and
 * coordinate, so that each further curve costs three sums.
 * @param irradiance spectral irradiance of the place, which must be lit
 * @param adoptedWhite white of the setting, on any scale of Y
 */
export function placeColors(irradiance: EmissionSpd, adoptedWhite: Xyz<'setting-2'>): PlaceColors {
  const scale = 100 / adoptedWhite.y;
  const from = { x: adoptedWhite.x * scale, y: 100, z: adoptedWhite.z * scale };
  const adapt = adaptationMatrix(from, D65_2);
  let lit = 0;
  for (let i = 0; i < GRID_COUNT; i++) lit += irradiance[i]! * observer2.y[i]!;
  if (!(lit > 0)) throw new RangeError('a place without light has no color');
  const weights = new Float64Array(3 * GRID_COUNT);
  for (let i = 0; i < GRID_COUNT; i++) {
    const light = (100 * irradiance[i]!) / lit;
    const [x, y, z] = apply(adapt, [light * observer2.x[i]!, light * observer2.y[i]!, light * observer2.z[i]!]);
    weights[3 * i] = x;
    weights[3 * i + 1] = y;
    weights[3 * i + 2] = z;
  }
  return (rho) => {
    let x = 0;
    let y = 0;
    let z = 0;
    for (let i = 0; i < GRID_COUNT; i++) {
      const reflected = rho ? rho[i]! : 1;
      x += weights[3 * i]! * reflected;
      y += weights[3 * i + 1]! * reflected;
      z += weights[3 * i + 2]! * reflected;
    }
    return labD65FromXyzD65({ x, y, z });
  };
}
