/** Value at a share 0-1 of the way up a list that is in order; 0 where it is empty. */
export function quantileOf(ordered: Float64Array, share: number): number {
  return ordered.length ? ordered[Math.round(share * (ordered.length - 1))]! : 0;
}

/** Median of some numbers; 0 where there are none. */
export const medianOf = (values: ArrayLike<number>): number => quantileOf(Float64Array.from(values).sort(), 0.5);

/** Standard deviation of normal noise with outliers: 1.4826 times the median distance from the median. */
export function robustDeviation(values: ArrayLike<number>): number {
  const median = medianOf(values);
  return 1.4826 * medianOf(Float64Array.from(values, (value) => Math.abs(value - median)));
}

/** A plane v = level + alongX dx + alongY dy, with the standard errors of its two slopes. */
export interface Plane {
  readonly level: number;
  readonly alongX: number;
  readonly alongY: number;
  /** Covariance of the two slopes: xx, xy, yy. */
  readonly slopeCovariance: readonly [number, number, number];
  /** Standard deviation of the values about the plane. */
  readonly deviation: number;
}

/**
 * Least-squares plane through `values` at places measured from some point, where `level` holds; no slope where all lie in one line
 * or place. The point need not be their middle: two cards of different sizes have theirs nearer the larger one.
 */
export function fitPlane(dx: Float64Array, dy: Float64Array, values: Float64Array): Plane {
  const count = values.length;
  const [middleX, middleY, mean] = [meanOf(dx), meanOf(dy), meanOf(values)];
  let [xx, xy, yy, xv, yv] = [0, 0, 0, 0, 0];
  for (let i = 0; i < count; i++) {
    const [x, y, v] = [dx[i]! - middleX, dy[i]! - middleY, values[i]! - mean];
    xx += x * x;
    xy += x * y;
    yy += y * y;
    xv += x * v;
    yv += y * v;
  }
  const determinant = xx * yy - xy * xy;
  if (!(determinant > 1e-9 * (xx + yy) ** 2)) {
    return { level: mean, alongX: 0, alongY: 0, slopeCovariance: [0, 0, 0], deviation: 0 };
  }
  const alongX = (yy * xv - xy * yv) / determinant;
  const alongY = (xx * yv - xy * xv) / determinant;
  const level = mean - alongX * middleX - alongY * middleY;
  let squares = 0;
  for (let i = 0; i < count; i++) squares += (values[i]! - level - alongX * dx[i]! - alongY * dy[i]!) ** 2;
  const variance = squares / Math.max(1, count - 3);
  return {
    level,
    alongX,
    alongY,
    slopeCovariance: [(variance * yy) / determinant, (-variance * xy) / determinant, (variance * xx) / determinant],
    deviation: Math.sqrt(variance),
  };
}

const meanOf = (values: Float64Array): number =>
  values.reduce((sum, value) => sum + value, 0) / Math.max(1, values.length);
