import { srgb8FromLinear } from './display';
import type { LinearSrgb } from './types';

/** Two stops over display white a color has faded half way to white: our judgment, by eye. */
const HALF_FADED_OVER = 3;

/**
 * 8 bit sRGB of light in the picture. Up to display white exactly as `srgb8FromLinear` shows it. Brighter light clips at
 * constant chromaticity and fades towards white the more it is over, as it does on film and to a dazzled eye: a dark paint in
 * direct sun would else glow in a color that no paint has. The shader does the same (shaders/display.glsl).
 */
export function pictureSrgb8(linear: LinearSrgb): [number, number, number] {
  const peak = Math.max(linear.r, linear.g, linear.b);
  if (peak <= 1) return srgb8FromLinear(linear);
  const white = fadedShare(peak);
  const fade = (value: number) => (Math.max(0, value) / peak) * (1 - white) + white;
  return srgb8FromLinear({ r: fade(linear.r), g: fade(linear.g), b: fade(linear.b) });
}

/** How far a color has faded to white, 0-1, by its strongest channel over display white. */
const fadedShare = (peak: number): number => (peak - 1) / (peak - 1 + HALF_FADED_OVER);
