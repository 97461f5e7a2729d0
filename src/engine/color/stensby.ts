import type { Lab, White } from './types';

/** Stensby whiteness (Soap and Chemical Specialties, 1968): calls a pinkish white whiter. No published limits.
 * It is older than CIELAB, which stands in here for the Hunter L, a, b of its time (from memory). */
export const stensby = (lab: Lab<White>): number => lab.l - 3 * lab.b + 3 * lab.a;
