import { flattenPattern, isFlat } from '../../engine/pattern/flatten';
import { meanWeights, sampleBytes } from '../../engine/pattern/sample';
import type { PatternTexture } from '../../engine/pattern/types';

/** What most samples show, m. */
const WINDOW_M = 0.16;

/** Places looked at along each direction, and readings along each side of a place's window. */
const PLACES = 6;
const READINGS = 8;

/** A part of a pattern, at most this large in metres: a sample shows no more, and keeping all costs memory. */
export function cropTexture(texture: PatternTexture, width_m: number, height_m: number): PatternTexture {
  if (isFlat(texture) && texture.width_m <= width_m && texture.height_m <= height_m) return texture;
  return flattenPattern(
    texture,
    isFlat(texture) ? Math.min(width_m, texture.width_m) : width_m,
    isFlat(texture) ? Math.min(height_m, texture.height_m) : height_m,
    // Pieces begin with a whole one; of a sheet with a large figure the most typical place is shown.
    texture.pieces ? [0, 0] : typicalPlace(texture),
  );
}

/** Of some places of a sheet the lower left corner of the one whose colors come in shares nearest to the whole's, m. */
function typicalPlace(texture: PatternTexture): readonly [s: number, t: number] {
  const [, ...shares] = meanWeights(texture);
  const bytes = new Float64Array(4);
  let best = Infinity;
  let place: readonly [number, number] = [0, 0];
  for (let j = 0; j < PLACES; j++) {
    for (let i = 0; i < PLACES; i++) {
      const from = [(i * texture.width_m) / PLACES, (j * texture.height_m) / PLACES] as const;
      const sums = [0, 0, 0];
      for (let n = 0; n < READINGS * READINGS; n++) {
        const s = from[0] + ((n % READINGS) * WINDOW_M) / READINGS;
        const t = from[1] + (Math.floor(n / READINGS) * WINDOW_M) / READINGS;
        sampleBytes(texture, s, t, bytes);
        for (let k = 0; k < 3; k++) sums[k]! += bytes[k]! / 255 / (READINGS * READINGS);
      }
      const off = sums.reduce((sum, weight, k) => sum + Math.abs(weight - shares[k]!), 0);
      if (off >= best) continue;
      best = off;
      place = from;
    }
  }
  return place;
}
