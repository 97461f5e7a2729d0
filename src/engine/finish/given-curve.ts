import { labD65FromHex } from '../color/display';
import { labD65FromDisplayP3 } from '../color/display-p3';
import { labD65FromXyzD65, xyzD65FromLabD65, xyzFromLab } from '../color/lab';
import { labD65FromReflectance } from '../color/lab-from-reflectance';
import type { Lab, White, Xyz } from '../color/types';
import { labCFromMunsell } from '../naming/munsell';
import { failure, type Problem, type Result, success } from '../result';
import { OUTSIDE_REMEDY, whyNot } from '../spectrum/reflectance-from-color';
import { reflectanceOnGrid } from '../spectrum/resample';
import { type TristimulusWeights, WEIGHTS_D65_2 } from '../spectrum/tristimulus-weights';
import type { ReflectanceSpd } from '../spectrum/types';
import { colorFromLrv } from './color-from-lrv';
import { D65_AT_2, sameConditions, weightsUnder } from './conditions';
import type { GivenColor } from './given-color';
import { givenWords } from './given-words';
import { plausibleReflectance } from './plausible-reflectance';
import type { FinishClass, FinishComponent } from './types';

/** A reflectance and its colour under D65, 2 degrees. */
export interface GivenCurve {
  readonly rho: ReflectanceSpd;
  readonly labD65: Lab<'D65-2'>;
  readonly source: FinishComponent['spectrumSource'];
}

/**
 * The reflectance of a colour as given. Measured spectra are used as they are. For every other kind a curve is made that has
 * exactly the given colour under the light and the observer it was given for; its colour under D65, 2 degrees is then that
 * of the curve. So light and observer are changed as they are in nature, by the surface, and not by an adaptation
 * transform, which knows nothing of surfaces and errs about three times as much (measured on paints, stones and woods).
 * Munsell notations are under illuminant C, 2 degrees; screen colours under D65, 2 degrees.
 */
export function curveOfGiven(color: GivenColor, finishClass: FinishClass): Result<GivenCurve> {
  switch (color.kind) {
    case 'spectrum': {
      const measured = reflectanceOnGrid(color);
      if (!measured.ok) return measured;
      const rho = measured.value;
      return success({ rho, labD65: labD65FromReflectance(rho), source: 'measured' }, measured.notices);
    }
    case 'lrv': {
      const made = colorFromLrv(color.lrv, color.hue, finishClass);
      if (!made.ok) return made;
      return success({ ...made.value.curve, labD65: made.value.labD65 }, made.notices);
    }
    case 'hex': {
      const lab = color.space === 'display-p3' ? labD65FromDisplayP3(color.hex) : labD65FromHex(color.hex);
      return lab.ok ? curveOfD65(color, xyzD65FromLabD65(lab.value), lab.value, finishClass) : lab;
    }
    case 'munsell': {
      const lab = labCFromMunsell(color.munsell);
      const weights = weightsUnder({ illuminant: 'C', observer_deg: 2 });
      if (!lab.ok) return lab;
      if (!weights.ok) return weights;
      return curveUnder(color, xyzFromLab<White>(lab.value, whiteOf(weights.value)), weights.value, finishClass);
    }
    default: {
      const weights = weightsUnder(color);
      if (!weights.ok) return weights;
      const xyz = xyzOfMeasured(color, whiteOf(weights.value));
      if (!sameConditions(color, D65_AT_2)) return curveUnder(color, xyz, weights.value, finishClass);
      const lab = color.kind === 'lab' ? labOf(color.lab) : labD65FromXyzD65(xyz as Xyz<'D65-2'>);
      return curveOfD65(color, xyz, lab, finishClass);
    }
  }
}

function curveUnder(
  color: GivenColor,
  xyz: Xyz<White>,
  weights: TristimulusWeights,
  finishClass: FinishClass,
): Result<GivenCurve> {
  const curve = plausibleReflectance(xyz, finishClass, weights);
  if (!curve.ok) return failure(inItsOwnWords(curve.problem, color, xyz));
  return success({ ...curve.value, labD65: labD65FromReflectance(curve.value.rho) });
}

/** Under D65, 2 degrees the given colour is the stated one, to the last digit. */
function curveOfD65(
  color: GivenColor,
  xyz: Xyz<White>,
  labD65: Lab<'D65-2'>,
  finishClass: FinishClass,
): Result<GivenCurve> {
  const curve = curveUnder(color, xyz, WEIGHTS_D65_2, finishClass);
  return curve.ok ? success({ ...curve.value, labD65 }) : curve;
}

/** White of the same tables as the weights, so that a neutral is neutral to the last digit. */
function whiteOf({ white }: TristimulusWeights): Xyz<White> {
  return { x: 100 * white[0]!, y: 100 * white[1]!, z: 100 * white[2]! };
}

function xyzOfMeasured(color: GivenColor & { kind: 'lab' | 'lch' | 'xyz' }, white: Xyz<White>): Xyz<White> {
  switch (color.kind) {
    case 'xyz':
      return { x: color.xyz[0], y: color.xyz[1], z: color.xyz[2] };
    case 'lab':
      return xyzFromLab<White>(labOf(color.lab), white);
    case 'lch': {
      const [l, c, h_deg] = color.lch;
      const h = (h_deg * Math.PI) / 180;
      return xyzFromLab<White>({ l, a: c * Math.cos(h), b: c * Math.sin(h) }, white);
    }
  }
}

const labOf = ([l, a, b]: readonly [number, number, number]): Lab<'D65-2'> => ({ l, a, b });

function inItsOwnWords(problem: Problem, color: GivenColor, xyz: Xyz<White>): Problem {
  if (problem.code !== 'outside-object-color-solid') return problem;
  return {
    ...problem,
    text: `No surface can have the color ${givenWords(color)}: ${whyNot(xyz)}.`,
    remedy: color.kind === 'munsell' ? 'Check the notation: hue, value, then chroma after the slash.' : OUTSIDE_REMEDY,
  };
}
