import type { Lab } from './types';

/**
 * Whiteness index for dentistry, WID (Perez et al. 2016, Dental Materials 32, 461). The paper was not read: the coefficients are
 * from memory, confirmed in two independent public codes that cite it. Works at every lightness; differences of 0.72 are just
 * seen and 2.60 just accepted (both as later papers on teeth cite them).
 */
export const wid = (lab: Lab<'D65-2'>): number => 0.511 * lab.l - 2.324 * lab.a - 1.1 * lab.b;
