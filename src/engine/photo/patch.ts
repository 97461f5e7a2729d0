import { crossingsAt } from './quad-rows';
import type { LinearPicture, Patch, PictureQuad } from './types';

/** Cells that belong to an area: those whose middle lies within its four corners. At most about `most` blocks of them. */
export function patchIn(picture: LinearPicture, quad: PictureQuad, most: number): Patch {
  const corners = quad.map(({ x, y }) => ({ x: x / picture.step, y: y / picture.step }));
  const clamp = (value: number, limit: number) => Math.min(limit, Math.max(0, value));
  const [xs, ys] = [corners.map(({ x }) => x), corners.map(({ y }) => y)];
  const left = clamp(Math.floor(Math.min(...xs)), picture.width);
  const right = clamp(Math.ceil(Math.max(...xs)), picture.width);
  const top = clamp(Math.floor(Math.min(...ys)), picture.height);
  const bottom = clamp(Math.ceil(Math.max(...ys)), picture.height);
  const cells = Math.max(0, right - left) * Math.max(0, bottom - top);
  const block = Math.max(1, Math.ceil(Math.sqrt(cells / most)));
  const width = Math.ceil((right - left) / block);
  const height = Math.ceil((bottom - top) / block);
  const xyz = new Float32Array(3 * width * height);
  const counts = new Uint16Array(width * height);
  let [high, low, inCells] = [0, 0, 0];
  for (let y = top; y < bottom; y++) {
    const crossings = crossingsAt(corners, y + 0.5);
    for (let k = 0; k + 1 < crossings.length; k += 2) {
      const from = Math.max(left, Math.ceil(crossings[k]! - 0.5));
      const to = Math.min(right, Math.ceil(crossings[k + 1]! - 0.5));
      for (let x = from; x < to; x++) {
        const cell = y * picture.width + x;
        const at = Math.floor((y - top) / block) * width + Math.floor((x - left) / block);
        for (let c = 0; c < 3; c++) xyz[3 * at + c]! += picture.xyz[3 * cell + c]!;
        counts[at]!++;
        high += picture.high[cell]!;
        low += picture.low[cell]!;
        inCells++;
      }
    }
  }
  const inside = new Uint8Array(width * height);
  let count = 0;
  for (let at = 0; at < counts.length; at++) {
    // A block of which less than half lies inside would tell of few pixels.
    if (2 * counts[at]! < block * block) continue;
    for (let c = 0; c < 3; c++) xyz[3 * at + c]! /= counts[at]!;
    inside[at] = 1;
    count++;
  }
  const { step } = picture;
  return {
    width,
    height,
    left: left * step,
    top: top * step,
    step: block * step,
    xyz,
    inside,
    count,
    pixels: inCells * step * step,
    high: inCells ? high / (255 * inCells) : 0,
    low: inCells ? low / (255 * inCells) : 0,
  };
}

/** Middle of block `at` in pixels of the picture. */
export const blockX = ({ left, step, width }: Patch, at: number): number => left + ((at % width) + 0.5) * step;
export const blockY = ({ top, step, width }: Patch, at: number): number => top + (Math.floor(at / width) + 0.5) * step;
