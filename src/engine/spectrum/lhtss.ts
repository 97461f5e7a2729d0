import { BorderedTridiagonal } from './bordered-tridiagonal';
import { GRID_COUNT } from './grid';
import type { TristimulusWeights } from './tristimulus-weights';
import type { ReflectanceSpd } from './types';

/** Largest step of any z in one iteration: keeps Newton from jumping into the flat tails of tanh. */
const MAX_STEP = 2;
const MAX_ITERATIONS = 40;
const TOLERANCE = 1e-11;

const newton = new BorderedTridiagonal(GRID_COUNT, -2);
const NO_SHAPE = new Float64Array(GRID_COUNT);

/**
 * Least hyperbolic tangent slope squared (Burns 2019; Color Res. Appl. 45, 2020): of all curves rho = (tanh z + 1) / 2
 * with the wanted tristimulus values, the one whose z is smoothest. Always 0 < rho < 1; a neutral is exactly flat.
 * With a `shape` (81 values on the scale of z; a constant added to it changes nothing) the slope of z - shape is least:
 * the curve keeps the features of the shape and departs from it as gently as the colour allows.
 * `target` is X, Y, Z with 1 for the perfect diffuser. Null when Newton's method finds no such curve, which is so
 * outside the object colour solid.
 */
export function lhtssReflectance(
  target: Float64Array,
  weights: TristimulusWeights,
  shape: Float64Array = NO_SHAPE,
): ReflectanceSpd | null {
  const rho = new Float64Array(GRID_COUNT);
  return writeLhtss(target, weights, rho, 0, shape) ? (rho as ReflectanceSpd) : null;
}

/** The same, written into `out` from `at` on; false, writing nothing, where there is no such curve. */
export function writeLhtss(
  target: Float64Array,
  weights: TristimulusWeights,
  out: Float64Array,
  at: number,
  shape: Float64Array = NO_SHAPE,
): boolean {
  if (!solve(target, weights, shape)) return false;
  for (let i = 0; i < GRID_COUNT; i++) out[at + i] = reflectanceOf(z[i]!);
  return true;
}

// Worked in, call by call.
const z = new Float64Array(GRID_COUNT);
const lambda = new Float64Array(3);
const start = new Float64Array(3);
const between = new Float64Array(3);

/** Sets `z` to the solution. */
function solve(target: Float64Array, weights: TristimulusWeights, shape: Float64Array): boolean {
  startFrom(shape, target, weights);
  if (solveFrom(target, weights, shape)) return true;
  if (isBeyondReach(target, weights)) return false;

  // A saturated colour may be too far for one go: walk there from the colour of the start, a gray where there is no shape.
  for (const steps of [4, 16, 64]) {
    startFrom(shape, target, weights);
    tristimulusOfZ(weights, start);
    let arrived = true;
    for (let step = 1; step <= steps && arrived; step++) {
      for (let r = 0; r < 3; r++) between[r] = start[r]! + ((target[r]! - start[r]!) * step) / steps;
      arrived = solveFrom(between, weights, shape);
    }
    if (arrived) return true;
    if (isBeyondReach(target, weights)) return false;
  }
  return false;
}

/**
 * Proof that no reflectance at all has the colour: seen along some direction it lies farther out than the best of them, 1
 * where that direction gains and 0 elsewhere (Schroedinger 1920). Where Newton's method fails for want of a curve, its
 * multipliers point along such a direction.
 */
function isBeyondReach(target: Float64Array, { rows }: TristimulusWeights): boolean {
  const wanted = -(lambda[0]! * target[0]! + lambda[1]! * target[1]! + lambda[2]! * target[2]!);
  let farthest = 0;
  let size = 0;
  for (let i = 0; i < GRID_COUNT; i++) {
    const gain = -(lambda[0]! * rows[3 * i]! + lambda[1]! * rows[3 * i + 1]! + lambda[2]! * rows[3 * i + 2]!);
    if (gain > 0) farthest += gain;
    size += Math.abs(gain);
  }
  return wanted > farthest + 1e-9 * size;
}

