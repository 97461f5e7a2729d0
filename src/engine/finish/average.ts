import { labD65FromReflectance } from '../color/lab-from-reflectance';
import type { Lab } from '../color/types';
import { GRID_COUNT } from '../spectrum/grid';
import type { ReflectanceSpd } from '../spectrum/types';
import type { FinishComponent, Provenance } from './types';
import { lessCertain } from './uncertainty';

/** What a patterned surface averages to from far away. */
export interface AverageComponent {
  readonly role: 'average';
  /** Sum of the shares that were averaged. */
  readonly share: number;
  readonly labD65: Lab<'D65-2'>;
  readonly spectrum: ReflectanceSpd;
  /** The least trustworthy of the parts. */
  readonly provenance: Provenance;
  /** Mean of the parts' by share: errors of one instrument or one eye go the same way and do not average out. */
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
  let uncertaintyDe00 = 0;
  for (const component of components) {
    const weight = component.share / share;
    for (let i = 0; i < GRID_COUNT; i++) mean[i] = mean[i]! + weight * component.spectrum[i]!;
    uncertaintyDe00 += weight * component.uncertaintyDe00;
  }
  const spectrum = mean as ReflectanceSpd;
  return {
    role: 'average',
    share,
    labD65: labD65FromReflectance(spectrum),
    spectrum,
    provenance: components.map((component) => component.provenance).reduce(lessCertain),
    uncertaintyDe00,
  };
}
