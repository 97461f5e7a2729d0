import { L_PER_GALLON, M_PER_FOOT } from '../unit-words';

/** Paint that coats an area (m2), L, before waste; `spread` is the area one litre coats once, m2/L. */
export const paintVolume = (area_m2: number, coats: number, spread_m2_per_l: number): number =>
  (area_m2 * coats) / spread_m2_per_l;

/** Spreading rate of a US tin, ft2 per U.S. gallon, in m2/L (exact, NIST SP 811). */
export const spreadFromUs = (ft2_per_gal: number): number => (ft2_per_gal * M_PER_FOOT ** 2) / L_PER_GALLON;
