import { sampleBytes } from './sample';
import type { PatternTexture } from './types';

/** Is the texture the pattern itself, so that a place on the pattern is the same place on the texture? */
export const isFlat = ({ pieces, turn_deg, wrap }: PatternTexture): boolean =>
  !pieces && !turn_deg && (wrap ?? 'repeat') === 'repeat';

/**
 * A part of a pattern as a plain texture: width_m x height_m from (s, t) = `from`, at the pattern's own resolution, with its
 * pieces laid out and turned. It is no longer seamless.
 */
export function flattenPattern(
  texture: PatternTexture,
  width_m: number,
  height_m: number,
  from: readonly [s: number, t: number] = [0, 0],
): PatternTexture {
  const texel = Math.min(texture.width_m / texture.width, texture.height_m / texture.height);
  const width = Math.max(1, Math.ceil(width_m / texel));
  const height = Math.max(1, Math.ceil(height_m / texel));
  const data = new Uint8Array(width * height * 4);
  const bytes = new Float64Array(4);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      sampleBytes(texture, from[0] + (x + 0.5) * texel, from[1] + (y + 0.5) * texel, bytes);
      const at = 4 * (y * width + x);
      for (let k = 0; k < 4; k++) data[at + k] = Math.round(bytes[k]!);
    }
  }
  return { width, height, width_m: width * texel, height_m: height * texel, data };
}
