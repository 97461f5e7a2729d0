// Spectral reflectance of what lies outside a window, 380-780 nm at 20 nm. The shapes are our judgment, drawn after what
// published spectra of such materials show; the level of each is set by the luminous reflectance beside it.

/** Not known: the same at every wavelength. */
export const GRAY: readonly number[] = new Array<number>(21).fill(0.2);

/** Weathered concrete slabs: climbs gently from the blue. */
export const PAVING: readonly number[] = [
  0.155, 0.175, 0.195, 0.212, 0.228, 0.242, 0.255, 0.267, 0.278, 0.288, 0.296, 0.302, 0.307, 0.311, 0.314, 0.317, 0.32,
  0.322, 0.324, 0.326, 0.328,
];

/** Lawn and leaves: green peak at 550 nm, chlorophyll's red band at 675 nm, the red edge from 690 nm. */
export const GREENERY: readonly number[] = [
  0.028, 0.03, 0.032, 0.034, 0.036, 0.039, 0.047, 0.073, 0.099, 0.098, 0.08, 0.066, 0.059, 0.052, 0.045, 0.04, 0.075,
  0.19, 0.32, 0.39, 0.415,
];

/** Red brick: iron oxide's edge at 570 nm. */
export const BRICK: readonly number[] = [
  0.06, 0.063, 0.067, 0.072, 0.079, 0.087, 0.095, 0.105, 0.122, 0.15, 0.19, 0.232, 0.264, 0.285, 0.299, 0.308, 0.315,
  0.321, 0.325, 0.328, 0.33,
];

/** Snow some days old: nearly even, a little less in the far red. */
export const SNOW: readonly number[] = [
  0.79, 0.796, 0.8, 0.803, 0.806, 0.808, 0.809, 0.81, 0.81, 0.81, 0.809, 0.808, 0.806, 0.803, 0.799, 0.794, 0.788, 0.782,
  0.776, 0.77, 0.763,
];

/** Garden soil, half dry: climbs steadily to the red. */
export const SOIL: readonly number[] = [
  0.042, 0.047, 0.053, 0.06, 0.067, 0.074, 0.081, 0.089, 0.098, 0.109, 0.121, 0.133, 0.143, 0.152, 0.16, 0.168, 0.176,
  0.184, 0.192, 0.199, 0.206,
];

/** Off-white mineral render: falls off below 440 nm as titanium and zinc whites do. */
export const LIGHT_RENDER: readonly number[] = [
  0.31, 0.45, 0.545, 0.59, 0.612, 0.628, 0.64, 0.65, 0.66, 0.668, 0.675, 0.681, 0.686, 0.69, 0.694, 0.697, 0.7, 0.702,
  0.704, 0.705, 0.706,
];