/** The inverse of rho = (tanh z + 1) / 2, for shapes taken from a curve. Every value strictly between 0 and 1. */
export const zFromReflectance = (rho: ReflectanceSpd): Float64Array =>
  Float64Array.from(rho, (value) => Math.log(value / (1 - value)) / 2);

/** The shape itself, moved to about the wanted Y. */
function startFrom(shape: Float64Array, target: Float64Array, weights: TristimulusWeights): void {
  lambda.fill(0);
  let level = Math.atanh(2 * target[1]! - 1);
  for (let i = 0; i < GRID_COUNT; i++) level -= weights.rows[3 * i + 1]! * shape[i]!;
  for (let i = 0; i < GRID_COUNT; i++) z[i] = level + shape[i]!;
}

function tristimulusOfZ(weights: TristimulusWeights, into: Float64Array): void {
  into.fill(0);
  for (let i = 0; i < GRID_COUNT; i++) {
    const rho = reflectanceOf(z[i]!);
    for (let r = 0; r < 3; r++) into[r] = into[r]! + weights.rows[3 * i + r]! * rho;
  }
}

/** Newton's method in place on z and the three multipliers. False when it does not converge. */
function solveFrom(target: Float64Array, weights: TristimulusWeights, shape: Float64Array): boolean {
  const rows = weights.rows;
  const { diagonal, border, f, g, x: stepZ, y: stepLambda } = newton;
  const last = GRID_COUNT - 1;
  for (let iteration = 0; iteration < MAX_ITERATIONS; iteration++) {
    const l0 = lambda[0]!;
    const l1 = lambda[1]!;
    const l2 = lambda[2]!;
    let x = 0;
    let y = 0;
    let zSum = 0;
    let worstStationary = 0;
    let before = 0;
    let here = z[0]! - shape[0]!;
    for (let i = 0; i < GRID_COUNT; i++) {
      const rho = reflectanceOf(z[i]!);
      const half = 2 * rho * (1 - rho);
      const tx = rows[3 * i]!;
      const ty = rows[3 * i + 1]!;
      const tz = rows[3 * i + 2]!;
      x += tx * rho;
      y += ty * rho;
      zSum += tz * rho;
      const pull = tx * l0 + ty * l1 + tz * l2;
      const bend = i === 0 || i === last ? 2 : 4;
      const after = i === last ? 0 : z[i + 1]! - shape[i + 1]!;
      const stationary = bend * here - 2 * (before + after) + half * pull;
      worstStationary = Math.max(worstStationary, Math.abs(stationary));
      diagonal[i] = bend - 2 * half * (2 * rho - 1) * pull;
      border[3 * i] = half * tx;
      border[3 * i + 1] = half * ty;
      border[3 * i + 2] = half * tz;
      f[i] = -stationary;
      before = here;
      here = after;
    }
    g[0] = target[0]! - x;
    g[1] = target[1]! - y;
    g[2] = target[2]! - zSum;
    const worst = Math.max(Math.abs(g[0]!), Math.abs(g[1]!), Math.abs(g[2]!));
    if (worst < TOLERANCE && worstStationary < 1e3 * TOLERANCE) return true;
    if (iteration % 8 === 7 && isBeyondReach(target, weights)) return false;
    if (!newton.solve()) return false;

    let longest = 0;
    for (let i = 0; i < GRID_COUNT; i++) longest = Math.max(longest, Math.abs(stepZ[i]!));
    if (!Number.isFinite(longest)) return false;
    const damping = longest > MAX_STEP ? MAX_STEP / longest : 1;
    for (let i = 0; i < GRID_COUNT; i++) z[i] = z[i]! + damping * stepZ[i]!;
    for (let r = 0; r < 3; r++) lambda[r] = lambda[r]! + damping * stepLambda[r]!;
  }
  return false;
}

/** (tanh z + 1) / 2 in its logistic form, which keeps small reflectances exact and is quicker. */
const reflectanceOf = (value: number): number => 1 / (1 + Math.exp(-2 * value));
