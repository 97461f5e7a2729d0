import { apply } from '../color/matrix3';
import type { Lab } from '../color/types';
import { standardNormals } from './draws';
import { errorAxes } from './lab-error';

/** A colour as said, how far it is known and what its error comes from. */
export interface UncertainLab {
  readonly lab: Lab<'D65-2'>;
  /** Root mean square of the whole colour difference, CIEDE2000 units. */
  readonly u: number;
  /** Of its lightness, where that is known apart (see `errorAxes`). */
  readonly lightness?: number | undefined;
  /** Errors of one source are the same three normal numbers, scaled to each colour; sources are independent. */
  readonly source: string;
}

/** What a number may be when the colours it is computed from may err. */
export interface Spread {
  /** Of the colours as said. */
  readonly nominal: number;
  readonly mean: number;
  /** Standard deviation about the mean. */
  readonly sigma: number;
  /** Root mean square of the difference from `nominal`: how far off the number said is. */
  readonly rms: number;
  /** The number below which it lies with a probability of 0-1; linear between draws. */
  readonly quantile: (probability: number) => number;
}

export interface PropagateOptions {
  /** Sets of colours tried: even, and at least six per source. */
  readonly count?: number;
  /** Same seed, same answer. */
  readonly seed?: number;
}

/**
 * Carries the errors of colours through any computation of numbers from them, by seeded draws (`standardNormals`): for a
 * computation that is linear in L*, a*, b* mean and sigma come out exactly, whatever the count.
 * `numbersOf` gets the colours in the order of `inputs`, L* held inside 0-100, and gives equally many finite numbers each time.
 */
export function propagate(
  inputs: readonly UncertainLab[],
  numbersOf: (labs: readonly Lab<'D65-2'>[]) => readonly number[],
  { count = 200, seed = 1 }: PropagateOptions = {},
): Spread[] {
  const sources = [...new Set(inputs.map((input) => input.source))];
  const placed = inputs.map(({ lab, u, lightness, source }) => ({
    lab,
    axes: errorAxes(lab, u, lightness),
    at: 3 * sources.indexOf(source),
  }));
  const normals = standardNormals(3 * sources.length, count, seed);
  const drawn = Array.from({ length: count }, (_, draw) => {
    const row = draw * 3 * sources.length;
    return numbersOf(
      placed.map(({ lab, axes, at }) => {
        const [l, a, b] = apply(axes, [normals[row + at]!, normals[row + at + 1]!, normals[row + at + 2]!]);
        return { l: Math.min(100, Math.max(0, lab.l + l)), a: lab.a + a, b: lab.b + b };
      }),
    );
  });
  return numbersOf(inputs.map((input) => input.lab)).map((nominal, i) =>
    spreadOf(
      nominal,
      drawn.map((numbers) => numbers[i]!),
    ),
  );
}

function spreadOf(nominal: number, values: readonly number[]): Spread {
  const sorted = Float64Array.from(values).sort();
  const mean = sorted.reduce((sum, value) => sum + value, 0) / sorted.length;
  const variance = sorted.reduce((sum, value) => sum + (value - mean) ** 2, 0) / sorted.length;
  return {
    nominal,
    mean,
    sigma: Math.sqrt(variance),
    rms: Math.sqrt(variance + (mean - nominal) ** 2),
    quantile: (probability) => {
      const place = Math.min(1, Math.max(0, probability)) * (sorted.length - 1);
      const below = sorted[Math.floor(place)]!;
      return below + (place - Math.floor(place)) * (sorted[Math.ceil(place)]! - below);
    },
  };
}
