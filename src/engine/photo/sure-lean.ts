import { apply } from '../color/matrix3';
import type { Lab } from '../color/types';
import { undertoneOf } from '../naming/undertone';
import { errorAxes } from '../uncertainty/lab-error';

/** Errors that are tried: one standard deviation either way along each axis, and both hues together. */
const TRIED: readonly (readonly [number, number, number])[] = [
  [1, 0, 0],
  [-1, 0, 0],
  [0, 1, 0],
  [0, -1, 0],
  [0, 0, 1],
  [0, 0, -1],
  [0, 0.7, 0.7],
  [0, 0.7, -0.7],
  [0, -0.7, 0.7],
  [0, -0.7, -0.7],
];

/** Whether a color known to `uncertaintyDe00` keeps its undertone's word under usual errors. One standard deviation is our judgment. */
export function isLeanSure(lab: Lab<'D65-2'>, uncertaintyDe00: number): boolean {
  const axes = errorAxes(lab, uncertaintyDe00);
  const { word } = undertoneOf(lab);
  return TRIED.every((normals) => {
    const [l, a, b] = apply(axes, normals);
    const other = { l: Math.min(100, Math.max(0, lab.l + l)), a: lab.a + a, b: lab.b + b };
    return undertoneOf(other).word === word;
  });
}
