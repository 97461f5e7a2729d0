import { labUnder } from '../change/lab-under';
import { multiply } from '../color/matrix3';
import type { Lab, Matrix3 } from '../color/types';
import type { FinishClass, FinishComponent } from '../finish/types';
import { plausibleCurves } from '../plausible/curves';
import type { EmissionSpd, ReflectanceSpd } from '../spectrum/types';
import { covarianceOf, spreadAround, sumOf } from './covariance';
import { curveSensitivity } from './curve-sensitivity';
import { errorAxes, type LabCovariance, rmsDe00 } from './lab-error';

/** A colour under a light and how far it is known. */
export interface UncertainColor {
  /** Under the light, the eye fully adapted (`labUnder`), of the curve computed with. */
  readonly lab: Lab<'D65-2'>;
  /** Of both causes together. */
  readonly covariance: LabCovariance;
  /** Root mean square of the whole difference, CIEDE2000 units: root of the sum of the squares of the two below. */
  readonly uncertaintyDe00: number;
  /** From the error of the sample's colour under D65, carried to this light. */
  readonly fromSample: number;
  /** From the unknown curve, against the one computed with; 0 under D65 and for a measured curve. */
  readonly fromCurve: number;
}

/**
 * How far the colour of a component is known under a light (relative power, any scale). First order in the error of the
 * sample; the curves are those that `plausibleCurves` counts as equally likely. `finishClass` counts where the component
 * says none.
 */
export function uncertaintyUnder(
  component: Pick<FinishComponent, 'labD65' | 'spectrum' | 'spectrumSource' | 'finishClass' | 'uncertaintyDe00'>,
  finishClass: FinishClass,
  spd: EmissionSpd,
): UncertainColor {
  const { labD65, spectrum } = component;
  const lab = labUnder(spectrum, spd);
  const errors = multiply(slopesUnder(spectrum, spd), errorAxes(labD65, component.uncertaintyDe00));
  const ofSample = covarianceOf(errors);
  const others = plausibleCurves(component, finishClass).filter((curve) => curve !== spectrum);
  const ofCurve = spreadAround(
    lab,
    others.map((curve) => labUnder(curve, spd)),
  );
  const covariance = sumOf([ofSample, ofCurve]);
  return {
    lab,
    covariance,
    uncertaintyDe00: rmsDe00(lab, covariance),
    fromSample: rmsDe00(lab, ofSample),
    fromCurve: rmsDe00(lab, ofCurve),
  };
}

/** Half the step of a central difference, units of L*, a*, b*: far above rounding, far below any bend of CIELAB. */
const STEP = 0.01;

/** Slopes of L*, a*, b* under a light in L*, a*, b* under D65; row major. */
function slopesUnder(spectrum: ReflectanceSpd, spd: EmissionSpd): Matrix3 {
  const [byL, byA, byB] = curveSensitivity(spectrum).map((slope) => {
    const at = (step: number) => labUnder(spectrum.map((rho, i) => rho + step * slope[i]!) as ReflectanceSpd, spd);
    const [up, down] = [at(STEP), at(-STEP)];
    return [(up.l - down.l) / (2 * STEP), (up.a - down.a) / (2 * STEP), (up.b - down.b) / (2 * STEP)] as const;
  });
  return [byL![0], byA![0], byB![0], byL![1], byA![1], byB![1], byL![2], byA![2], byB![2]];
}
