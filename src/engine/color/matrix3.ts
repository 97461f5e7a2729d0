import type { Matrix3 } from './types';

type Triple = readonly [number, number, number];

/** Matrix times column vector. */
export function apply(m: Matrix3, v: Triple): [number, number, number] {
  return [
    m[0] * v[0] + m[1] * v[1] + m[2] * v[2],
    m[3] * v[0] + m[4] * v[1] + m[5] * v[2],
    m[6] * v[0] + m[7] * v[1] + m[8] * v[2],
  ];
}

/** One row (0, 3 or 6: where it begins) of `apply`, for loops that make no arrays. */
export const applyRow = (m: Matrix3, begin: 0 | 3 | 6, x: number, y: number, z: number): number =>
  m[begin] * x + m[(begin + 1) as 1] * y + m[(begin + 2) as 2] * z;

/** Matrix product a b: first b, then a. */
export function multiply(a: Matrix3, b: Matrix3): Matrix3 {
  const cell = (row: number, column: number) =>
    a[row * 3]! * b[column]! + a[row * 3 + 1]! * b[3 + column]! + a[row * 3 + 2]! * b[6 + column]!;
  return [cell(0, 0), cell(0, 1), cell(0, 2), cell(1, 0), cell(1, 1), cell(1, 2), cell(2, 0), cell(2, 1), cell(2, 2)];
}

/** Matrix with `v` on its diagonal. */
export const diagonal = (v: Triple): Matrix3 => [v[0], 0, 0, 0, v[1], 0, 0, 0, v[2]];

/** Inverse by cofactors. A singular matrix is a bug in the caller and throws. */
export function inverse(m: Matrix3): Matrix3 {
  const [a, b, c, d, e, f, g, h, i] = m;
  const c0 = e * i - f * h;
  const c1 = f * g - d * i;
  const c2 = d * h - e * g;
  const determinant = a * c0 + b * c1 + c * c2;
  if (determinant === 0) throw new RangeError('a singular matrix has no inverse');
  const s = 1 / determinant;
  return [
    c0 * s,
    (c * h - b * i) * s,
    (b * f - c * e) * s,
    c1 * s,
    (a * i - c * g) * s,
    (c * d - a * f) * s,
    c2 * s,
    (b * g - a * h) * s,
    (a * e - b * d) * s,
  ];
}
