import { labD65FromXyzD65 } from '../color/lab';
import type { Lab } from '../color/types';
import { xyzFromReflectance } from '../color/xyz';
import { GRID_COUNT } from '../spectrum/grid';
import { lightById } from '../spectrum/lights';
import { observer2 } from '../spectrum/observers';
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

const D65 = lightById('D65')!;

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
    labD65: labD65FromXyzD65(xyzFromReflectance<'D65-2'>(spectrum, D65, observer2)),
    spectrum,
    provenance: components.map((component) => component.provenance).reduce(lessCertain),
    uncertaintyDe00,
  };
}
