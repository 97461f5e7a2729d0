import { type Result, success } from '../result';
import { channelsFromHex, matrixFromPrimaries } from './display';
import { labD65FromXyzD65 } from './lab';
import { apply } from './matrix3';
import { decodeSrgb } from './srgb-transfer';
import type { Lab } from './types';

// Primaries of SMPTE EG 432-1 with the D65 white and the transfer curve of sRGB, as CSS Color 4 defines 'display-p3'.
/** XYZ (0-1) of linear Display P3. */
export const XYZ_FROM_LINEAR_P3 = matrixFromPrimaries([0.68, 0.32], [0.265, 0.69], [0.15, 0.06]);

/** CIELAB of '#rrggbb' or '#rgb' (with or without '#', any case), read as Display P3. Problem: 'hex-not-understood'. */
export function labD65FromDisplayP3(hex: string): Result<Lab<'D65-2'>> {
  const channels = channelsFromHex(hex);
  if (!channels.ok) return channels;
  const [r, g, b] = channels.value;
  const linear = [100 * decodeSrgb(r), 100 * decodeSrgb(g), 100 * decodeSrgb(b)] as const;
  const [x, y, z] = apply(XYZ_FROM_LINEAR_P3, linear);
  return success(labD65FromXyzD65({ x, y, z }));
}
