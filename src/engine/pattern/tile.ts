import { mulberry32 } from '../random';
import { type Frame, texelSize } from './frame';
import { coverHexagons } from './hexagon-cover';
import { edgeOfPiece, type GridPlace, type PieceGrid, placeOnGrid } from './pieces';

/** Which piece each texel shows, and how much of the texel's area is piece (the rest is joint). */
export interface PieceMap {
  readonly piece: Int32Array;
  readonly cover: Float32Array;
}

/** Cuts a field into pieces: the piece at each texel centre, and exact area coverage, so that joint shares are exact. */
export function mapPieces(frame: Frame, grid: PieceGrid): PieceMap {
  const { width, height } = frame;
  const [ds, dt] = texelSize(frame);
  const piece = new Int32Array(width * height);
  if (grid.shape === 'hexagon') {
    const at: GridPlace = { piece: 0, u: 0, v: 0 };
    for (let y = 0; y < height; y++) {
      for (let x = 0; x < width; x++) {
        placeOnGrid(grid, (x + 0.5) * ds, (y + 0.5) * dt, at);
        piece[y * width + x] = at.piece;
      }
    }
    return { piece, cover: coverHexagons(frame, grid) };
  }
  const [ms, mt] = grid.module_mm;
  const along = coverage(width, ds, ms, grid.joint_mm);
  const across = coverage(height, dt, mt, grid.joint_mm);
  const cover = new Float32Array(width * height);
  for (let y = 0; y < height; y++) {
    const row = Math.min(grid.rows - 1, Math.floor(((y + 0.5) * dt) / mt)) * grid.columns;
    for (let x = 0; x < width; x++) {
      const i = y * width + x;
      cover[i] = across[y]! * along[x]!;
      piece[i] = row + Math.min(grid.columns - 1, Math.floor(((x + 0.5) * ds) / ms));
    }
  }
  return { piece, cover };
}

/** Part of each of `count` steps that lies on pieces, for pieces one module apart with a joint between. */
function coverage(count: number, step: number, module: number, joint: number): Float32Array {
  const length = module - joint;
  // Length of pieces up to a place; differences of it are coverages.
  const covered = (s: number): number => {
    const k = Math.floor(s / module);
    return k * length + Math.min(length, Math.max(0, s - k * module - joint / 2));
  };
  return Float32Array.from({ length: count }, (_, i) => (covered((i + 1) * step) - covered(i * step)) / step);
}

/** Gives every piece its own part of the sheet, turned by half a turn or not, as pieces cut from one material have. */
export function cutFromSheet(
  fields: readonly Float32Array[],
  frame: Frame,
  grid: PieceGrid,
  map: PieceMap,
  seed: number,
): void {
  const { width, height } = frame;
  const count = grid.columns * grid.rows;
  const random = mulberry32(seed ^ 0x0ff5e7);
  const shiftX = new Int32Array(count);
  const shiftY = new Int32Array(count);
  const sign = new Int32Array(count);
  for (let p = 0; p < count; p++) {
    shiftX[p] = Math.floor(random() * width);
    shiftY[p] = Math.floor(random() * height);
    sign[p] = random() < 0.5 ? 1 : -1;
  }
  const from = new Int32Array(width * height);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const p = map.piece[y * width + x]!;
      let sx = sign[p]! * x + shiftX[p]!;
      let sy = sign[p]! * y + shiftY[p]!;
      if (sx < 0) sx += width;
      else if (sx >= width) sx -= width;
      if (sy < 0) sy += height;
      else if (sy >= height) sy -= height;
      from[y * width + x] = sy * width + sx;
    }
  }
  const sheet = new Float32Array(width * height);
  for (const field of fields) {
    sheet.set(field);
    for (let i = 0; i < field.length; i++) field[i] = sheet[from[i]!]!;
  }
}

/** Distance of every texel centre from its piece's edge, mm; 0 on the joint. */
export function edgeDistance(frame: Frame, grid: PieceGrid): Float32Array {
  const { width, height } = frame;
  const [ds, dt] = texelSize(frame);
  const out = new Float32Array(width * height);
  const at: GridPlace = { piece: 0, u: 0, v: 0 };
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      placeOnGrid(grid, (x + 0.5) * ds, (y + 0.5) * dt, at);
      out[y * width + x] = Math.max(0, edgeOfPiece(grid, at.u, at.v));
    }
  }
  return out;
}
