import { type Frame, texelSize } from './frame';
import { fractalNoise, hashTexel, sampleWrapped, standardize } from './noise';
import type { Sheet } from './sheet';

/**
 * Split-face slate: the stone parts along thin layers, which leaves flat terraces with ragged steps between them. The
 * steps' lips and some bloom on the terraces are the lighter cleft component; height shows as slight relief in the gain.
 * `size_mm` is about the width of a terrace.
 */
export function cleftSheet(frame: Frame, size_mm: number, own: number, seed: number): Sheet {
  const { width, height } = frame;
  const [ds, dt] = texelSize(frame);
  const cellsX = frame.width_mm / (size_mm * 2.3);
  const cellsY = frame.height_mm / (size_mm * 0.95);
  const warpX = fractalNoise(width, height, cellsX * 2.6, cellsY * 3, 4, seed + 41, 0.62);
  const warpY = fractalNoise(width, height, cellsX * 2.6, cellsY * 3, 4, seed + 42, 0.62);
  const plane = fractalNoise(width, height, cellsX, cellsY, 3, seed + 43, 0.42);
  const rough = fractalNoise(width, height, frame.width_mm / 16, frame.height_mm / 7, 3, seed + 44, 0.62);
  const bloom = fractalNoise(width, height, cellsX * 1.5, cellsY * 1.5, 4, seed + 45, 0.65);
  const level = new Float32Array(width * height);
  const lip = new Float32Array(width * height);
  const reachX = (0.1 * size_mm) / ds;
  const reachY = (0.07 * size_mm) / dt;
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const i = y * width + x;
      const base = sampleWrapped(plane, width, height, x + 0.5 + reachX * warpX[i]!, y + 0.5 + reachY * warpY[i]!);
      const v = 1.7 * base + 0.045 * rough[i]!;
      const k = Math.floor(v);
      const f = v - k;
      // Most of the rise happens in a short part of each layer: the step.
      const step = f < 0.86 ? 0.12 * (f / 0.86) : 0.12 + 0.88 * smooth((f - 0.86) / 0.14);
      level[i] = k + step + 0.035 * rough[i]!;
      lip[i] = f < 0.2 ? 1 - f / 0.2 : f > 0.97 ? (f - 0.97) / 0.03 : 0;
    }
  }
  const field = new Float32Array(width * height);
  const gain = new Float32Array(width * height);
  for (let y = 0; y < height; y++) {
    const up = (((y + 1) % height) * width) | 0;
    const down = ((y + height - 1) % height) * width;
    for (let x = 0; x < width; x++) {
      const i = y * width + x;
      const right = (x + 1) % width;
      const left = (x + width - 1) % width;
      const slopeS = (level[y * width + right]! - level[y * width + left]!) / (2 * ds);
      const slopeT = (level[up + x]! - level[down + x]!) / (2 * dt);
      const relief = slopeS * 0.45 - slopeT;
      field[i] = lip[i]! * (0.7 + 0.6 * bloom[i]!) * 0.8 + 0.36 * bloom[i]! + 0.3 * rough[i]!;
      gain[i] =
        1 +
        0.24 * Math.max(-1, Math.min(1, relief * 2.6)) +
        0.035 * rough[i]! +
        0.03 * bloom[i]! +
        0.05 * (hashTexel(x, y, seed) - 0.5);
    }
  }
  const presence: Float32Array[] = [standardize(field)];
  for (let k = 1; k < own; k++) presence.push(fractalNoise(width, height, cellsX, cellsY, 5, seed + 800 + k, 0.6));
  return { presence, edge: 1.1, gain };
}

function smooth(x: number): number {
  return x * x * (3 - 2 * x);
}
