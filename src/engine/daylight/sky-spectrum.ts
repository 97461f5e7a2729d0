import type { Chromaticity } from '../color/types';
import type { Vec3 } from '../light/types';
import { perLux } from '../spectrum/per-lux';
import type { EmissionSpd } from '../spectrum/types';
import { clearSkyChromaticity } from './clear-sky-color';
import { daylightSpdOfChromaticity } from './daylight-of-chromaticity';
import { visitSky } from './sky-illuminance';
import { luminanceOfSky } from './sky-luminance';
import type { SkyLuminance } from './types';

const UP: Vec3 = [0, 0, 1];

/**
 * One spectrum for a clear sky, per lux: that of the mean light that openings with these outward normals get from it, each
 * direction weighted by its luminance and the cosine on the opening. Null, no normals, or openings that see no sky: the
 * mean on the open horizontal.
 */
export const clearSkySpectrum = (sky: SkyLuminance, normals: readonly Vec3[] | null): EmissionSpd =>
  perLux(daylightSpdOfChromaticity(clearSkyMean(sky, normals)));

/** Chromaticity of that mean, 2 degree observer. */
function clearSkyMean(sky: SkyLuminance, normals: readonly Vec3[] | null): Chromaticity {
  const colorAt = clearSkyChromaticity(sky.towardsSun);
  // A dark sky has a color, too: the level does not matter to a mean.
  const lit = { ...sky, zenith_cdm2: 1 };
  let [sumX, sumY, sum] = [0, 0, 0];
  const add = (normal: Vec3) =>
    visitSky(sky.towardsSun, normal, (direction, weight) => {
      const { x, y } = colorAt(direction);
      // X + Y + Z of a light of this luminance.
      const amount = (weight * luminanceOfSky(lit, direction)) / y;
      sumX += amount * x;
      sumY += amount * y;
      sum += amount;
    });
  for (const normal of normals ?? []) add(normal);
  if (!(sum > 0)) add(UP);
  return { x: sumX / sum, y: sumY / sum };
}
