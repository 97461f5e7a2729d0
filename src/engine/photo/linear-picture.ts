import { XYZ_FROM_LINEAR_SRGB } from '../color/display';
import { XYZ_FROM_LINEAR_P3 } from '../color/display-p3';
import { decodeSrgb } from '../color/srgb-transfer';
import type { LinearPicture } from './types';

/** What the three numbers of a pixel mean; both have the transfer curve of sRGB. */
export type PictureSpace = 'srgb' | 'display-p3';

/** Codes from here on count as clipped; encoders and sharpening blur the very end. Our judgment. */
const HIGH_CODE = 253;
const LOW_CODE = 2;

/** More cells than this say nothing more about a sample, and take memory. */
const MOST_CELLS = 3_000_000;

const LINEAR_OF_CODE = Float64Array.from({ length: 256 }, (_, code) => decodeSrgb(code / 255));

/**
 * Takes a picture in, strip by strip, into linear light: cells are means of pixels in linear light, so that the mean color of an
 * area is that of its light. `take` adds the next rows, RGBA, 8 bit; transparent pixels count as they are coded.
 */
export function linearPictureMaker(width: number, height: number, space: PictureSpace) {
  const step = Math.max(1, Math.ceil(Math.sqrt((width * height) / MOST_CELLS)));
  const columns = Math.max(1, Math.floor(width / step));
  const rows = Math.max(1, Math.floor(height / step));
  const m = space === 'srgb' ? XYZ_FROM_LINEAR_SRGB : XYZ_FROM_LINEAR_P3;
  const sums = new Float32Array(3 * columns * rows);
  const highs = new Uint16Array(columns * rows);
  const lows = new Uint16Array(columns * rows);
  let y = 0;

  const take = (rgba: Uint8Array | Uint8ClampedArray): void => {
    const count = rgba.length / (4 * width);
    for (let row = 0; row < count; row++, y++) {
      const cellRow = Math.floor(y / step);
      // What is left over at the right and lower edges, less than a cell, belongs to no cell.
      if (cellRow >= rows) continue;
      for (let x = 0; x < columns * step && x < width; x++) {
        const at = 4 * (row * width + x);
        const cell = cellRow * columns + Math.floor(x / step);
        const [r, g, b] = [rgba[at]!, rgba[at + 1]!, rgba[at + 2]!];
        sums[3 * cell]! += LINEAR_OF_CODE[r]!;
        sums[3 * cell + 1]! += LINEAR_OF_CODE[g]!;
        sums[3 * cell + 2]! += LINEAR_OF_CODE[b]!;
        if (r >= HIGH_CODE || g >= HIGH_CODE || b >= HIGH_CODE) highs[cell]!++;
        if (r <= LOW_CODE || g <= LOW_CODE || b <= LOW_CODE) lows[cell]!++;
      }
    }
  };

  const finish = (): LinearPicture => {
    const pixels = Math.min(step, width) * Math.min(step, height);
    const byte = (count: number) => Math.round((255 * count) / pixels);
    for (let i = 0; i < sums.length; i += 3) {
      const [r, g, b] = [sums[i]! / pixels, sums[i + 1]! / pixels, sums[i + 2]! / pixels];
      sums[i] = m[0] * r + m[1] * g + m[2] * b;
      sums[i + 1] = m[3] * r + m[4] * g + m[5] * b;
      sums[i + 2] = m[6] * r + m[7] * g + m[8] * b;
    }
    return {
      width: columns,
      height: rows,
      step,
      xyz: sums,
      high: Uint8Array.from(highs, byte),
      low: Uint8Array.from(lows, byte),
    };
  };
  return { take, finish };
}
