import { labUnder } from '../change/lab-under';
import { apply, multiply } from '../color/matrix3';
import type { Lab, Matrix3 } from '../color/types';
import type { FinishClass, FinishComponent } from '../finish/types';
import { readingOf } from '../finish/uncertainty';
import { plausibleCurves } from '../plausible/curves';
import { GRID_COUNT } from '../spectrum/grid';
import type { EmissionSpd, ReflectanceSpd } from '../spectrum/types';
import { covarianceOf, spreadAround, sumOf } from './covariance';
import { curveSensitivity } from './curve-sensitivity';
import { errorAxes, type LabCovariance, rmsDe00 } from './lab-error';
import { mixedCovariance, mixingSlopes } from './mixing';

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

type UncertainComponent = Pick<
  FinishComponent,
  'labD65' | 'spectrum' | 'spectrumSource' | 'finishClass' | 'uncertaintyDe00' | 'lightnessDe00'
>;

/**
 * How far the colour of a component is known under a light (relative power, any scale). First order in the error of the
 * sample; the curves are those that `plausibleCurves` counts as equally likely. `finishClass` counts where the component
 * says none.
 */
export function uncertaintyUnder(
  component: UncertainComponent,
  finishClass: FinishClass,
  spd: EmissionSpd,
): UncertainColor {
  const lab = labUnder(component.spectrum, spd);
  return known(lab, covarianceOf(sampleAxes(component, spd)), curveCovariance(component, finishClass, spd));
}

/**
 * How far the area mean of a surface is known under a light: components mixed in linear light by share, as
 * `averageComponent` does. Samples of one reading err together; their curves depart together, too: the parts of a finish are
 * taken to be made alike.
 */
export function averageUncertaintyUnder(
  components: readonly (UncertainComponent & Pick<FinishComponent, 'share' | 'role' | 'provenance'>)[],
  finishClass: FinishClass,
  spd: EmissionSpd,
): UncertainColor {
  const share = components.reduce((sum, component) => sum + component.share, 0);
  const mean = new Float64Array(GRID_COUNT);
  for (const component of components) {
    for (let i = 0; i < GRID_COUNT; i++) mean[i] = mean[i]! + (component.share / share) * component.spectrum[i]!;
  }
  const average = labUnder(mean as ReflectanceSpd, spd);
  const parts = components.map((component) => ({
    component,
    lab: labUnder(component.spectrum, spd),
    weight: component.share / share,
    axes: sampleAxes(component, spd),
    source: readingOf(component),
  }));
  const departures = parts.map(({ component, lab, weight, source }) => {
    const slopes = mixingSlopes(average, lab, weight);
    const [, ...others] = plausibleCurves(component, finishClass).map((curve) => labUnder(curve, spd));
    return { source, moved: others.map((other) => apply(slopes, [other.l - lab.l, other.a - lab.a, other.b - lab.b])) };
  });
  return known(average, mixedCovariance(average, parts), togetherBySource(average, departures));
}

interface Departures {
  readonly source: string;
  /** By how much each further curve of a component moves the average. */
  readonly moved: readonly (readonly [l: number, a: number, b: number])[];
}

/** Members of one number go together within a source; sources are independent. A measured part does not move. */
function togetherBySource(average: Lab<'D65-2'>, departures: readonly Departures[]): LabCovariance {
  const sources = new Set(departures.map(({ source }) => source));
  const covariances = [...sources].map((source) => {
    const ofSource = departures.filter((one) => one.source === source && one.moved.length > 0);
    const count = Math.max(0, ...ofSource.map(({ moved }) => moved.length));
    const colors = Array.from({ length: count }, (_, member): Lab<'D65-2'> => {
      const sum = (k: 0 | 1 | 2) => ofSource.reduce((total, { moved }) => total + moved[member]![k], 0);
      return { l: average.l + sum(0), a: average.a + sum(1), b: average.b + sum(2) };
    });
    return spreadAround(average, colors);
  });
  return sumOf(covariances);
}

function known(lab: Lab<'D65-2'>, ofSample: LabCovariance, ofCurve: LabCovariance): UncertainColor {
  const covariance = sumOf([ofSample, ofCurve]);
  return {
    lab,
    covariance,
    uncertaintyDe00: rmsDe00(lab, covariance),
    fromSample: rmsDe00(lab, ofSample),
    fromCurve: rmsDe00(lab, ofCurve),
  };
}

/** Errors under the light by the three normal numbers of the sample's error. */
const sampleAxes = (
  { labD65, spectrum, uncertaintyDe00, lightnessDe00 }: UncertainComponent,
  spd: EmissionSpd,
): Matrix3 => multiply(slopesUnder(spectrum, spd), errorAxes(labD65, uncertaintyDe00, lightnessDe00));

function curveCovariance(component: UncertainComponent, finishClass: FinishClass, spd: EmissionSpd): LabCovariance {
  const [nominal, ...others] = plausibleCurves(component, finishClass).map((curve) => labUnder(curve, spd));
  return spreadAround(nominal!, others);
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
