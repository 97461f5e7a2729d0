import { adaptationMatrix } from '../color/adapt';
import { labD65FromXyzD65 } from '../color/lab';
import type { Lab } from '../color/types';
import { D65_2 } from '../color/whites';
import { whiteOf } from '../color/xyz';
import { GRID_COUNT } from '../spectrum/grid';
import { observer2 } from '../spectrum/observers';
import type { EmissionSpd, ReflectanceSpd } from '../spectrum/types';

const rowsByLight = new WeakMap<EmissionSpd, Float64Array>();

/**
 * Colour that a surface shows under a light to an eye fully adapted to it: tristimulus values of the 2 degree observer,
 * CAT16 with D = 1 from the light's white to D65, CIELAB. Light, observer and adaptation are folded into one table per
 * light, remembered by the light's array, so that many curves under one light cost little. Do not write to a light.
 */
export function labUnder(rho: ReflectanceSpd, spd: EmissionSpd): Lab<'D65-2'> {
  const rows = rowsUnder(spd);
  let x = 0;
  let y = 0;
  let z = 0;
  for (let i = 0; i < GRID_COUNT; i++) {
    const value = rho[i]!;
    x += rows[3 * i]! * value;
    y += rows[3 * i + 1]! * value;
    z += rows[3 * i + 2]! * value;
  }
  return labD65FromXyzD65({ x, y, z });
}

/** Weights per grid sample, three in a row: adapted X, Y, Z, with Y = 100 for the perfect diffuser. */
function rowsUnder(spd: EmissionSpd): Float64Array {
  const known = rowsByLight.get(spd);
  if (known) return known;
  const toD65 = adaptationMatrix(whiteOf(spd, observer2), D65_2);
  let perfect = 0;
  for (let i = 0; i < GRID_COUNT; i++) perfect += spd[i]! * observer2.y[i]!;
  const rows = new Float64Array(3 * GRID_COUNT);
  for (let i = 0; i < GRID_COUNT; i++) {
    const scale = (100 * spd[i]!) / perfect;
    for (let r = 0; r < 3; r++) {
      rows[3 * i + r] =
        scale *
        (toD65[3 * r]! * observer2.x[i]! + toD65[3 * r + 1]! * observer2.y[i]! + toD65[3 * r + 2]! * observer2.z[i]!);
    }
  }
  rowsByLight.set(spd, rows);
  return rows;
}
