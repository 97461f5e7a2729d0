import { flattenPattern, isFlat } from '../../engine/pattern/flatten';
import type { PatternTexture } from '../../engine/pattern/types';

/** The lower left part of a pattern, at most this large in metres: a sample shows no more, and keeping all costs memory. */
export function cropTexture(texture: PatternTexture, width_m: number, height_m: number): PatternTexture {
  if (!isFlat(texture)) return flattenPattern(texture, width_m, height_m);
  const width = Math.min(texture.width, Math.ceil((width_m / texture.width_m) * texture.width));
  const height = Math.min(texture.height, Math.ceil((height_m / texture.height_m) * texture.height));
  if (width === texture.width && height === texture.height) return texture;
  const data = new Uint8Array(width * height * 4);
  for (let row = 0; row < height; row++) {
    const start = row * texture.width * 4;
    data.set(texture.data.subarray(start, start + width * 4), row * width * 4);
  }
  return {
    width,
    height,
    width_m: (width / texture.width) * texture.width_m,
    height_m: (height / texture.height) * texture.height_m,
    data,
  };
}
