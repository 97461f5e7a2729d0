import { labD65FromXyzD65, xyzD65FromLabD65 } from '../../src/engine/color/lab';
import type { Lab } from '../../src/engine/color/types';

/** Color of an area from its parts, mixed in linear light. */
export function mixInLight(parts: readonly { readonly lab: Lab<'D65-2'>; readonly share: number }[]): Lab<'D65-2'> {
  const sum = { x: 0, y: 0, z: 0 };
  for (const { lab, share } of parts) {
    const { x, y, z } = xyzD65FromLabD65(lab);
    sum.x += share * x;
    sum.y += share * y;
    sum.z += share * z;
  }
  return labD65FromXyzD65(sum);
}
