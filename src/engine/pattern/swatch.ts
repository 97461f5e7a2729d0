import { flattenPattern, isFlat } from './flatten';
import type { PatternTexture } from './types';

type LinearRgb = readonly [number, number, number];

/** Steps of the encoding table: fine enough that every 8-bit code near black is reached exactly. */
const STEPS = 16384;
let encoded: Uint8Array | null = null;

/** The sRGB transfer curve (IEC 61966-2-1) as 8-bit codes over linear 0-1. */
function encodingTable(): Uint8Array {
  if (encoded) return encoded;
  encoded = new Uint8Array(STEPS + 1);
  for (let i = 0; i <= STEPS; i++) {
    const c = i / STEPS;
    encoded[i] = Math.round(255 * (c <= 0.0031308 ? 12.92 * c : 1.055 * c ** (1 / 2.4) - 0.055));
  }
  return encoded;
}

/**
 * Paints a flat sample, seen straight on, as RGBA bytes in sRGB, first row at the top. `colors` are linear sRGB per
 * component; mixing is in linear light. `mm_per_px` sets the scale; where a pixel is larger than a texel it averages the
 * texels it covers. `offset_mm` is the pattern's place at the lower left corner. Null texture: component 0 throughout.
 */
export function paintSwatch(
  texture: PatternTexture | null,
  colors: readonly LinearRgb[],
  width: number,
  height: number,
  mm_per_px: number,
  offset_mm: readonly [number, number] = [0, 0],
): Uint8ClampedArray<ArrayBuffer> {
  if (texture && !isFlat(texture)) {
    const [s, t] = [offset_mm[0] / 1000, offset_mm[1] / 1000];
    const [w, h] = [(width * mm_per_px) / 1000, (height * mm_per_px) / 1000];
    return paintSwatch(flattenPattern(texture, w, h, [s, t]), colors, width, height, mm_per_px);
  }
  const table = encodingTable();
  const out = new Uint8ClampedArray(width * height * 4);
  const palette = new Float64Array(12);
  for (let k = 0; k < 4; k++)
    for (let c = 0; c < 3; c++) palette[k * 3 + c] = colors[Math.min(k, colors.length - 1)]?.[c] ?? 0;
  const across = texture ? spans(width, mm_per_px, offset_mm[0], texture.width_m * 1000, texture.width, false) : null;
  const up = texture ? spans(height, mm_per_px, offset_mm[1], texture.height_m * 1000, texture.height, true) : null;
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      let r = palette[0]!;
      let g = palette[1]!;
      let b = palette[2]!;
      if (texture && across && up) {
        r = 0;
        g = 0;
        b = 0;
        for (let j = up.start[y]!; j < up.start[y + 1]!; j++) {
          const row = up.texel[j]! * texture.width;
          for (let i = across.start[x]!; i < across.start[x + 1]!; i++) {
            const o = (row + across.texel[i]!) * 4;
            const w = up.weight[j]! * across.weight[i]! * (texture.data[o + 3]! / 128);
            const w1 = (texture.data[o]! / 255) * w;
            const w2 = (texture.data[o + 1]! / 255) * w;
            const w3 = (texture.data[o + 2]! / 255) * w;
            const w0 = w - w1 - w2 - w3;
            r += w0 * palette[0]! + w1 * palette[3]! + w2 * palette[6]! + w3 * palette[9]!;
            g += w0 * palette[1]! + w1 * palette[4]! + w2 * palette[7]! + w3 * palette[10]!;
            b += w0 * palette[2]! + w1 * palette[5]! + w2 * palette[8]! + w3 * palette[11]!;
          }
        }
      }
      const o = (y * width + x) * 4;
      out[o] = table[Math.round(Math.min(1, Math.max(0, r)) * STEPS)]!;
      out[o + 1] = table[Math.round(Math.min(1, Math.max(0, g)) * STEPS)]!;
      out[o + 2] = table[Math.round(Math.min(1, Math.max(0, b)) * STEPS)]!;
      out[o + 3] = 255;
    }
  }
  return out;
}

/** Which texels each pixel of one axis takes, with weights that sum to 1. */
interface Spans {
  readonly start: Int32Array;
  readonly texel: Int32Array;
  readonly weight: Float32Array;
}

function spans(
  pixels: number,
  mm_per_px: number,
  offset: number,
  period: number,
  texels: number,
  flip: boolean,
): Spans {
  const size = mm_per_px / (period / texels);
  const most = Math.ceil(Math.max(size, 1)) + 2;
  const start = new Int32Array(pixels + 1);
  const texel = new Int32Array(pixels * most);
  const weight = new Float32Array(pixels * most);
  const wrap = (i: number): number => ((i % texels) + texels) % texels;
  let n = 0;
  for (let p = 0; p < pixels; p++) {
    start[p] = n;
    const centre = (offset / period) * texels + ((flip ? pixels - 1 - p : p) + 0.5) * size;
    if (size <= 1) {
      const i = Math.floor(centre - 0.5);
      const f = centre - 0.5 - i;
      texel[n] = wrap(i);
      weight[n++] = 1 - f;
      texel[n] = wrap(i + 1);
      weight[n++] = f;
      continue;
    }
    const low = centre - size / 2;
    const high = centre + size / 2;
    for (let i = Math.floor(low); i < high; i++) {
      const part = Math.min(high, i + 1) - Math.max(low, i);
      if (part <= 0) continue;
      texel[n] = wrap(i);
      weight[n++] = part / size;
    }
  }
  start[pixels] = n;
  return { start, texel, weight };
}
