/**
 * CIEDE2000 difference that half of the observers still accept (Paravina et al. 2015, J. Esthet. Restor. Dent. 27:
 * 175 observers in 7 places, white-ish ceramics side by side).
 */
export const ACCEPTABLE_DE00 = 1.8;
