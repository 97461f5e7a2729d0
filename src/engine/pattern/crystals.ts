import { mulberry32 } from '../random';
import type { Frame } from './frame';
import { fractalNoise, nearestPoints } from './noise';
import type { Sheet } from './sheet';

/** Crystal sizes of the minerals in parts of the first one's, from the ground mass to the last component. */
const SIZES = [1.2, 0.66, 0.36, 0.32];

/**
 * Interlocking crystals (granite): every place belongs to some mineral. The ground's crystals are the largest and differ in
 * tone; components 1.. are minerals of ever smaller crystals that fill the room between, the last on top and gathered in
 * clumps and strings, as dark mica is. `size_mm` is the size of the larger crystals.
 */
export function crystalSheet(frame: Frame, size_mm: number, own: number, seed: number): Sheet {
  const { width, height } = frame;
  const size = width * height;
  const cells = (mm: number): readonly [number, number] => [frame.width_mm / mm, frame.height_mm / mm];
  const [warpS, warpT] = cells(size_mm * 0.42);
  const warpX = fractalNoise(width, height, warpS, warpT, 1, seed + 71);
  const warpY = fractalNoise(width, height, warpS, warpT, 1, seed + 72);
  for (let i = 0; i < size; i++) {
    warpX[i]! *= 0.15;
    warpY[i]! *= 0.15;
  }
  const [grainS, grainT] = cells(1.8);
  const grain = fractalNoise(width, height, grainS, grainT, 1, seed + 73);
  const gain = new Float32Array(size);
  for (let i = 0; i < size; i++) gain[i] = 1 + 0.035 * grain[i]!;
  const presence: Float32Array[] = [];
  for (let k = 0; k < Math.max(own, 1) + 1; k++) {
    const last = k === own && own > 1;
    const cell = size_mm * SIZES[Math.min(k, SIZES.length - 1)]!;
    const [cellsX, cellsY] = cells(cell).map((n) => Math.max(3, Math.round(n))) as [number, number];
    const nearest = nearestPoints(width, height, cellsX, cellsY, warpX, warpY, seed + 80 + k);
    const [clumpS, clumpT] = cells(size_mm * (last ? 2.2 : 4));
    const clump = k > 0 ? fractalNoise(width, height, clumpS, clumpT, 3, seed + 90 + k, 0.6) : null;
    const random = mulberry32(seed + 95 + k);
    const count = cellsX * cellsY;
    const key = new Float32Array(count);
    const tone = new Float32Array(count);
    for (let c = 0; c < count; c++) {
      key[c] = random();
      tone[c] = (k === 0 ? 0.26 : 0.16) * (random() + random() - 1);
    }
    const gathered = last ? 0.34 : 0.16;
    for (let i = 0; i < size; i++) gain[i]! += tone[nearest[i]!]!;
    if (!clump || k > own) continue;
    const field = new Float32Array(size);
    for (let i = 0; i < size; i++) field[i] = key[nearest[i]!]! + gathered * clump[i]! + 0.05 * grain[i]!;
    presence.push(field);
  }
  for (const field of presence) softenEdges(field, width, height);
  return { presence, edge: 0.2, gain: softenEdges(gain, width, height) };
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
