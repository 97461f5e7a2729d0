import { labD65FromXyzD65, xyzD65FromLabD65 } from './lab';
import type { Lab } from './types';

/** Colors mixed as light by their weights, which need not sum to 1 but must not sum to 0. CIELAB D65. */
export function mixedLab(labs: readonly Lab<'D65-2'>[], weights: readonly number[]): Lab<'D65-2'> {
  if (labs.length === 1) return labs[0]!;
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  let [x, y, z] = [0, 0, 0];
  labs.forEach((lab, i) => {
    const xyz = xyzD65FromLabD65(lab);
    x += (weights[i]! / total) * xyz.x;
    y += (weights[i]! / total) * xyz.y;
    z += (weights[i]! / total) * xyz.z;
  });
  return labD65FromXyzD65({ x, y, z });
}

/** A color and its part of a surface, 0-1. */
export interface WeighedLab {
  readonly lab: Lab<'D65-2'>;
  readonly share: number;
}

/** The area mean of colors, mixed as light by their shares. CIELAB D65. */
export const meanLab = (colors: readonly WeighedLab[]): Lab<'D65-2'> =>
  mixedLab(
    colors.map(({ lab }) => lab),
    colors.map(({ share }) => share),
  );
