import type { Lab } from '../../src/engine/color/types';
import { mulberry32 } from '../../src/engine/random';
import { errorAxes } from '../../src/engine/uncertainty/lab-error';

/** Colours that ask different things of a propagation; all made up. */
export const COLORS = {
  'near-neutral white': { l: 93, a: -0.6, b: 2.5 },
  'mid gray': { l: 62, a: 0.4, b: -1.2 },
  wood: { l: 55, a: 10, b: 24 },
  'dark blue-green': { l: 28, a: -9, b: -10 },
  // A yellow of this lightness may have a chroma of some 110 at most.
  'yellow near the edge of surface colors': { l: 82, a: 4, b: 95 },
} as const satisfies Readonly<Record<string, Lab<'D65-2'>>>;

/** Plain standard normal numbers by the Box-Muller transform: no stratification, no correction. */
export function plainNormals(seed: number): () => number {
  const uniform = mulberry32(seed);
  return () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform());
}

/** A colour with the error of three numbers, written out apart from `drawLab`. */
export function erring(lab: Lab<'D65-2'>, u: number, [p, q, r]: readonly number[]): Lab<'D65-2'> {
  const axes = errorAxes(lab, u);
  const error = [0, 1, 2].map((row) => axes[3 * row]! * p! + axes[3 * row + 1]! * q! + axes[3 * row + 2]! * r!);
  return { l: Math.min(100, Math.max(0, lab.l + error[0]!)), a: lab.a + error[1]!, b: lab.b + error[2]! };
}

/** Root mean square. */
export const rms = (values: readonly number[]): number =>
  Math.sqrt(values.reduce((sum, value) => sum + value * value, 0) / values.length);
