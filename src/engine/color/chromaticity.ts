import type { Chromaticity, White, Xyz } from './types';

/** CIE chromaticity x, y. Black has none: the sum must be above 0. */
export function chromaticityFromXyz(xyz: Xyz<White>): Chromaticity {
  const sum = xyz.x + xyz.y + xyz.z;
  return { x: xyz.x / sum, y: xyz.y / sum };
}

/** CIE 1960 u, v, in which distances from the Planckian locus are read (CIE 15). */
export function uv1960FromXy({ x, y }: Chromaticity): { readonly u: number; readonly v: number } {
  const scale = 1 / (-2 * x + 12 * y + 3);
  return { u: 4 * x * scale, v: 6 * y * scale };
}
