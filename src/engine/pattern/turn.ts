import type { PatternTexture } from './types';

/** A pattern turned a quarter: its s axis lies along t and the other way round. */
export function turnPattern({ width, height, width_m, height_m, data }: PatternTexture): PatternTexture {
  const from = new Uint32Array(data.buffer, data.byteOffset, width * height);
  const to = new Uint32Array(width * height);
  for (let row = 0; row < height; row++) {
    for (let column = 0; column < width; column++) to[column * height + row] = from[row * width + column]!;
  }
  return { width: height, height: width, width_m: height_m, height_m: width_m, data: new Uint8Array(to.buffer) };
}
