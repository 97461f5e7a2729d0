import { placeOnTexture } from './place';
import type { PatternTexture } from './types';

/** Weights of components 0-3 and lightness gain at one place. */
export interface PatternSample {
  readonly weights: readonly [number, number, number, number];
  readonly gain: number;
}

/** The pattern at (s, t) in metres: bilinear between texel centres at (i + 0.5) / n. The twin of the shader's. */
export function samplePattern(texture: PatternTexture, s: number, t: number): PatternSample {
  const bytes = new Float64Array(4);
  sampleBytes(texture, s, t, bytes);
  const w1 = bytes[0]! / 255;
  const w2 = bytes[1]! / 255;
  const w3 = bytes[2]! / 255;
  return { weights: [1 - w1 - w2 - w3, w1, w2, w3], gain: bytes[3]! / 128 };
}

const place = { x: 0, y: 0 };

/** The four bytes of the pattern at (s, t) in metres, interpolated, written to `out`. */
export function sampleBytes(texture: PatternTexture, s: number, t: number, out: Float64Array): void {
  const { width, height, data, wrap } = texture;
  placeOnTexture(texture, s, t, place);
  const u = (place.x / texture.width_m) * width - 0.5;
  const v = (place.y / texture.height_m) * height - 0.5;
  const i = Math.floor(u);
  const j = Math.floor(v);
  const fx = u - i;
  const fy = v - j;
  const mirrored = wrap === 'mirror';
  const x0 = wrapped(i, width, mirrored);
  const x1 = wrapped(i + 1, width, mirrored);
  const low = wrapped(j, height, mirrored) * width;
  const high = wrapped(j + 1, height, mirrored) * width;
  for (let k = 0; k < 4; k++) {
    const a = data[(low + x0) * 4 + k]!;
    const b = data[(low + x1) * 4 + k]!;
    const c = data[(high + x0) * 4 + k]!;
    const d = data[(high + x1) * 4 + k]!;
    out[k] = (a * (1 - fx) + b * fx) * (1 - fy) + (c * (1 - fx) + d * fx) * fy;
  }
}

/** Texel i of n, anywhere: repeating, or there and back (OpenGL's mirrored repeat). */
function wrapped(i: number, n: number, mirrored: boolean): number {
  if (!mirrored) return ((i % n) + n) % n;
  const m = ((i % (2 * n)) + 2 * n) % (2 * n);
  return m < n ? m : 2 * n - 1 - m;
}

/** Mean weight of components 0-3 over the texture: the area shares as drawn. */
export function meanWeights(texture: PatternTexture): [number, number, number, number] {
  const { data } = texture;
  let r = 0;
  let g = 0;
  let b = 0;
  for (let i = 0; i < data.length; i += 4) {
    r += data[i]!;
    g += data[i + 1]!;
    b += data[i + 2]!;
  }
  const all = (data.length / 4) * 255;
  return [1 - (r + g + b) / all, r / all, g / all, b / all];
}

/** Mean lightness gain over the texture; 1 when areas keep their average. */
export function meanGain(texture: PatternTexture): number {
  let a = 0;
  for (let i = 3; i < texture.data.length; i += 4) a += texture.data[i]!;
  return a / (texture.data.length / 4) / 128;
}
