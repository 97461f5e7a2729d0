import type { White, Xyz } from '../color/types';
import { failure, type Problem, type Result, success } from '../result';
import { GRID_COUNT } from './grid';
import { writeLhtss } from './lhtss';
import { writeSigmoid } from './sigmoid';
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
 * Whites are printed with two digits and from tables of other steps: what is this near to the perfect diffuser is meant as
 * it. 0.1 on the scale of 100, about 0.1 CIEDE2000; our judgment.
 */
const WHITE_TOLERANCE = 1e-3;

/**
 * A plausible reflectance with exactly the given colour under the light and observer of `weights`: a guess of the curve,
 * not of the colour. `xyz` is under the same light and observer and has Y = 100 for the perfect diffuser. Every value lies
 * strictly between 0 and 1. What misses the perfect diffuser by no more than rounding is drawn as it.
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
  const rho = new Float64Array(GRID_COUNT);
  if (writeReflectance(xyz, method, rho, 0, weights)) return success(rho as ReflectanceSpd);
  return failure(method === 'sigmoid' && holdInside(xyz, weights) ? noSigmoid(xyz) : outsideSolid(xyz));
}

/** The same, written into `out` from `at` on. False where there is no such curve; what is there then means nothing. */
export function writeReflectance(
  xyz: Xyz<White>,
  method: ReflectanceMethod,
  out: Float64Array,
  at: number,
  weights: TristimulusWeights = WEIGHTS_D65_2,
): boolean {
  const write = method === 'sigmoid' ? writeSigmoid : writeLhtss;
  if (holdInside(xyz, weights) && write(target, weights, out, at) && isPhysical(out, at)) return true;
  return holdAtWhite(xyz, weights) && write(target, weights, out, at) && isPhysical(out, at);
}

const target = new Float64Array(3);

/**
 * Sets `target` to tristimulus values on the scale 1. At the very ends of Y a neutral is drawn just inside; a tint there,
 * like anything beyond the perfect diffuser or no number at all, cannot be (false).
 */
function holdInside(xyz: Xyz<White>, weights: TristimulusWeights): boolean {
  target[0] = xyz.x / 100;
  target[1] = xyz.y / 100;
  target[2] = xyz.z / 100;
  if (!target.every(Number.isFinite)) return false;
  const y = target[1]!;
  if (y >= MIN_Y && y <= MAX_Y) return target[0]! > 0 && target[2]! > 0;
  const held = y < MIN_Y ? MIN_Y : MAX_Y;
  const isNeutral = target.every((value, r) => Math.abs(weights.white[r]! * held - value) < HELD_TOLERANCE);
  for (let r = 0; r < 3; r++) target[r] = weights.white[r]! * held;
  return isNeutral;
}

/** Sets `target` to the lightest neutral; false where the values are further from the perfect diffuser than rounding. */
function holdAtWhite(xyz: Xyz<White>, { white }: TristimulusWeights): boolean {
  const off = Math.max(
    Math.abs(xyz.x / 100 - white[0]!),
    Math.abs(xyz.y / 100 - white[1]!),
    Math.abs(xyz.z / 100 - white[2]!),
  );
  for (let r = 0; r < 3; r++) target[r] = white[r]! * MAX_Y;
  // Y of a white is 100 by definition: it is X and Z that are rounded.
  return off <= WHITE_TOLERANCE && xyz.y / 100 <= 1 + HELD_TOLERANCE;
}

function isPhysical(rho: Float64Array, at: number): boolean {
  for (let i = at; i < at + GRID_COUNT; i++) if (!(rho[i]! > 0 && rho[i]! < 1)) return false;
  return true;
}

export function outsideSolid(xyz: Xyz<White>): Problem<'outside-object-color-solid'> {
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
