import { lightById } from '../spectrum/lights';
import { observer2 } from '../spectrum/observers';
import type { ReflectanceSpd } from '../spectrum/types';
import { labD65FromXyzD65 } from './lab';
import type { Lab } from './types';
import { xyzFromReflectance } from './xyz';

const D65 = lightById('D65')!;

/** CIELAB under D65, 2 degrees, of a reflectance: the colour of a sample in neutral daylight. */
export const labD65FromReflectance = (rho: ReflectanceSpd): Lab<'D65-2'> =>
  labD65FromXyzD65(xyzFromReflectance<'D65-2'>(rho, D65, observer2));
