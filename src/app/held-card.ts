import { sampleBytes } from '../engine/pattern/sample';
import type { PatternTexture } from '../engine/pattern/types';
import type { HeldReading } from '../kitchen/study/held-reading';
import type { CardPaint } from '../view/types';

/** Texels of a patterned card stand this far apart, m: finer than a pixel of a close look. */
const TEXEL_M = 0.0006;

/** The colors over a card, from where its pattern starts: linear sRGB as the picture shows them. */
export function paintCard({ components, size_m, grainUp }: HeldReading, pattern: PatternTexture | null): CardPaint {
  if (!pattern) return { size_m, width: 1, height: 1, linear: Float32Array.from(components[0]!.linear) };
  const [width, height] = size_m.map((m) => Math.max(2, Math.ceil(m / TEXEL_M))) as [number, number];
  const linear = new Float32Array(3 * width * height);
  const bytes = new Float64Array(4);
  const weights = [0, 0, 0, 0];
  for (let y = 0, at = 0; y < height; y++) {
    for (let x = 0; x < width; x++, at += 3) {
      const across = ((x + 0.5) / width) * size_m[0];
      const up = ((y + 0.5) / height) * size_m[1];
      sampleBytes(pattern, grainUp ? up : across, grainUp ? across : up, bytes);
      weights[1] = bytes[0]! / 255;
      weights[2] = bytes[1]! / 255;
      weights[3] = bytes[2]! / 255;
      weights[0] = 1 - weights[1] - weights[2] - weights[3];
      // Byte 128 is gain 1.
      const gain = bytes[3]! / 128;
      components.forEach((component, c) => {
        for (let k = 0; k < 3; k++) linear[at + k]! += gain * weights[c]! * component.linear[k]!;
      });
    }
  }
  return { size_m, width, height, linear };
}
