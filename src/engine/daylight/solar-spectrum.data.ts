// R. Bird, C. Riordan, Simple solar spectral model for direct and diffuse irradiance on horizontal and tilted planes at
// the earth's surface for cloudless atmospheres, SERI/TR-215-2436 (1984), J. Climate Appl. Meteorol. 25 (1986) 87,
// table 1, the rows from 370 to 780 nm.

/** nm. */
export const SOLAR_NM: readonly number[] = [
  370, 380, 390, 400, 410, 420, 430, 440, 450, 460, 470, 480, 490, 500, 510, 520, 530, 540, 550, 570, 593, 610, 630, 656,
  667.6, 690, 710, 718, 724.4, 740, 752.5, 757.5, 762.5, 767.5, 780,
];

/** Irradiance outside the atmosphere at the mean distance of the sun, W m-2 nm-1. */
export const SOLAR_IRRADIANCE: readonly number[] = [
  1.1199, 1.1038, 1.0338, 1.4791, 1.7013, 1.7404, 1.5872, 1.837, 2.005, 2.043, 1.987, 2.027, 1.896, 1.909, 1.927, 1.831,
  1.891, 1.898, 1.892, 1.84, 1.768, 1.728, 1.658, 1.524, 1.531, 1.42, 1.399, 1.374, 1.373, 1.298, 1.269, 1.245, 1.223,
  1.205, 1.183,
];

/** Absorption coefficient of water vapor, per cm. */
export const WATER_ABSORPTION: readonly number[] = [
  0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0.075, 0, 0, 0, 0, 0.016, 0.0125, 1.8, 2.5, 0.061, 0.0008,
  0.0001, 0.00001, 0.00001, 0.0006,
];

/** Absorption coefficient of ozone, per atm cm. */
export const OZONE_ABSORPTION: readonly number[] = [
  0, 0, 0, 0, 0, 0, 0, 0, 0.003, 0.006, 0.009, 0.014, 0.021, 0.03, 0.04, 0.048, 0.063, 0.075, 0.085, 0.12, 0.119, 0.12,
  0.09, 0.065, 0.051, 0.028, 0.018, 0.015, 0.012, 0.01, 0.008, 0.007, 0.006, 0.005, 0,
];

/** Absorption coefficient of the uniformly mixed gases, mostly oxygen, per air mass. */
export const MIXED_GAS_ABSORPTION: readonly number[] = [
  0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0.15, 0, 0, 0, 0, 0, 0, 4, 0.35, 0,
];
