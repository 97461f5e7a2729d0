import { apply } from '../../engine/color/matrix3';
import type { Matrix3 } from '../../engine/color/types';
import { BAND_COUNT, bandColorMatrix, directColor } from '../../engine/light/bands';
import { observer2 } from '../../engine/spectrum/observers';
import type { EmissionSpd, ReflectanceSpd } from '../../engine/spectrum/types';

/** Exposed linear sRGB of 1 lx of direct light of spectrum `perLux` reflected by `rho` (null: a perfect white). */
export function exposedColor(
  perLux: EmissionSpd,
  rho: ReflectanceSpd | null,
  exposure: Matrix3,
): [number, number, number] {
  const [x, y, z] = directColor(perLux, rho, observer2);
  return apply(exposure, [x!, y!, z!]);
}

/** The same for indirect light given in bands: BAND_COUNT x 3, so that colour = sum over bands of t_k row_k. */
export function exposedBandColors(
  perLux: EmissionSpd,
  rho: ReflectanceSpd,
  exposure: Matrix3,
  level: number,
): Float32Array {
  const xyz = bandColorMatrix(perLux, rho, observer2);
  const out = new Float32Array(BAND_COUNT * 3);
  for (let at = 0; at < out.length; at += 3) {
    const [r, g, b] = apply(exposure, [xyz[at]!, xyz[at + 1]!, xyz[at + 2]!]);
    out[at] = r * level;
    out[at + 1] = g * level;
    out[at + 2] = b * level;
  }
  return out;
}
