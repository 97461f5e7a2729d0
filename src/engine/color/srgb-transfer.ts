// IEC 61966-2-1:1999, with the thresholds as printed.

/** sRGB code value (0-1) of linear light (0-1); odd-symmetric below 0. */
export function encodeSrgb(linear: number): number {
  const x = Math.abs(linear);
  const code = x <= 0.0031308 ? 12.92 * x : 1.055 * x ** (1 / 2.4) - 0.055;
  return linear < 0 ? -code : code;
}

/** Linear light (0-1) of an sRGB code value (0-1); odd-symmetric below 0. */
export function decodeSrgb(code: number): number {
  const x = Math.abs(code);
  const linear = x <= 0.04045 ? x / 12.92 : ((x + 0.055) / 1.055) ** 2.4;
  return code < 0 ? -linear : linear;
}
