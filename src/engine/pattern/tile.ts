import { mulberry32 } from '../random';
import { type Frame, texelSize } from './frame';
import type { PieceRows } from './pieces';

/** Which piece each texel shows, and how much of the texel's area is piece (the rest is joint). */
export interface PieceMap {
  readonly piece: Int32Array;
  readonly cover: Float32Array;
}

/** Cuts a field into pieces: the piece at each texel centre, and exact area coverage, so that joint shares are exact. */
export function mapPieces(frame: Frame, rows: PieceRows): PieceMap {
  const { width, height } = frame;
  const [ds, dt] = texelSize(frame);
  const [ms, mt] = rows.module_mm;
  const half = rows.joint_mm / 2;
  const along = new Float32Array(rows.rows * width);
  const column = new Int32Array(rows.rows * width);
  const length = ms - rows.joint_mm;
  for (let r = 0; r < rows.rows; r++) {
    // Length of pieces up to a place, counted from the row's first joint; differences of it are coverages.
    const covered = (s: number): number => {
      const u = s - rows.offset_mm[r]!;
      const k = Math.floor(u / ms);
      return k * length + Math.min(length, Math.max(0, u - k * ms - half));
    };
    for (let x = 0; x < width; x++) {
      along[r * width + x] = (covered((x + 1) * ds) - covered(x * ds)) / ds;
      const k = Math.floor(((x + 0.5) * ds - rows.offset_mm[r]!) / ms);
      column[r * width + x] = ((k % rows.columns) + rows.columns) % rows.columns;
    }
  }
  const piece = new Int32Array(width * height);
  const cover = new Float32Array(width * height);
  for (let y = 0; y < height; y++) {
    const low = y * dt;
    const high = low + dt;
    const own = Math.min(rows.rows - 1, Math.floor((low + dt / 2) / mt));
    const first = Math.max(0, Math.floor(low / mt));
    const last = Math.min(rows.rows - 1, Math.floor((high - 1e-9) / mt));
    for (let r = first; r <= last; r++) {
      const part = (Math.min(high, (r + 1) * mt - half) - Math.max(low, r * mt + half)) / dt;
      if (part <= 0) continue;
      for (let x = 0; x < width; x++) cover[y * width + x]! += part * along[r * width + x]!;
    }
    for (let x = 0; x < width; x++) piece[y * width + x] = own * rows.columns + column[own * width + x]!;
  }
  return { piece, cover };
}

/** Gives every piece its own part of the sheet, turned by half a turn or not, as pieces cut from one material have. */
export function cutFromSheet(
  fields: readonly Float32Array[],
  frame: Frame,
  rows: PieceRows,
  map: PieceMap,
  seed: number,
): void {
  const { width, height } = frame;
  const count = rows.columns * rows.rows;
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
export function edgeDistance(frame: Frame, rows: PieceRows): Float32Array {
  const { width, height } = frame;
  const [ds, dt] = texelSize(frame);
  const [ms, mt] = rows.module_mm;
  const half = rows.joint_mm / 2;
  const out = new Float32Array(width * height);
  for (let y = 0; y < height; y++) {
    const t = (y + 0.5) * dt;
    const r = Math.min(rows.rows - 1, Math.floor(t / mt));
    const v = t - r * mt;
    const dv = Math.min(v, mt - v) - half;
    for (let x = 0; x < width; x++) {
      const q = ((x + 0.5) * ds - rows.offset_mm[r]!) / ms;
      const u = (q - Math.floor(q)) * ms;
      out[y * width + x] = Math.max(0, Math.min(dv, Math.min(u, ms - u) - half));
    }
  }
  return out;
}
