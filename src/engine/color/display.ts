import { failure, type Result, success } from '../result';
import { labD65FromXyzD65, xyzD65FromLabD65 } from './lab';
import { apply, applyRow, diagonal, inverse, multiply } from './matrix3';
import { decodeSrgb, encodeSrgb } from './srgb-transfer';
import type { Lab, LinearSrgb, Matrix3, Xyz } from './types';
import { D65_2 } from './whites';

export { decodeSrgb, encodeSrgb };

// The matrix is derived from the primaries of IEC 61966-2-1 with our own D65, so that white is 1, 1, 1 exactly;
// it stays within 2e-4 of the printed one, which uses the rounded white 0.3127, 0.3290.
/** XYZ (0-1) of linear sRGB. */
export const XYZ_FROM_LINEAR_SRGB = matrixFromPrimaries([0.64, 0.33], [0.3, 0.6], [0.15, 0.06]);
const LINEAR_FROM_XYZ = inverse(XYZ_FROM_LINEAR_SRGB);

/** Linear sRGB, 1 = white, of tristimulus values with Y = 100 for white. May leave 0-1 outside the sRGB gamut. */
export function linearSrgbFromXyzD65(xyz: Xyz<'D65-2'>): LinearSrgb {
  const [x, y, z] = [xyz.x / 100, xyz.y / 100, xyz.z / 100];
  return {
    r: applyRow(LINEAR_FROM_XYZ, 0, x, y, z),
    g: applyRow(LINEAR_FROM_XYZ, 3, x, y, z),
    b: applyRow(LINEAR_FROM_XYZ, 6, x, y, z),
  };
}

/** Tristimulus values, Y = 100 for white, of linear sRGB. */
export function xyzD65FromLinearSrgb(linear: LinearSrgb): Xyz<'D65-2'> {
  const [r, g, b] = [linear.r * 100, linear.g * 100, linear.b * 100];
  return {
    x: applyRow(XYZ_FROM_LINEAR_SRGB, 0, r, g, b),
    y: applyRow(XYZ_FROM_LINEAR_SRGB, 3, r, g, b),
    z: applyRow(XYZ_FROM_LINEAR_SRGB, 6, r, g, b),
  };
}

/**
 * 8 bit sRGB of linear light. What a screen cannot show is brought in at constant chromaticity: negative channels
 * to 0, and when a channel exceeds 1 all are divided by the largest.
 */
export function srgb8FromLinear(linear: LinearSrgb): [number, number, number] {
  const r = Math.max(0, linear.r);
  const g = Math.max(0, linear.g);
  const b = Math.max(0, linear.b);
  const scale = 1 / Math.max(1, r, g, b);
  const to8 = (value: number) => Math.round(255 * encodeSrgb(value * scale));
  return [to8(r), to8(g), to8(b)];
}

/** '#rrggbb' for a swatch on screen; colours outside sRGB are brought in as `srgb8FromLinear` does. */
export function hexFromLab(lab: Lab<'D65-2'>): string {
  const bytes = srgb8FromLinear(linearSrgbFromXyzD65(xyzD65FromLabD65(lab)));
  return `#${bytes.map((byte) => byte.toString(16).padStart(2, '0')).join('')}`;
}

/** CIELAB of '#rrggbb' or '#rgb' (with or without '#', any case), read as sRGB. */
export function labD65FromHex(hex: string): Result<Lab<'D65-2'>> {
  const channels = channelsFromHex(hex);
  if (!channels.ok) return channels;
  const [r, g, b] = channels.value;
  const linear = { r: decodeSrgb(r), g: decodeSrgb(g), b: decodeSrgb(b) };
  return success(labD65FromXyzD65(xyzD65FromLinearSrgb(linear)));
}

/** Code values 0-1 of '#rrggbb' or '#rgb', whatever space they are in. Problem: 'hex-not-understood'. */
export function channelsFromHex(hex: string): Result<readonly [r: number, g: number, b: number]> {
  const digits = /^#?([0-9a-f]{3}|[0-9a-f]{6})$/i.exec(hex.trim())?.[1];
  if (digits === undefined) {
    return failure({
      code: 'hex-not-understood',
      text: `'${hex}' is not a screen color.`,
      remedy: 'Write six hexadecimal digits, for example #d8d2c4.',
    });
  }
  const long = digits.length === 3 ? [...digits].map((digit) => digit + digit).join('') : digits;
  const channel = (at: number) => Number.parseInt(long.slice(at, at + 2), 16) / 255;
  return success([channel(0), channel(2), channel(4)]);
}

/** Whether an sRGB screen can show the colour (to 1e-6 of full scale). */
export function isInSrgb(lab: Lab<'D65-2'>): boolean {
  const { r, g, b } = linearSrgbFromXyzD65(xyzD65FromLabD65(lab));
  return Math.min(r, g, b) >= -1e-6 && Math.max(r, g, b) <= 1 + 1e-6;
}

type XyPair = readonly [x: number, y: number];

/** XYZ (0-1) of linear light with these primaries and our own D65 as white. */
export function matrixFromPrimaries(red: XyPair, green: XyPair, blue: XyPair): Matrix3 {
  const column = ([x, y]: XyPair) => [x / y, 1, (1 - x - y) / y] as const;
  const [r, g, b] = [column(red), column(green), column(blue)];
  const unscaled: Matrix3 = [r[0], g[0], b[0], r[1], g[1], b[1], r[2], g[2], b[2]];
  const white = apply(inverse(unscaled), [D65_2.x / 100, D65_2.y / 100, D65_2.z / 100]);
  return multiply(unscaled, diagonal(white));
}
