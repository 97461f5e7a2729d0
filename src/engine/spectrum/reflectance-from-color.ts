import type { Xyz } from '../color/types';
import { failure, type Problem, type Result, success } from '../result';
import { lhtssReflectance } from './lhtss';
import { sigmoidReflectance } from './sigmoid';
import { WEIGHTS_D65_2 } from './tristimulus-weights';
import type { ReflectanceSpd } from './types';

/** How a plausible reflectance is made from a colour: 'lhtss' for most finishes, 'sigmoid' for wood. */
export type ReflectanceMethod = 'lhtss' | 'sigmoid';

/** Y is held inside these limits (1 = perfect diffuser): pure black and pure white have no curve strictly inside 0-1. */
const MIN_Y = 1e-6;
const MAX_Y = 1 - 1e-6;
/** How far holding may move a value; 2e-6 is 0.002 in L* at black, where it is seen least. */
const HELD_TOLERANCE = 2e-6;

/**
 * A plausible reflectance with exactly the given colour under D65, 2 degrees: a guess of the curve, not of the colour.
 * `xyz` has Y = 100 for the perfect diffuser. Every value lies strictly between 0 and 1.
 * Problems: 'outside-object-color-solid' when no surface can have the colour; 'no-sigmoid' when one may, but not with
 * this shape of curve.
 * Methods: Burns 2019 (lhtss), Jakob and Hanika 2019 (sigmoid). Typical error under other lights 0.7 CIEDE2000,
 * 2 at the 95th percentile of paints.
 */
export function reflectanceFromXyz(xyz: Xyz<'D65-2'>, method: ReflectanceMethod): Result<ReflectanceSpd> {
  const target = heldInside(xyz);
  if (!target) return failure(outsideSolid(xyz));
  if (method === 'sigmoid') {
    const rho = sigmoidReflectance(target, WEIGHTS_D65_2);
    return rho && isPhysical(rho) ? success(rho) : failure(noSigmoid(xyz));
  }
  const rho = lhtssReflectance(target, WEIGHTS_D65_2);
  return rho && isPhysical(rho) ? success(rho) : failure(outsideSolid(xyz));
}

/**
 * Tristimulus values on the scale 1. At the very ends of Y a neutral is drawn just inside; a tint there, like anything
 * beyond the perfect diffuser, cannot be (null).
 */
function heldInside(xyz: Xyz<'D65-2'>): Float64Array | null {
  const target = Float64Array.of(xyz.x / 100, xyz.y / 100, xyz.z / 100);
  const y = target[1]!;
  if (y >= MIN_Y && y <= MAX_Y) return target[0]! > 0 && target[2]! > 0 ? target : null;
  const held = WEIGHTS_D65_2.white.map((value) => value * (y < MIN_Y ? MIN_Y : MAX_Y));
  return held.every((value, r) => Math.abs(value - target[r]!) < HELD_TOLERANCE) ? held : null;
}

function isPhysical(rho: ReflectanceSpd): boolean {
  return rho.every((value) => value > 0 && value < 1);
}

function outsideSolid(xyz: Xyz<'D65-2'>): Problem<'outside-object-color-solid'> {
  return {
    code: 'outside-object-color-solid',
    text: `No surface can have the color ${inWords(xyz)}: it is more saturated than its lightness allows.`,
    remedy: 'Check the numbers: lightness 0-100, a* and b* within what a real sample of that lightness can have.',
  };
}

function noSigmoid(xyz: Xyz<'D65-2'>): Problem<'no-sigmoid'> {
  return {
    code: 'no-sigmoid',
    text: `No curve with a single edge or hump has the color ${inWords(xyz)}.`,
    remedy: 'Use the general method for this color.',
  };
}

const inWords = (xyz: Xyz<'D65-2'>): string =>
  `X ${xyz.x.toFixed(2)}, Y ${xyz.y.toFixed(2)}, Z ${xyz.z.toFixed(2)} (D65, 2 degrees)`;
