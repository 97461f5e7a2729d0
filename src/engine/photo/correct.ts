import { bradfordMatrix } from '../color/adapt';
import { labD65FromXyzD65 } from '../color/lab';
import { D65_2 } from '../color/whites';
import { blockX, blockY } from './patch';
import type { CardLight, Patch } from './types';

/**
 * Colors of a patch as a perfect diffuser in this light would make them D65, Y 100: three numbers per block. Bradford in tristimulus
 * values: over the lights and cameras of `tests/photo/methods` it errs least, less than scaling the picture's own red, green
 * and blue, and a little less than CAT16. `light` null: the picture's encoding is believed, its white taken for a perfect diffuser.
 */
export function correctedXyz(patch: Patch, light: CardLight | null): Float64Array {
  const out = new Float64Array(patch.xyz.length);
  const m = light ? bradfordMatrix(light.white, D65_2) : null;
  const scale = light ? 100 / light.white.y : 100;
  const slopes = light?.slopes ?? [];
  const isUneven = slopes.some(([alongX, alongY]) => alongX !== 0 || alongY !== 0);
  for (let at = 0; at < patch.inside.length; at++) {
    if (!patch.inside[at]) continue;
    let x = scale * patch.xyz[3 * at]!;
    let y = scale * patch.xyz[3 * at + 1]!;
    let z = scale * patch.xyz[3 * at + 2]!;
    if (m && light) {
      if (isUneven) {
        const [dx, dy] = [blockX(patch, at) - light.center.x, blockY(patch, at) - light.center.y];
        x *= Math.exp(-slopes[0]![0] * dx - slopes[0]![1] * dy);
        y *= Math.exp(-slopes[1]![0] * dx - slopes[1]![1] * dy);
        z *= Math.exp(-slopes[2]![0] * dx - slopes[2]![1] * dy);
      }
      const [r, g, b] = [x, y, z];
      x = m[0] * r + m[1] * g + m[2] * b;
      y = m[3] * r + m[4] * g + m[5] * b;
      z = m[6] * r + m[7] * g + m[8] * b;
    }
    out[3 * at] = x;
    out[3 * at + 1] = y;
    out[3 * at + 2] = z;
  }
  return out;
}

/** CIELAB (D65) of colors in a row of tristimulus values. */
export function labsOf(xyz: Float64Array): Float64Array {
  const out = new Float64Array(xyz.length);
  for (let i = 0; i < xyz.length; i += 3) {
    const { l, a, b } = labD65FromXyzD65({ x: xyz[i]!, y: xyz[i + 1]!, z: xyz[i + 2]! });
    out[i] = l;
    out[i + 1] = a;
    out[i + 2] = b;
  }
  return out;
}
