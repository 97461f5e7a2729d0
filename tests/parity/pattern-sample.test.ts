import fc from 'fast-check';
import { expect, it } from 'vitest';
import { bakePattern } from '../../src/engine/pattern/bake';
import { samplePattern } from '../../src/engine/pattern/sample';
import { paintSwatch } from '../../src/engine/pattern/swatch';
import { FINISHES, specOf } from '../physics/pattern-specs';

const texture = bakePattern(specOf(FINISHES.find((f) => f.name === 'terrazzo')!), { maxSize: 128 });
const { width, height, width_m, height_m, data } = texture;

it('gives a texel its own bytes at its centre', () => {
  fc.assert(
    fc.property(fc.nat(width - 1), fc.nat(height - 1), (x, y) => {
      const { weights, gain } = samplePattern(texture, ((x + 0.5) / width) * width_m, ((y + 0.5) / height) * height_m);
      const at = (y * width + x) * 4;
      for (let k = 0; k < 3; k++) expect(weights[k + 1]).toBeCloseTo(data[at + k]! / 255, 9);
      expect(gain).toBeCloseTo(data[at + 3]! / 128, 9);
      expect(weights[0] + weights[1] + weights[2] + weights[3]).toBeCloseTo(1, 12);
    }),
  );
});

it('takes the mean of four texels where they meet, over the edge too', () => {
  for (const [x, y] of [
    [7, 9],
    [0, 0],
    [0, 40],
  ] as const) {
    const { gain } = samplePattern(texture, (x / width) * width_m, (y / height) * height_m);
    let mean = 0;
    for (const dx of [-1, 0]) {
      for (const dy of [-1, 0]) {
        const i = (((y + dy + height) % height) * width + ((x + dx + width) % width)) * 4 + 3;
        mean += data[i]! / 128 / 4;
      }
    }
    expect(gain).toBeCloseTo(mean, 9);
  }
});

it('repeats after the texture in both directions', () => {
  fc.assert(
    fc.property(
      fc.double({ min: -3, max: 3, noNaN: true }),
      fc.double({ min: -3, max: 3, noNaN: true }),
      fc.integer({ min: -3, max: 3 }),
      (s, t, n) => {
        const here = samplePattern(texture, s, t);
        const there = samplePattern(texture, s + n * width_m, t - n * height_m);
        expect(there.gain).toBeCloseTo(here.gain, 6);
        for (let k = 0; k < 4; k++) expect(there.weights[k]).toBeCloseTo(here.weights[k]!, 6);
      },
    ),
  );
});

const COLORS = [
  [0.58, 0.5, 0.47],
  [0.4, 0.2, 0.17],
  [0.17, 0.17, 0.17],
] as const;

/** IEC 61966-2-1. */
function srgb(c: number): number {
  return 255 * (c <= 0.0031308 ? 12.92 * c : 1.055 * Math.min(1, c) ** (1 / 2.4) - 0.055);
}

it('paints a close swatch with the colours that sampling gives', () => {
  const mm = (0.4 * 1000 * width_m) / width;
  const image = paintSwatch(texture, COLORS, 30, 20, mm, [33, 55]);
  for (let y = 0; y < 20; y++) {
    for (let x = 0; x < 30; x++) {
      const s = (33 + (x + 0.5) * mm) / 1000;
      const t = (55 + (20 - y - 0.5) * mm) / 1000;
      const { weights, gain } = samplePattern(texture, s, t);
      for (let c = 0; c < 3; c++) {
        const linear = gain * COLORS.reduce((sum, color, k) => sum + weights[k]! * color[c]!, 0);
        expect(Math.abs(image[(y * 30 + x) * 4 + c]! - srgb(linear))).toBeLessThan(1.5);
      }
    }
  }
});

it('paints a far swatch as the mean in linear light', () => {
  // One pixel over exactly one period.
  const side = 1000 * width_m;
  const image = paintSwatch(texture, COLORS, 1, 1, side, [17, 3]);
  const shares = [0.7, 0.18, 0.12];
  for (let c = 0; c < 3; c++) {
    const linear = COLORS.reduce((sum, color, k) => sum + shares[k]! * color[c]!, 0);
    expect(Math.abs(image[c]! - srgb(linear))).toBeLessThan(1.5);
  }
});

it('paints a finish without a pattern in its first colour throughout', () => {
  const image = paintSwatch(null, [[0.2140411, 0.2140411, 0.2140411]], 4, 3, 1);
  // sRGB code 127.5 is linear 0.2140 (IEC 61966-2-1).
  for (let i = 0; i < image.length; i += 4) {
    expect([127, 128]).toContain(image[i]);
    expect(image[i + 3]).toBe(255);
  }
});
