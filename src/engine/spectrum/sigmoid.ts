import { GRID_COUNT } from './grid';
import type { TristimulusWeights } from './tristimulus-weights';

const MAX_ITERATIONS = 100;
/** Of the cube roots of X/Xn, Y/Yn, Z/Zn; 1e-10 is 1e-8 in L*. */
const TOLERANCE = 1e-10;

/**
 * Sigmoid of a parabola over wavelength (Jakob and Hanika 2019): rho = 1/2 + u / (2 sqrt(1 + u^2)),
 * u = c0 t^2 + c1 t + c2, t from 0 at 380 nm to 1 at 780 nm. One edge or one hump: close to woods.
 * Gauss-Newton on the cube roots of the tristimulus ratios (CIELAB's scale), damped as Levenberg and Marquardt do.
 * `target` is X, Y, Z with 1 for the perfect diffuser. Writes the curve into `out` from `at` on; false, writing nothing,
 * when none is found.
 */
export function writeSigmoid(
  target: Float64Array,
  weights: TristimulusWeights,
  out: Float64Array,
  at: number,
): boolean {
  for (let r = 0; r < 3; r++) wanted[r] = Math.cbrt(target[r]! / weights.white[r]!);
  const y = target[1]!;
  // The flat curve of the same Y: rho = 1/2 + u / (2 sqrt(1 + u^2)) solved for u.
  c[0] = 0;
  c[1] = 0;
  c[2] = (y - 0.5) / Math.sqrt(y * (1 - y));
  let [state, next] = EVALUATIONS;
  evaluate(c, weights, state);
  let damping = 1e-4;
  for (let iteration = 0; iteration < MAX_ITERATIONS; iteration++) {
    if (state.worst < TOLERANCE) {
      writeCurve(out, at);
      return true;
    }
    if (!dampedStep(state, damping)) return false;
    for (let k = 0; k < 3; k++) tried[k] = c[k]! + step[k]!;
    evaluate(tried, weights, next);
    if (next.sum < state.sum) {
      c.set(tried);
      [state, next] = [next, state];
      damping = Math.max(damping / 10, 1e-16);
    } else {
      damping *= 10;
      if (damping > 1e12) return false;
    }
  }
  return false;
}

interface Evaluation {
  readonly residual: Float64Array;
  /** 3 x 3, row major: residual by coefficient. */
  readonly jacobian: Float64Array;
  sum: number;
  worst: number;
}

// Worked in, call by call.
const wanted = new Float64Array(3);
const c = new Float64Array(3);
const tried = new Float64Array(3);
const step = new Float64Array(3);
const xyz = new Float64Array(3);
const evaluation = (): Evaluation => ({
  residual: new Float64Array(3),
  jacobian: new Float64Array(9),
  sum: 0,
  worst: 0,
});
const EVALUATIONS: readonly [Evaluation, Evaluation] = [evaluation(), evaluation()];

function evaluate(at: Float64Array, weights: TristimulusWeights, into: Evaluation): void {
  const { residual, jacobian } = into;
  xyz.fill(0);
  jacobian.fill(0);
  for (let i = 0; i < GRID_COUNT; i++) {
    const t = i / (GRID_COUNT - 1);
    const u = (at[0]! * t + at[1]!) * t + at[2]!;
    const root = Math.sqrt(1 + u * u);
    const rho = 0.5 + u / (2 * root);
    const slope = 1 / (2 * root * root * root);
    for (let r = 0; r < 3; r++) {
      const weight = weights.rows[3 * i + r]!;
      xyz[r] = xyz[r]! + weight * rho;
      jacobian[3 * r] = jacobian[3 * r]! + weight * slope * t * t;
      jacobian[3 * r + 1] = jacobian[3 * r + 1]! + weight * slope * t;
      jacobian[3 * r + 2] = jacobian[3 * r + 2]! + weight * slope;
    }
  }
  into.sum = 0;
  into.worst = 0;
  for (let r = 0; r < 3; r++) {
    const root = Math.cbrt(xyz[r]! / weights.white[r]!);
    const derivative = 1 / (3 * root * root * weights.white[r]!);
    for (let k = 0; k < 3; k++) jacobian[3 * r + k] = jacobian[3 * r + k]! * derivative;
    residual[r] = root - wanted[r]!;
    into.sum += residual[r]! ** 2;
    into.worst = Math.max(into.worst, Math.abs(residual[r]!));
  }
}

/** Sets `step` to the solution of (J'J + damping diag(J'J)) step = -J' residual, by Cramer's rule; false when singular. */
function dampedStep({ jacobian: j, residual }: Evaluation, damping: number): boolean {
  const normal = (a: number, b: number) => j[a]! * j[b]! + j[3 + a]! * j[3 + b]! + j[6 + a]! * j[6 + b]!;
  const down = (a: number) => -(j[a]! * residual[0]! + j[3 + a]! * residual[1]! + j[6 + a]! * residual[2]!);
  const [a, b, c] = [normal(0, 0) * (1 + damping), normal(0, 1), normal(0, 2)];
  const [d, e, f] = [normal(1, 1) * (1 + damping), normal(1, 2), normal(2, 2) * (1 + damping)];
  const determinant = a * (d * f - e * e) - b * (b * f - e * c) + c * (b * e - d * c);
  if (!(Math.abs(determinant) > 0)) return false;
  const [p, q, s] = [down(0), down(1), down(2)];
  step[0] = (p * (d * f - e * e) - b * (q * f - e * s) + c * (q * e - d * s)) / determinant;
  step[1] = (a * (q * f - e * s) - p * (b * f - e * c) + c * (b * s - q * c)) / determinant;
  step[2] = (a * (d * s - q * e) - b * (b * s - q * c) + p * (b * e - d * c)) / determinant;
  return true;
}

function writeCurve(out: Float64Array, at: number): void {
  for (let i = 0; i < GRID_COUNT; i++) {
    const t = i / (GRID_COUNT - 1);
    const u = (c[0]! * t + c[1]!) * t + c[2]!;
    // For u << 0 the sum 1/2 + u / (2 root) cancels; this form does not.
    const root = Math.sqrt(1 + u * u);
    out[at + i] = u < 0 ? 1 / (2 * root * (root - u)) : 0.5 + u / (2 * root);
  }
}
