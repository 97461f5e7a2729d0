import { labD65FromXyzD65, xyzD65FromLabD65 } from './lab';
import type { Lab } from './types';

/** Colors mixed as light by their weights, which need not sum to 1. CIELAB D65. */
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
