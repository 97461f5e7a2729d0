import type { Frame } from './frame';
import { fractalNoise } from './noise';
import type { Sheet } from './sheet';

/** One even colour, with the faint unevenness that any made surface has. */
export function plainSheet(frame: Frame, own: number, seed: number): Sheet {
  const { width, height } = frame;
  const gain = fractalNoise(width, height, frame.width_mm / 60, frame.height_mm / 60, 2, seed + 51);
  for (let i = 0; i < gain.length; i++) gain[i] = 1 + 0.004 * gain[i]!;
  const presence: Float32Array[] = [];
  for (let k = 0; k < own; k++) {
    presence.push(fractalNoise(width, height, frame.width_mm / 90, frame.height_mm / 90, 4, seed + 60 + k));
  }
  return { presence, edge: 2, gain };
}
