import { labD65FromReflectance } from '../color/lab-from-reflectance';
import type { Lab } from '../color/types';
import { GRID_COUNT } from '../spectrum/grid';
import type { ReflectanceSpd } from '../spectrum/types';
import { errorAxes, rmsDe00 } from '../uncertainty/lab-error';
import { mixedCovariance } from '../uncertainty/mixing';
import type { FinishComponent, Provenance } from './types';
import { lessCertain, readingOf } from './uncertainty';

/** What a patterned surface averages to from far away. */
export interface AverageComponent {
  readonly role: 'average';
  /** Sum of the shares that were averaged. */
  readonly share: number;
  readonly labD65: Lab<'D65-2'>;
  readonly spectrum: ReflectanceSpd;
  /** The least trustworthy of the parts. */
  readonly provenance: Provenance;
  /**
   * Root mean square of the whole colour difference, CIEDE2000 units: the parts' errors mixed as the light is. Parts of one
   * reading err together and do not average out; other readings, and grout, err on their own.
   */
  readonly uncertaintyDe00: number;
}

/**
 * Average colour of a surface: components mixed in linear light by area share (mean spectrum). Shares need not sum to 1.
 * At least one component with a share above 0; nothing to average is a bug in the caller and throws.
 */
export function averageComponent(components: readonly FinishComponent[]): AverageComponent {
  const share = components.reduce((sum, component) => sum + component.share, 0);
  if (!(share > 0)) throw new RangeError('no component with a share above 0');
  const mean = new Float64Array(GRID_COUNT);
  for (const component of components) {
    const weight = component.share / share;
    for (let i = 0; i < GRID_COUNT; i++) mean[i] = mean[i]! + weight * component.spectrum[i]!;
  }
  const spectrum = mean as ReflectanceSpd;
  const labD65 = labD65FromReflectance(spectrum);
  return {
    role: 'average',
    share,
    labD65,
    spectrum,
    provenance: components.map((component) => component.provenance).reduce(lessCertain),
    uncertaintyDe00: mixedUncertainty(labD65, components, share),
  };
}

function mixedUncertainty(average: Lab<'D65-2'>, components: readonly FinishComponent[], share: number): number {
  // Alone, it keeps its uncertainty to the last digit.
  if (components.length === 1) return components[0]!.uncertaintyDe00;
  const parts = components.map((component) => ({
    lab: component.labD65,
    weight: component.share / share,
    axes: errorAxes(component.labD65, component.uncertaintyDe00, component.lightnessDe00),
    source: readingOf(component),
  }));
  return rmsDe00(average, mixedCovariance(average, parts));
}
