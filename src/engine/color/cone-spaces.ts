import { inverse } from './matrix3';
import type { Matrix3 } from './types';

/** Cone space of CAT16 (Li et al. 2017, Color Res. Appl. 42, 703; CIE 248:2022). */
export const CAT16: Matrix3 = [
  0.401288, 0.650173, -0.051461, -0.250268, 1.204414, 0.045854, -0.002079, 0.048952, 0.953127,
];
export const CAT16_INVERSE = inverse(CAT16);

/** Cone space of the adaptation of CIECAM02 (CIE 159:2004). */
export const CAT02: Matrix3 = [0.7328, 0.4296, -0.1624, -0.7036, 1.6975, 0.0061, 0.003, 0.0136, 0.9834];
export const CAT02_INVERSE = inverse(CAT02);

/** Cone space of Hunt, Pointer and Estevez, equal-energy normalised: the responses of CIECAM02 (CIE 159:2004). */
export const HUNT_POINTER_ESTEVEZ: Matrix3 = [0.38971, 0.68898, -0.07868, -0.22981, 1.1834, 0.04641, 0, 0, 1];

/** Cone space of the linear Bradford transform (Lam 1985; as in ICC.1:2022, annex E). */
export const BRADFORD: Matrix3 = [0.8951, 0.2664, -0.1614, -0.7502, 1.7135, 0.0367, 0.0389, -0.0685, 1.0296];
export const BRADFORD_INVERSE = inverse(BRADFORD);
