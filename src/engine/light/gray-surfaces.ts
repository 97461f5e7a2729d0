import type { White, Xyz } from '../color/types';
import { observer2 } from '../spectrum/observers';
import type { EmissionSpd } from '../spectrum/types';
import { BAND_COUNT, bandColorMatrix } from './bands';

/** A solved scheme under one setting, all per light group. */
export interface TintScheme {
  /** Per surface and band, as given to `solveGroup`. */
  readonly reflectance: Float32Array;
  /** Spectra per lux, levels, and radiosity at level 1; groups without a solution are left out. */
  readonly spectra: readonly EmissionSpd[];
  readonly levels: ArrayLike<number>;
  readonly radiosity: readonly (Float32Array | null)[];
  readonly adoptedWhite: Xyz<White>;
}

/** One value per surface: its mean reflectance under the setting's lights, weighted by what the eye sees. */
export function grayReflectance({ reflectance, spectra, levels }: Omit<TintScheme, 'radiosity'>): Float32Array {
  const weight = new Float64Array(BAND_COUNT);
  spectra.forEach((spectrum, group) => {
    const matrix = bandColorMatrix(spectrum, null, observer2);
    for (let k = 0; k < BAND_COUNT; k++) weight[k]! += levels[group]! * matrix[3 * k + 1]!;
  });
  const total = weight.reduce((sum, w) => sum + w, 0);
  const gray = new Float32Array(reflectance.length / BAND_COUNT);
  for (let surface = 0; surface < gray.length; surface++) {
    let sum = 0;
    for (let k = 0; k < BAND_COUNT; k++) sum += weight[k]! * reflectance[surface * BAND_COUNT + k]!;
    gray[surface] = total > 0 ? sum / total : 0;
  }
  return gray;
}
