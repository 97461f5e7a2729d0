import { mulberry32 } from '../random';

/**
 * Adds gradient noise (Perlin 1985, fade curve of Perlin 2002) that repeats over the field, `cellsX` x `cellsY` cells.
 * Texel centres at (i + 0.5) / n.
 */
function addGradientNoise(
  out: Float32Array,
  width: number,
  height: number,
  cellsX: number,
  cellsY: number,
  amplitude: number,
  seed: number,
): void {
  const random = mulberry32(seed);
  const gx = new Float32Array(cellsX * cellsY);
  const gy = new Float32Array(cellsX * cellsY);
  for (let i = 0; i < gx.length; i++) {
    const angle = 2 * Math.PI * random();
    gx[i] = Math.cos(angle) * amplitude;
    gy[i] = Math.sin(angle) * amplitude;
  }
  const left = new Int32Array(width);
  const right = new Int32Array(width);
  const fx = new Float32Array(width);
  const fadeX = new Float32Array(width);
  for (let x = 0; x < width; x++) {
    const u = ((x + 0.5) * cellsX) / width;
    const i = Math.floor(u);
    const f = u - i;
    left[x] = i % cellsX;
    right[x] = (i + 1) % cellsX;
    fx[x] = f;
    fadeX[x] = f * f * f * (f * (f * 6 - 15) + 10);
  }
  for (let y = 0; y < height; y++) {
    const v = ((y + 0.5) * cellsY) / height;
    const j = Math.floor(v);
    const fy = v - j;
    const fadeY = fy * fy * fy * (fy * (fy * 6 - 15) + 10);
    const low = (j % cellsY) * cellsX;
    const high = ((j + 1) % cellsY) * cellsX;
    const row = y * width;
    for (let x = 0; x < width; x++) {
      const a = low + left[x]!;
      const b = low + right[x]!;
      const c = high + left[x]!;
      const d = high + right[x]!;
      const f = fx[x]!;
      const na = gx[a]! * f + gy[a]! * fy;
      const nb = gx[b]! * (f - 1) + gy[b]! * fy;
      const nc = gx[c]! * f + gy[c]! * (fy - 1);
      const nd = gx[d]! * (f - 1) + gy[d]! * (fy - 1);
      const s = fadeX[x]!;
      const bottom = na + s * (nb - na);
      const top = nc + s * (nd - nc);
      out[row + x]! += bottom + fadeY * (top - bottom);
    }
  }
}

/** Makes the field's mean 0 and standard deviation 1, in place. */
export function standardize(field: Float32Array): Float32Array {
  let sum = 0;
  let sum2 = 0;
  for (let i = 0; i < field.length; i++) {
    sum += field[i]!;
    sum2 += field[i]! * field[i]!;
  }
  const mean = sum / field.length;
  const sd = Math.sqrt(Math.max(sum2 / field.length - mean * mean, 0));
  const scale = sd > 1e-9 ? 1 / sd : 0;
  for (let i = 0; i < field.length; i++) field[i] = (field[i]! - mean) * scale;
  return field;
}

/** Doubles, quadruples, ... a repeating field to width x height by bilinear interpolation between texel centres. */
export function enlarge(
  field: Float32Array,
  fromW: number,
  fromH: number,
  width: number,
  height: number,
): Float32Array {
  if (fromW === width && fromH === height) return field;
  const out = new Float32Array(width * height);
  const x0 = new Int32Array(width);
  const x1 = new Int32Array(width);
  const wx = new Float32Array(width);
  for (let x = 0; x < width; x++) {
    const u = ((x + 0.5) * fromW) / width - 0.5;
    const i = Math.floor(u);
    wx[x] = u - i;
    x0[x] = (i + fromW) % fromW;
    x1[x] = (i + 1) % fromW;
  }
  for (let y = 0; y < height; y++) {
    const v = ((y + 0.5) * fromH) / height - 0.5;
    const j = Math.floor(v);
    const wy = v - j;
    const low = ((j + fromH) % fromH) * fromW;
    const high = ((j + 1) % fromH) * fromW;
    const row = y * width;
    for (let x = 0; x < width; x++) {
      const a = x0[x]!;
      const b = x1[x]!;
      const w = wx[x]!;
      const bottom = field[low + a]! + w * (field[low + b]! - field[low + a]!);
      const top = field[high + a]! + w * (field[high + b]! - field[high + a]!);
      out[row + x] = bottom + wy * (top - bottom);
    }
  }
  return out;
}

/**
 * Sum of `octaves` gradient noises, each of twice the frequency and `persistence` times the amplitude of the one before;
 * repeating, mean 0, standard deviation 1. Coarse sums are made small and enlarged, which the eye cannot tell.
 */
