import type { Lab, White, Xyz } from './types';
import { D65_2 } from './whites';

// CIELAB, ISO/CIE 11664-4:2019. Both branches meet at (6/29)^3 without a step.
const DELTA = 6 / 29;
const DELTA_CUBED = DELTA ** 3;
const SLOPE = 1 / (3 * DELTA * DELTA);
const OFFSET = 4 / 29;

const compress = (t: number): number => (t > DELTA_CUBED ? Math.cbrt(t) : SLOPE * t + OFFSET);
const expand = (f: number): number => (f > DELTA ? f * f * f : (f - OFFSET) / SLOPE);

/** CIELAB of tristimulus values against their white; both on the same Y scale. */
export function labFromXyz<W extends White>(xyz: Xyz<W>, white: Xyz<W>): Lab<W> {
  const fx = compress(xyz.x / white.x);
  const fy = compress(xyz.y / white.y);
  const fz = compress(xyz.z / white.z);
  return { l: 116 * fy - 16, a: 500 * (fx - fy), b: 200 * (fy - fz) };
}

/** Tristimulus values of a CIELAB colour, on the Y scale of `white`. */
export function xyzFromLab<W extends White>(lab: Lab<W>, white: Xyz<W>): Xyz<W> {
  const fy = (lab.l + 16) / 116;
  return {
    x: white.x * expand(fy + lab.a / 500),
    y: white.y * expand(fy),
    z: white.z * expand(fy - lab.b / 200),
  };
}

/** CIELAB under D65, 2 degrees, of tristimulus values with Y = 100 for the perfect diffuser. */
export const labD65FromXyzD65 = (xyz: Xyz<'D65-2'>): Lab<'D65-2'> => labFromXyz(xyz, D65_2);

/** Tristimulus values, Y = 100 for the perfect diffuser, of a CIELAB colour under D65, 2 degrees. */
export const xyzD65FromLabD65 = (lab: Lab<'D65-2'>): Xyz<'D65-2'> => xyzFromLab(lab, D65_2);

/** Luminance factor Y (0-100) of CIE lightness L* (0-100). */
export const yFromLightness = (l: number): number => 100 * expand((l + 16) / 116);

/** CIE lightness L* of luminance factor Y, both 0-100. */
export const lightnessFromY = (y: number): number => 116 * compress(y / 100) - 16;

/** CIELAB chroma C*ab. */
export const chromaOf = (lab: Lab<White>): number => Math.hypot(lab.a, lab.b);

/** CIELAB hue angle h_ab, degrees in [0, 360); 0 for a neutral. */
export function hueDegOf(lab: Lab<White>): number {
  const deg = (Math.atan2(lab.b, lab.a) * 180) / Math.PI;
  return deg < 0 ? deg + 360 : deg;
}
