import { lightById } from '../spectrum/lights';
import { observer10 } from '../spectrum/observers';
import type { ReflectanceSpd } from '../spectrum/types';
import { xyzFromReflectance } from './xyz';

const D65 = lightById('D65')!;

/** Light reflectance value, 0-100: CIE Y under D65 with the 10 degree observer (BS 8493:2008+A1:2010). */
export const lrvFromReflectance = (rho: ReflectanceSpd): number => xyzFromReflectance<'D65-10'>(rho, D65, observer10).y;
