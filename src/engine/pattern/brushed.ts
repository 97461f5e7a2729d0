import type { Frame } from './frame';
import { fractalNoise } from './noise';
import type { Sheet } from './sheet';

/**
 * Brushed metal: the belt's lines along s, hair-thin and very long, most of them faint and a few deeper; no broad bands, which a belt
 * does not leave. So faint that the metal's color is not in question.
 */
export function brushedSheet(frame: Frame, own: number, seed: number): Sheet {
  const { width, height } = frame;
  const lines = (long_mm: number, thick_mm: number, salt: number): Float32Array =>
    fractalNoise(width, height, frame.width_mm / long_mm, frame.height_mm / thick_mm, 1, seed + salt);
  const fine = lines(650, 1, 52);
  const short = lines(150, 1, 53);
  const wide = lines(1000, 5, 54);
  const gain = new Float32Array(width * height);
  for (let i = 0; i < gain.length; i++) {
    const deep = short[i]! * short[i]! * short[i]!;
    gain[i] = 1 + 0.013 * fine[i]! - 0.0045 * deep + 0.006 * wide[i]!;
  }
  const presence: Float32Array[] = [];
  for (let k = 0; k < own; k++) {
    presence.push(fractalNoise(width, height, frame.width_mm / 300, frame.height_mm / 6, 2, seed + 60 + k));
  }
  return { presence, edge: 2, gain };
}
