/**
 * CIEDE2000 difference that half of the observers still accept; half see one from 0.8 (Paravina et al. 2015, J. Esthet.
 * Restor. Dent. 27, S1: 175 observers in 7 places, white-ish ceramics side by side). A warning may ask for more.
 */
export const ACCEPTABLE_DE00 = 1.8;
