import { apply } from '../../engine/color/matrix3';
import type { Matrix3 } from '../../engine/color/types';
import { BAND_COUNT, bandColorMatrix } from '../../engine/light/bands';
import { observer2 } from '../../engine/spectrum/observers';
import type { EmissionSpd, ReflectanceSpd } from '../../engine/spectrum/types';

/** Exposed linear sRGB of light of spectrum `perLux` (1 lx) reflected by `rho` (null: a perfect white). */
export function directColor(perLux: EmissionSpd, rho: ReflectanceSpd | null, exposure: Matrix3): [number, number, number] {
  let x = 0;
  let y = 0;
  let z = 0;
  for (let i = 0; i < perLux.length; i++) {
    const power = perLux[i]! * (rho ? rho[i]! : 1);
    x += power * observer2.x[i]!;
    y += power * observer2.y[i]!;
    z += power * observer2.z[i]!;
  }
  const lm = 683 * 5;
  return apply(exposure, [x * lm, y * lm, z * lm]);
}

/** The same for indirect light given in bands: BAND_COUNT x 3, so that colour = sum over bands of t_k row_k. */
export function bandColors(perLux: EmissionSpd, rho: ReflectanceSpd, exposure: Matrix3, level: number): Float32Array {
  const xyz = bandColorMatrix(perLux, rho, observer2);
  const out = new Float32Array(BAND_COUNT * 3);
  for (let band = 0; band < BAND_COUNT; band++) {
    const [r, g, b] = apply(exposure, [xyz[band * 3]!, xyz[band * 3 + 1]!, xyz[band * 3 + 2]!]);
    out[band * 3] = r * level;
    out[band * 3 + 1] = g * level;
    out[band * 3 + 2] = b * level;
  }
  return out;
}
