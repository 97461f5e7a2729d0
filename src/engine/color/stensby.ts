import type { Lab, White } from './types';

/** Stensby whiteness (Soap and Chemical Specialties, 1968): calls a pinkish white whiter. No published limits. */
export const stensby = (lab: Lab<White>): number => lab.l - 3 * lab.b + 3 * lab.a;
