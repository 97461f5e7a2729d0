import type { White, Xyz } from '../color/types';
import { type Cam, type CamGiven, correlatesFromXyz, xyzFromCorrelates } from './correlates';
import type { ViewingConditions } from './viewing-conditions';

/**
 * CAM16 (Li et al. 2017, Color Res. Appl. 42, 703; CIECAM16 of CIE 248:2022): adaptation and responses in one cone
 * space. `xyz` on the white's scale. Below black J, C, Q and M are 0.
 */
export const cam16FromXyz = <W extends White>(xyz: Xyz<W>, conditions: ViewingConditions<W>): Cam =>
  correlatesFromXyz(xyz, conditions, conditions.cam16);

/** Tristimulus values of a CAM16 colour; black where lightness or brightness is not above 0. */
export const xyzFromCam16 = <W extends White>(cam: CamGiven, conditions: ViewingConditions<W>): Xyz<W> =>
  xyzFromCorrelates(cam, conditions, conditions.cam16);
