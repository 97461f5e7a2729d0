import { mulberry32 } from '../random';
import { type Frame, texelSize } from './frame';
import { fractalNoise } from './noise';
import { type GridPlace, type PieceGrid, placeOnGrid } from './pieces';
import type { Sheet } from './sheet';

/** The gathered rim takes at most this part of a piece's shorter side: a wider one would round the tile off to the eye. */
const MOST_RIM = 0.09;

/**
 * Hand glaze on pieces: the glaze runs before it sets and gathers along the edges, most along one side of each piece, and
 * in a few shallow hollows; where it is thin the piece is a little lighter. `size_mm` is the width of the gathered rim, `distance`
 * that of each texel from its piece's edge, mm.
 */
export function poolSheet(
  frame: Frame,
  grid: PieceGrid,
  distance: Float32Array,
  size_mm: number,
  own: number,
  seed: number,
): Sheet {
  const { width, height } = frame;
  const [ds, dt] = texelSize(frame);
  const [ms, mt] = grid.module_mm;
  const broad = fractalNoise(width, height, frame.width_mm / 45, frame.height_mm / 45, 3, seed + 21);
  const fine = fractalNoise(width, height, frame.width_mm / 9, frame.height_mm / 9, 2, seed + 22);
  const rim_mm = Math.min(0.55 * size_mm, MOST_RIM * Math.min(ms, mt));
  const random = mulberry32(seed ^ 0x9001);
  const count = grid.columns * grid.rows;
  const leanS = new Float32Array(count);
  const leanT = new Float32Array(count);
  const amount = new Float32Array(count);
  for (let p = 0; p < count; p++) {
    const angle = 2 * Math.PI * random();
    const lean = 0.2 + 0.9 * random();
    leanS[p] = (lean * Math.cos(angle)) / ms;
    leanT[p] = (lean * Math.sin(angle)) / mt;
    amount[p] = 0.45 * (random() + random() - 1);
  }
  const at: GridPlace = { piece: 0, u: 0, v: 0 };
  const field = new Float32Array(width * height);
  const gain = new Float32Array(width * height);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const i = y * width + x;
      placeOnGrid(grid, (x + 0.5) * ds, (y + 0.5) * dt, at);
      const { piece: p, u, v } = at;
      const d = Math.max(0, distance[i]! + rim_mm * (0.24 * broad[i]! + 0.09 * fine[i]!));
      const rim = Math.exp(-d / rim_mm);
      const run = leanS[p]! * u + leanT[p]! * v;
      const depth = 1.25 * rim + 0.42 * run + 0.26 * broad[i]! + 0.05 * fine[i]! + amount[p]!;
      field[i] = depth;
      // Glaze breaks thin over the arris itself: a lighter line about a millimetre wide.
      const arris = Math.exp(-distance[i]! / 0.9);
      gain[i] = 1 - 0.045 * depth + 0.012 * fine[i]! + 0.1 * arris;
    }
  }
  const presence: Float32Array[] = [field];
  for (let k = 1; k < own; k++)
    presence.push(fractalNoise(width, height, frame.width_mm / 60, frame.height_mm / 60, 4, seed + 300 + k));
  return { presence, edge: 1.1, gain };
}
