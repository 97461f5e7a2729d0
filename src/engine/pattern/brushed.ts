import type { Frame } from './frame';
import { fractalNoise } from './noise';
import type { Sheet } from './sheet';

/** Brushed metal: streaks of the belt along s, long and hair-thin, so faint that the metal's colour is not in question. */
export function brushedSheet(frame: Frame, own: number, seed: number): Sheet {
  const { width, height } = frame;
  const long = fractalNoise(width, height, frame.width_mm / 420, frame.height_mm / 3.2, 1, seed + 52);
  const short = fractalNoise(width, height, frame.width_mm / 90, frame.height_mm / 1.7, 1, seed + 53);
  const broad = fractalNoise(width, height, frame.width_mm / 900, frame.height_mm / 26, 2, seed + 54);
  const gain = new Float32Array(width * height);
  for (let i = 0; i < gain.length; i++) gain[i] = 1 + 0.016 * long[i]! + 0.012 * short[i]! + 0.008 * broad[i]!;
  const presence: Float32Array[] = [];
  for (let k = 0; k < own; k++) {
    presence.push(fractalNoise(width, height, frame.width_mm / 300, frame.height_mm / 6, 2, seed + 60 + k));
  }
  return { presence, edge: 2, gain };
}
