import type { Vec3 } from '../light/types';
import type { SkyLuminance } from './types';

/**
 * Luminance of the sky in a direction (unit vector, z up), cd/m2: ISO 15469:2004. Below the horizon it is 0: there the
 * ground begins, which is not the sky's to say. At the horizon itself the limit of the formula holds.
 */
export function luminanceOfSky(sky: SkyLuminance, direction: Vec3): number {
  const [x, y, z] = direction;
  if (z < 0) return 0;
  const [sx, sy, sz] = sky.towardsSun;
  const scattered = indicatrix(sky, x * sx + y * sy + z * sz) / indicatrix(sky, sz);
  return (sky.zenith_cdm2 * scattered * gradation(sky, z)) / gradation(sky, 1);
}

/** f(chi) of ISO 15469 by the cosine of chi, the angle to the sun. */
export function indicatrix({ c, d, e }: SkyLuminance, cosChi: number): number {
  if (c === 0 && e === 0) return 1;
  const cosine = Math.min(1, Math.max(-1, cosChi));
  return 1 + c * (Math.exp(d * Math.acos(cosine)) - Math.exp((d * Math.PI) / 2)) + e * cosine * cosine;
}

/** phi(Z) of ISO 15469 (or of the traditional overcast sky, 1 at the zenith) by the cosine of Z, the angle to the zenith: 1 at the horizon, where b / cos Z runs to -infinity. */
export function gradation({ a, b, traditional }: SkyLuminance, cosZ: number): number {
  if (traditional) return (1 + 2 * Math.max(0, cosZ)) / 3;
  return cosZ > 0 ? 1 + a * Math.exp(b / cosZ) : 1;
}
