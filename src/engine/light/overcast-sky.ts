import { readGlass } from './glass';

/** Luminances seen through a window: overcast sky above the horizon, level ground below it. cd/m2. */
export interface OutsideLuminance {
  readonly zenith: number;
  readonly ground: number;
  /** Transmittance of the glazing over the cosine of incidence. */
  readonly glass: Float64Array;
}

/** Zenith luminance in cd/m2 of a CIE standard overcast sky that gives `skyLx` on the open horizontal: E = 7 pi Lz / 9. */
export const zenithFromSkyLx = (skyLx: number): number => (9 * skyLx) / (7 * Math.PI);

/** Luminance of a level diffuse ground under the full sky, cd/m2: reflectance E / pi. */
export const groundFromSkyLx = (skyLx: number, reflectance: number): number => (reflectance * skyLx) / Math.PI;

/** Luminance towards a direction with the given sine of elevation, through glass met at the given cosine, cd/m2. */
export function luminanceThrough(outside: OutsideLuminance, sineElevation: number, cosineGlass: number): number {
  const luminance = sineElevation > 0 ? (outside.zenith * (1 + 2 * sineElevation)) / 3 : outside.ground;
  return luminance * readGlass(outside.glass, cosineGlass);
}

/**
 * Illuminance just inside an unobstructed window, lx: its luminous flux per m2. `normalZ` is the z component of the
 * window's unit normal (0 for an upright window, -1 for a roof opening that looks down into the room).
 */
export function windowExitance(outside: OutsideLuminance, normalZ: number): number {
  const rings = 64;
  const sectors = 256;
  const tilt = Math.sqrt(Math.max(0, 1 - normalZ * normalZ));
  let sum = 0;
  for (let i = 0; i < rings; i++) {
    const sine2 = (i + 0.5) / rings;
    const cosine = Math.sqrt(1 - sine2);
    for (let j = 0; j < sectors; j++) {
      const across = Math.sqrt(sine2) * Math.cos((2 * Math.PI * (j + 0.5)) / sectors);
      sum += luminanceThrough(outside, -normalZ * cosine + tilt * across, cosine);
    }
  }
  return (Math.PI * sum) / (rings * sectors);
}
