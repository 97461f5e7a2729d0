/**
 * [alpha, share of the mirrored flux that reaches a glossmeter's receptor at 60 degrees]: `glossMeterReading` over that of a smooth
 * surface. The share is the same for indices from 1.5 to 1.6 within 0.0001.
 */
export const SHARE_IN_RECEPTOR: readonly (readonly [alpha: number, share: number])[] = [
  [0.001, 0.99884],
  [0.0015, 0.99711],
  [0.0025, 0.99163],
  [0.004, 0.97862],
  [0.006, 0.95348],
  [0.01, 0.88447],
  [0.015, 0.78404],
  [0.02, 0.68725],
  [0.03, 0.53078],
  [0.045, 0.37796],
  [0.065, 0.25964],
  [0.1, 0.15236],
  [0.15, 0.082808],
  [0.22, 0.042169],
  [0.33, 0.018716],
  [0.5, 0.0073554],
  [0.75, 0.0026797],
  [1, 0.0012424],
];

/**
 * The same of a brushed surface whose slopes are 4 times (`BRUSH_RATIO`) as wide across the brush as along it: the mean of a reading along
 * and one across. `alpha` is the geometric mean of both widths.
 */
export const SHARE_IN_RECEPTOR_BRUSHED: readonly (readonly [alpha: number, share: number])[] = [
  [0.001, 0.99726],
  [0.0015, 0.9936],
  [0.0025, 0.98235],
  [0.004, 0.95746],
  [0.006, 0.91511],
  [0.01, 0.82364],
  [0.015, 0.72275],
  [0.02, 0.63981],
  [0.03, 0.50972],
  [0.045, 0.37019],
  [0.065, 0.25071],
  [0.1, 0.14114],
  [0.15, 0.074562],
  [0.22, 0.037744],
  [0.33, 0.016864],
  [0.5, 0.0067904],
];
