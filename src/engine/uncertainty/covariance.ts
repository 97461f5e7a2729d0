import { multiply } from '../color/matrix3';
import type { Lab, Matrix3 } from '../color/types';
import type { LabCovariance } from './lab-error';

type Nine = [number, number, number, number, number, number, number, number, number];

/** Covariance of the errors that `axes` make of three independent standard normal numbers. */
export const covarianceOf = (axes: Matrix3): LabCovariance => multiply(axes, transposed(axes));

const transposed = ([a, b, c, d, e, f, g, h, i]: Matrix3): Matrix3 => [a, d, g, b, e, h, c, f, i];

/** Sum of matrices; of covariances, that of the sum of independent errors. */
export function sumOf(matrices: readonly Matrix3[]): Matrix3 {
  const sum: Nine = [0, 0, 0, 0, 0, 0, 0, 0, 0];
  for (const matrix of matrices) for (let i = 0; i < 9; i++) sum[i] = sum[i]! + matrix[i]!;
  return sum;
}

/** Mean square deviation of equally likely colours from the one computed with; all zero where there are none. */
export function spreadAround(nominal: Lab<'D65-2'>, others: readonly Lab<'D65-2'>[]): LabCovariance {
  const size = 1 / Math.sqrt(Math.max(1, others.length));
  return sumOf(
    others.map((other) => {
      const [l, a, b] = [size * (other.l - nominal.l), size * (other.a - nominal.a), size * (other.b - nominal.b)];
      return [l * l, l * a, l * b, a * l, a * a, a * b, b * l, b * a, b * b];
    }),
  );
}
