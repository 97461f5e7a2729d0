import type { PatternTexture } from './types';

/** Weights of components 0-3 and lightness gain at one place. */
export interface PatternSample {
  readonly weights: readonly [number, number, number, number];
  readonly gain: number;
}

/** The pattern at (s, t) in metres: bilinear between texel centres at (i + 0.5) / n, repeating. The twin of the shader's. */
export function samplePattern(texture: PatternTexture, s: number, t: number): PatternSample {
  const { width, height, data } = texture;
  const u = (s / texture.width_m) * width - 0.5;
  const v = (t / texture.height_m) * height - 0.5;
  const i = Math.floor(u);
  const j = Math.floor(v);
  const fx = u - i;
  const fy = v - j;
  const x0 = ((i % width) + width) % width;
  const x1 = (x0 + 1) % width;
  const y0 = ((j % height) + height) % height;
  const y1 = (y0 + 1) % height;
  const a = (y0 * width + x0) * 4;
  const b = (y0 * width + x1) * 4;
  const c = (y1 * width + x0) * 4;
  const d = (y1 * width + x1) * 4;
  const at = (channel: number): number =>
    (data[a + channel]! * (1 - fx) + data[b + channel]! * fx) * (1 - fy) +
    (data[c + channel]! * (1 - fx) + data[d + channel]! * fx) * fy;
  const w1 = at(0) / 255;
  const w2 = at(1) / 255;
  const w3 = at(2) / 255;
  return { weights: [1 - w1 - w2 - w3, w1, w2, w3], gain: at(3) / 128 };
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
