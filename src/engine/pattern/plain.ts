import type { Frame } from './frame';
import { fractalNoise, hashTexel } from './noise';
import type { Sheet } from './sheet';
import type { Variation } from './types';

/**
 * How much a place of one even color differs from those around it, as one standard deviation of the gain: nothing one sees in paint
 * and laminate, a fine grain in cast and engineered stone, mottling in what grew or was fired. This project's choice.
 */
const MOTTLE: { readonly [V in Variation]: number } = { V0: 0.004, V1: 0.009, V2: 0.018, V3: 0.028, V4: 0.036 };

/**
 * One even color, with the unevenness of its kind: soft clouds of a few cm, mottling of a few mm, and a fine grain; `glazed` has
 * clouds only, as a glaze that ran.
 */
export function plainSheet(frame: Frame, own: number, variation: Variation, glazed: boolean, seed: number): Sheet {
  const { width, height } = frame;
  const sigma = MOTTLE[variation];
  const cells = (mm: number, octaves: number, salt: number, persistence?: number): Float32Array =>
    fractalNoise(width, height, frame.width_mm / mm, frame.height_mm / mm, octaves, seed + salt, persistence);
  const gain = cells(60, 2, 51);
  if (glazed || variation === 'V0') for (let i = 0; i < gain.length; i++) gain[i] = 1 + sigma * gain[i]!;
  else {
    const mottle = cells(11, 3, 53, 0.7);
    for (let y = 0; y < height; y++) {
      for (let x = 0; x < width; x++) {
        const i = y * width + x;
        const grain = hashTexel(x, y, seed + 55) - 0.5;
        gain[i] = 1 + sigma * (0.55 * gain[i]! + 0.7 * mottle[i]! + 1.2 * grain);
      }
    }
  }
  const presence: Float32Array[] = [];
  for (let k = 0; k < own; k++) presence.push(cells(90, 4, 60 + k));
  return { presence, edge: 2, gain };
}
