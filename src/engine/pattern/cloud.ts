import type { Frame } from './frame';
import { fractalNoise, hashTexel, sampleWrapped } from './noise';
import type { Sheet } from './sheet';

/** Fired clay, concrete and the like: soft darker clouds of about `size_mm`, trowel drift, and fine pores in the gain. */
export function cloudSheet(frame: Frame, size_mm: number, own: number, seed: number): Sheet {
  const { width, height } = frame;
  const cellsX = frame.width_mm / size_mm;
  const cellsY = frame.height_mm / size_mm;
  const warpX = fractalNoise(width, height, cellsX, cellsY, 3, seed + 11);
  const warpY = fractalNoise(width, height, cellsX, cellsY, 3, seed + 12);
  const reachX = (0.06 * width) / cellsX;
  const reachY = (0.06 * height) / cellsY;
  // The trowel's sweeps: longer one way, faint.
  const sweep = fractalNoise(width, height, cellsX / 1.6, cellsY * 2.4, 3, seed + 14, 0.6);
  const mottle = fractalNoise(width, height, frame.width_mm / 14, frame.height_mm / 14, 2, seed + 13);
  const presence: Float32Array[] = [];
  for (let k = 0; k < own; k++) {
    const soft = fractalNoise(width, height, cellsX, cellsY, 6, seed + 101 * (k + 1), 0.64);
    const field = new Float32Array(width * height);
    for (let y = 0; y < height; y++) {
      for (let x = 0; x < width; x++) {
        const i = y * width + x;
        field[i] =
          sampleWrapped(soft, width, height, x + 0.5 + reachX * warpX[i]!, y + 0.5 + reachY * warpY[i]!) +
          0.22 * mottle[i]! +
          0.35 * sweep[i]!;
      }
    }
    presence.push(field);
  }
  const gain = new Float32Array(width * height);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const i = y * width + x;
      const grain = hashTexel(x, y, seed);
      const pore = grain > 0.9975 ? -0.1 : 0;
      gain[i] = 1 + 0.016 * mottle[i]! + 0.01 * warpX[i]! + 0.012 * sweep[i]! + 0.02 * (grain - 0.5) + pore;
    }
  }
  return { presence, edge: 5.4, gain };
}
