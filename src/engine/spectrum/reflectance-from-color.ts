import type { White, Xyz } from '../color/types';
import { failure, type Problem, type Result, success } from '../result';
import { lhtssReflectance } from './lhtss';
import { sigmoidReflectance } from './sigmoid';
import { type TristimulusWeights, WEIGHTS_D65_2 } from './tristimulus-weights';
import type { ReflectanceSpd } from './types';

/** How a plausible reflectance is made from a colour: 'lhtss' for most finishes, 'sigmoid' for wood. */
export type ReflectanceMethod = 'lhtss' | 'sigmoid';

/** Y is held inside these limits (1 = perfect diffuser): pure black and pure white have no curve strictly inside 0-1. */
const MIN_Y = 1e-6;
const MAX_Y = 1 - 1e-6;
/** How far holding may move a value; 2e-6 is 0.002 in L* at black, where it is seen least. */
const HELD_TOLERANCE = 2e-6;

/**
 * A plausible reflectance with exactly the given colour under the light and observer of `weights`: a guess of the curve,
 * not of the colour. `xyz` is under the same light and observer and has Y = 100 for the perfect diffuser. Every value lies
 * strictly between 0 and 1.
 * Problems: 'outside-object-color-solid' when no surface can have the colour; 'no-sigmoid' when one may, but not with
 * this shape of curve.
 * Methods: Burns 2019 (lhtss), Jakob and Hanika 2019 (sigmoid). Typical error under other lights 0.7 CIEDE2000,
 * 2 at the 95th percentile of paints.
 */
export function reflectanceFromXyz(
  xyz: Xyz<White>,
  method: ReflectanceMethod,
  weights: TristimulusWeights = WEIGHTS_D65_2,
): Result<ReflectanceSpd> {
  const target = heldInside(xyz, weights);
  if (!target) return failure(outsideSolid(xyz));
  if (method === 'sigmoid') {
    const rho = sigmoidReflectance(target, weights);
    return rho && isPhysical(rho) ? success(rho) : failure(noSigmoid(xyz));
  }
  const rho = lhtssReflectance(target, weights);
  return rho && isPhysical(rho) ? success(rho) : failure(outsideSolid(xyz));
}

/**
 * Tristimulus values on the scale 1. At the very ends of Y a neutral is drawn just inside; a tint there, like anything
 * beyond the perfect diffuser or no number at all, cannot be (null).
 */
function heldInside(xyz: Xyz<White>, weights: TristimulusWeights): Float64Array | null {
  const target = Float64Array.of(xyz.x / 100, xyz.y / 100, xyz.z / 100);
  if (!target.every(Number.isFinite)) return null;
  const y = target[1]!;
  if (y >= MIN_Y && y <= MAX_Y) return target[0]! > 0 && target[2]! > 0 ? target : null;
  const held = weights.white.map((value) => value * (y < MIN_Y ? MIN_Y : MAX_Y));
  return held.every((value, r) => Math.abs(value - target[r]!) < HELD_TOLERANCE) ? held : null;
}

function isPhysical(rho: ReflectanceSpd): boolean {
  return rho.every((value) => value > 0 && value < 1);
}

function outsideSolid(xyz: Xyz<White>): Problem<'outside-object-color-solid'> {
  return {
    code: 'outside-object-color-solid',
    text: `No surface can have the color ${inWords(xyz)}: ${whyNot(xyz)}.`,
    remedy: OUTSIDE_REMEDY,
  };
}

export const OUTSIDE_REMEDY =
  'Check the numbers: lightness 0-100, and no more chroma than a real sample of that lightness can have.';

/** Why no surface has a colour that lies outside the object colour solid; `xyz` with Y = 100 for the perfect diffuser. */
export function whyNot(xyz: Xyz<White>): string {
  if (![xyz.x, xyz.y, xyz.z].every(Number.isFinite)) return 'it is not a number';
  if (xyz.y > 100 * MAX_Y) return 'it would send back more light than falls on it';
  return 'it is more saturated than its lightness allows';
}

function noSigmoid(xyz: Xyz<White>): Problem<'no-sigmoid'> {
  return {
    code: 'no-sigmoid',
    text: `No curve with a single edge or hump has the color ${inWords(xyz)}.`,
    remedy: 'Use the general method for this color.',
  };
}

const inWords = ({ x, y, z }: Xyz<White>): string => `X ${x.toFixed(2)}, Y ${y.toFixed(2)}, Z ${z.toFixed(2)}`;
