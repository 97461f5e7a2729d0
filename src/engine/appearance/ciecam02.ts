import type { White, Xyz } from '../color/types';
import { type Cam, type CamGiven, correlatesFromXyz, xyzFromCorrelates } from './correlates';
import type { ViewingConditions } from './viewing-conditions';

/**
 * CIECAM02 (CIE 159:2004; Moroney et al. 2002): the model Rf and CAM02-UCS are defined by. `xyz` on the white's scale.
 * Negative cone responses are compressed by amount with their sign kept; below black J, C, Q and M are 0.
 */
export const ciecam02FromXyz = <W extends White>(xyz: Xyz<W>, conditions: ViewingConditions<W>): Cam =>
  correlatesFromXyz(xyz, conditions, conditions.ciecam02);

/** Tristimulus values of a CIECAM02 colour; black where lightness or brightness is not above 0. */
export const xyzFromCiecam02 = <W extends White>(cam: CamGiven, conditions: ViewingConditions<W>): Xyz<W> =>
  xyzFromCorrelates(cam, conditions, conditions.ciecam02);
