import type { PatternTexture } from './types';

/**
 * The levels of a pattern for ever greater distances, from half its size down to one texel. The gain of a level is the mean of the
 * gain, and its weights are means weighted by the gain, so that a level's colours are the exact area means of the pattern's
 * colours, whatever the components' colours are. (A graphics card's own levels average weights and gain apart and round at every
 * step, which drifts by up to half a CIEDE2000 unit.) Bytes as in the texture.
 */
export function mipLevels({ width, height, data }: PatternTexture): readonly Uint8Array[] {
  const levels: Uint8Array[] = [];
  let [w, h] = [width, height];
  let sums = new Float32Array(0);
  while (w > 1 || h > 1) {
    const [halfW, halfH] = [Math.max(1, w >> 1), Math.max(1, h >> 1)];
    const next = new Float32Array(4 * halfW * halfH);
    // Texels that make one of the level below: two by two, two in a row once a side has only one.
    const [dx, dy] = [w > 1 ? 4 : 0, h > 1 ? 4 * w : 0];
    const first = levels.length === 0;
    for (let y = 0; y < halfH; y++) {
      for (let x = 0; x < halfW; x++) {
        const to = 4 * (y * halfW + x);
        const from = 4 * ((h > 1 ? 2 * y : y) * w + (w > 1 ? 2 * x : x));
        for (let n = 0; n < 4; n++) {
          const at = from + (n & 1 ? dx : 0) + (n & 2 ? dy : 0);
          const gain = first ? data[at + 3]! : sums[at + 3]!;
          const by = first ? gain : 1;
          next[to + 3]! += gain / 4;
          for (let k = 0; k < 3; k++) next[to + k]! += ((first ? data[at + k]! : sums[at + k]!) * by) / 4;
        }
      }
    }
    levels.push(bytesOf(next));
    sums = next;
    [w, h] = [halfW, halfH];
  }
  return levels;
}

/** Bytes of a level from the means of weight times gain, and of the gain. */
function bytesOf(means: Float32Array): Uint8Array {
  const bytes = new Uint8Array(means.length);
  for (let i = 0; i < means.length; i += 4) {
    const gain = means[i + 3]!;
    let left = 255;
    for (let k = 0; k < 3; k++) {
      const weight = gain > 0 ? Math.min(left, Math.round(means[i + k]! / gain)) : 0;
      bytes[i + k] = weight;
      left -= weight;
    }
    bytes[i + 3] = Math.round(gain);
  }
  return bytes;
}