export function fractalNoise(
  width: number,
  height: number,
  cellsX: number,
  cellsY: number,
  octaves: number,
  seed: number,
  persistence = 0.5,
): Float32Array {
  // Cells smaller than two texels cannot be shown: such octaves are left out.
  const nx = Math.min(width / 2, Math.max(1, Math.round(cellsX)));
  const ny = Math.min(height / 2, Math.max(1, Math.round(cellsY)));
  const room = 1 + Math.floor(Math.log2(Math.min(width / (2 * nx), height / (2 * ny))));
  const used = Math.min(octaves, room);
  const finest = 2 ** (used - 1);
  const w = reducedSize(width, nx * finest);
  const h = reducedSize(height, ny * finest);
  const small = new Float32Array(w * h);
  let amplitude = 1;
  let scale = 1;
  for (let o = 0; o < used; o++) {
    addGradientNoise(small, w, h, nx * scale, ny * scale, amplitude, seed + 7919 * (o + 1));
    amplitude *= persistence;
    scale *= 2;
  }
  return standardize(enlarge(small, w, h, width, height));
}

function reducedSize(size: number, cells: number): number {
  let reduced = size;
  while (reduced % 2 === 0 && reduced / 2 >= cells * 4) reduced /= 2;
  return reduced;
}

/** Value of a repeating field at texel coordinates (0.5 = centre of the first texel), bilinear. */
export function sampleWrapped(field: Float32Array, width: number, height: number, x: number, y: number): number {
  const u = x - 0.5;
  const v = y - 0.5;
  const i = Math.floor(u);
  const j = Math.floor(v);
  const fx = u - i;
  const fy = v - j;
  const a = ((i % width) + width) % width;
  const b = a + 1 === width ? 0 : a + 1;
  const c = ((j % height) + height) % height;
  const low = c * width;
  const high = (c + 1 === height ? 0 : c + 1) * width;
  const bottom = field[low + a]! + fx * (field[low + b]! - field[low + a]!);
  const top = field[high + a]! + fx * (field[high + b]! - field[high + a]!);
  return bottom + fy * (top - bottom);
}

/** Hash of a texel, 0 to 1: for dithering and grain without a frequency. */
export function hashTexel(x: number, y: number, seed: number): number {
  let h = Math.imul(x, 0x27d4eb2d) ^ Math.imul(y, 0x165667b1) ^ seed;
  h = Math.imul(h ^ (h >>> 15), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return ((h ^ (h >>> 16)) >>> 0) / 4294967296;
}

/** Cells kept around the field so that neighbours need no wrapping. */
const MARGIN = 2;

/**
 * Nearest of the seeded points, one in each of `cellsX` x `cellsY` cells (Worley 1996), per texel, repeating. Points differ
 * in pull, so cells differ in size. `warpX`, `warpY` shift the place looked up, in cells, by less than one. Returns the
 * index of the point's cell.
 */
export function nearestPoints(
  width: number,
  height: number,
  cellsX: number,
  cellsY: number,
  warpX: Float32Array,
  warpY: Float32Array,
  seed: number,
): Int32Array {
  const random = mulberry32(seed);
  const own = new Float32Array(cellsX * cellsY * 3);
  for (let i = 0; i < own.length; i++) own[i] = random();
  const stride = cellsX + 2 * MARGIN;
  const padded = stride * (cellsY + 2 * MARGIN);
  const px = new Float32Array(padded);
  const py = new Float32Array(padded);
  const pull = new Float32Array(padded);
  const cell = new Int32Array(padded);
  for (let j = -MARGIN; j < cellsY + MARGIN; j++) {
    for (let i = -MARGIN; i < cellsX + MARGIN; i++) {
      const c = ((j + cellsY) % cellsY) * cellsX + ((i + cellsX) % cellsX);
      const at = (j + MARGIN) * stride + i + MARGIN;
      px[at] = i + own[3 * c]!;
      py[at] = j + own[3 * c + 1]!;
      pull[at] = 0.5 + own[3 * c + 2]!;
      cell[at] = c;
    }
  }
  const nearest = new Int32Array(width * height);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const k = y * width + x;
      const u = ((x + 0.5) * cellsX) / width + warpX[k]!;
      const v = ((y + 0.5) * cellsY) / height + warpY[k]!;
      const i = Math.min(cellsX, Math.max(-1, Math.floor(u)));
      const j = Math.min(cellsY, Math.max(-1, Math.floor(v)));
      let best = 1e9;
      let at = 0;
      for (let dj = -1; dj <= 1; dj++) {
        const first = (j + dj + MARGIN) * stride + i - 1 + MARGIN;
        for (let c = first; c < first + 3; c++) {
          const dx = px[c]! - u;
          const dy = py[c]! - v;
          const d2 = (dx * dx + dy * dy) * pull[c]!;
          if (d2 < best) {
            best = d2;
            at = c;
          }
        }
      }
      nearest[k] = cell[at]!;
    }
  }
  return nearest;
}
