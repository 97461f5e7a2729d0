import { adaptXyz } from '../color/adapt';
import { labD65FromXyzD65 } from '../color/lab';
import type { Lab, White, Xyz } from '../color/types';
import { D65_2 } from '../color/whites';
import { xyzFromEmission } from '../color/xyz';
import { emissionSpd, GRID_COUNT } from '../spectrum/grid';
import { observer2 } from '../spectrum/observers';
import type { EmissionSpd, ReflectanceSpd } from '../spectrum/types';
import { expandBands } from './bands';

/**
 * Spectral irradiance at a place, W m-2 nm-1: the sum over groups of level s(lambda) (d + t(lambda)). `spectra` are per
 * lux; `direct` is lx at level 1; `indirect` the 24 band values of each group at level 1 (null: none).
 */
export function irradianceSpectrum(
  spectra: readonly EmissionSpd[],
  levels: ArrayLike<number>,
  direct: ArrayLike<number>,
  indirect: readonly (ArrayLike<number> | null)[],
): EmissionSpd {
  const irradiance = new Float64Array(GRID_COUNT);
  spectra.forEach((spectrum, g) => {
    const level = levels[g]!;
    if (level === 0) return;
    const bounced = indirect[g] ? expandBands(indirect[g]) : null;
    for (let i = 0; i < GRID_COUNT; i++) {
      irradiance[i]! += level * spectrum[i]! * (direct[g]! + (bounced ? bounced[i]! : 0));
    }
  });
  return emissionSpd(irradiance);
}

/**
 * Colour of a surface in place: relative to a perfect white held there (so shade does not count, tint does), adapted by
 * CAT16 with D = 1 from the adopted white of the setting to D65. `rho` null reads that perfect white itself.
 * The place must be lit: without light there is no colour, and the result is not a number.
 */
export function installedLab(
  irradiance: EmissionSpd,
  rho: ReflectanceSpd | null,
  adoptedWhite: Xyz<White>,
): Lab<'D65-2'> {
  const white = xyzFromEmission(irradiance, observer2);
  const reflected = rho ? xyzFromEmission(emissionSpd(irradiance.map((e, i) => e * rho[i]!)), observer2) : white;
  const scale = 100 / white.y;
  const xyz: Xyz<'setting-2'> = { x: reflected.x * scale, y: reflected.y * scale, z: reflected.z * scale };
  const from: Xyz<White> = {
    x: (100 * adoptedWhite.x) / adoptedWhite.y,
    y: 100,
    z: (100 * adoptedWhite.z) / adoptedWhite.y,
  };
  return labD65FromXyzD65(adaptXyz<'D65-2'>(xyz, from, D65_2));
}
