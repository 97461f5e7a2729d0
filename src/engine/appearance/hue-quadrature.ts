// Unique hues: angle and eccentricity (CIE 159:2004, table 2; the same in CIE 248:2022).
const UNIQUE_HUES = [
  { h_deg: 20.14, e: 0.8 },
  { h_deg: 90, e: 0.7 },
  { h_deg: 164.25, e: 1 },
  { h_deg: 237.53, e: 1.2 },
  { h_deg: 380.14, e: 0.8 },
] as const;

/** Hue quadrature H, 0-400, of a hue angle of CIECAM02 or CAM16: 0 red, 100 yellow, 200 green, 300 blue. */
export function hueQuadrature(h_deg: number): number {
  const h = h_deg < 20.14 ? h_deg + 360 : h_deg;
  let i = 0;
  while (i < 3 && h >= UNIQUE_HUES[i + 1]!.h_deg) i++;
  const from = UNIQUE_HUES[i]!;
  const to = UNIQUE_HUES[i + 1]!;
  const done = (h - from.h_deg) / from.e;
  const left = (to.h_deg - h) / to.e;
  return 100 * i + (100 * done) / (done + left);
}
