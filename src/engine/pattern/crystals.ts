import { mulberry32 } from '../random';
import type { Frame } from './frame';
import { fractalNoise, nearestPoints } from './noise';
import type { Sheet } from './sheet';

/**
 * Interlocking crystals (granite): every place belongs to some mineral. Components 1.. are minerals of ever smaller
 * crystals, the last on top and gathered in clumps, as dark mica is. `size_mm` is the size of the larger crystals.
 */
export function crystalSheet(frame: Frame, size_mm: number, own: number, seed: number): Sheet {
  const { width, height } = frame;
  const size = width * height;
  const warpX = fractalNoise(
    width,
    height,
    frame.width_mm / (size_mm * 0.8),
    frame.height_mm / (size_mm * 0.8),
    1,
    seed + 71,
  );
  const warpY = fractalNoise(
    width,
    height,
    frame.width_mm / (size_mm * 0.8),
    frame.height_mm / (size_mm * 0.8),
    1,
    seed + 72,
  );
  for (let i = 0; i < size; i++) {
    warpX[i]! *= 0.07;
    warpY[i]! *= 0.07;
  }
  const gain = new Float32Array(size).fill(1);
  const presence: Float32Array[] = [];
  for (let k = 0; k < Math.max(own, 1); k++) {
    const cell = size_mm * 0.62 ** k;
    const cellsX = Math.max(3, Math.round(frame.width_mm / cell));
    const cellsY = Math.max(3, Math.round(frame.height_mm / cell));
    const nearest = nearestPoints(width, height, cellsX, cellsY, warpX, warpY, seed + 80 + k);
    const clump = fractalNoise(
      width,
      height,
      frame.width_mm / (size_mm * 3.2),
      frame.height_mm / (size_mm * 3.2),
      2,
      seed + 90 + k,
    );
    const random = mulberry32(seed + 95 + k);
    const count = cellsX * cellsY;
    const key = new Float32Array(count);
    const tone = new Float32Array(count);
    const gathered = k === own - 1 && own > 1 ? 0.3 : 0.12;
    for (let c = 0; c < count; c++) {
      const x = Math.min(width - 1, Math.floor(((c % cellsX) + 0.5) * (width / cellsX)));
      const y = Math.min(height - 1, Math.floor((Math.floor(c / cellsX) + 0.5) * (height / cellsY)));
      key[c] = random() + gathered * clump[y * width + x]!;
      tone[c] = 0.22 * (random() - 0.5);
    }
    const field = new Float32Array(size);
    for (let i = 0; i < size; i++) {
      field[i] = key[nearest[i]!]!;
      gain[i]! += tone[nearest[i]!]! * (k === 0 ? 1 : 0.5);
    }
    if (k < own) presence.push(softenEdges(field, width, height));
  }
  return { presence, edge: 0.14, gain: softenEdges(gain, width, height) };
}

/** Averages each texel with its neighbours (1 2 1 in both directions), repeating, so that borders are not jagged. */
function softenEdges(field: Float32Array, width: number, height: number): Float32Array {
  const across = new Float32Array(field.length);
  for (let y = 0; y < height; y++) {
    const row = y * width;
    for (let x = 0; x < width; x++) {
      const before = field[row + (x === 0 ? width - 1 : x - 1)]!;
      const after = field[row + (x === width - 1 ? 0 : x + 1)]!;
      across[row + x] = 0.5 * field[row + x]! + 0.25 * (before + after);
    }
  }
  for (let y = 0; y < height; y++) {
    const below = (y === 0 ? height - 1 : y - 1) * width;
    const above = (y === height - 1 ? 0 : y + 1) * width;
    const row = y * width;
    for (let x = 0; x < width; x++)
      field[row + x] = 0.5 * across[row + x]! + 0.25 * (across[below + x]! + across[above + x]!);
  }
  return field;
}
