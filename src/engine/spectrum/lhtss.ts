import { BorderedTridiagonal } from './bordered-tridiagonal';
import { GRID_COUNT } from './grid';
import type { TristimulusWeights } from './tristimulus-weights';
import type { ReflectanceSpd } from './types';

/** Largest step of any z in one iteration: keeps Newton from jumping into the flat tails of tanh. */
const MAX_STEP = 2;
const MAX_ITERATIONS = 40;
const TOLERANCE = 1e-11;

const newton = new BorderedTridiagonal(GRID_COUNT, -2);

/**
 * Least hyperbolic tangent slope squared (Burns 2019; Color Res. Appl. 45, 2020): of all curves rho = (tanh z + 1) / 2
 * with the wanted tristimulus values, the one whose z is smoothest. Always 0 < rho < 1; a neutral is exactly flat.
 * `target` is X, Y, Z with 1 for the perfect diffuser. Null when Newton's method finds no such curve, which is so
 * outside the object colour solid.
 */
export function lhtssReflectance(target: Float64Array, weights: TristimulusWeights): ReflectanceSpd | null {
  const z = new Float64Array(GRID_COUNT);
  const lambda = new Float64Array(3);
  if (solveFrom(flatStart(z, lambda, target), lambda, target, weights)) return reflectanceFromZ(z);

  // A saturated colour may be too far for one go: walk there from the gray of the same Y.
  const gray = Float64Array.from(weights.white, (value) => value * target[1]!);
  for (const steps of [4, 16, 64]) {
    flatStart(z, lambda, target);
    const between = new Float64Array(3);
    let arrived = true;
    for (let step = 1; step <= steps && arrived; step++) {
      for (let r = 0; r < 3; r++) between[r] = gray[r]! + ((target[r]! - gray[r]!) * step) / steps;
      arrived = solveFrom(z, lambda, between, weights);
    }
    if (arrived) return reflectanceFromZ(z);
  }
  return null;
}

function flatStart(z: Float64Array, lambda: Float64Array, target: Float64Array): Float64Array {
  lambda.fill(0);
  return z.fill(Math.atanh(2 * target[1]! - 1));
}

/** Newton's method in place on z and the three multipliers. False when it does not converge. */
function solveFrom(z: Float64Array, lambda: Float64Array, target: Float64Array, weights: TristimulusWeights): boolean {
  const rows = weights.rows;
  for (let iteration = 0; iteration < MAX_ITERATIONS; iteration++) {
    let x = 0;
    let y = 0;
    let zSum = 0;
    let worstStationary = 0;
    for (let i = 0; i < GRID_COUNT; i++) {
      const tanh = Math.tanh(z[i]!);
      const half = (1 - tanh * tanh) / 2;
      const [tx, ty, tz] = [rows[3 * i]!, rows[3 * i + 1]!, rows[3 * i + 2]!];
      const rho = (tanh + 1) / 2;
      x += tx * rho;
      y += ty * rho;
      zSum += tz * rho;
      const pull = tx * lambda[0]! + ty * lambda[1]! + tz * lambda[2]!;
      const ends = i === 0 || i === GRID_COUNT - 1;
      const before = i === 0 ? 0 : z[i - 1]!;
      const after = i === GRID_COUNT - 1 ? 0 : z[i + 1]!;
      const stationary = (ends ? 2 : 4) * z[i]! - 2 * (before + after) + half * pull;
      worstStationary = Math.max(worstStationary, Math.abs(stationary));
      newton.diagonal[i] = (ends ? 2 : 4) - 2 * half * tanh * pull;
      newton.border[3 * i] = half * tx;
      newton.border[3 * i + 1] = half * ty;
      newton.border[3 * i + 2] = half * tz;
      newton.f[i] = -stationary;
    }
    newton.g[0] = target[0]! - x;
    newton.g[1] = target[1]! - y;
    newton.g[2] = target[2]! - zSum;
    const worst = Math.max(Math.abs(newton.g[0]!), Math.abs(newton.g[1]!), Math.abs(newton.g[2]!));
    if (worst < TOLERANCE && worstStationary < 1e3 * TOLERANCE) return true;
    if (!newton.solve()) return false;

    let longest = 0;
    for (let i = 0; i < GRID_COUNT; i++) longest = Math.max(longest, Math.abs(newton.x[i]!));
    if (!Number.isFinite(longest)) return false;
    const damping = longest > MAX_STEP ? MAX_STEP / longest : 1;
    for (let i = 0; i < GRID_COUNT; i++) z[i] = z[i]! + damping * newton.x[i]!;
    for (let r = 0; r < 3; r++) lambda[r] = lambda[r]! + damping * newton.y[r]!;
  }
  return false;
}

function reflectanceFromZ(z: Float64Array): ReflectanceSpd {
  // The logistic form of (tanh z + 1) / 2 keeps small reflectances exact.
  return z.map((value) => 1 / (1 + Math.exp(-2 * value))) as ReflectanceSpd;
}
