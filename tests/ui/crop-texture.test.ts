import { expect, it } from 'vitest';
import { bakePattern } from '../../src/engine/pattern/bake';
import { meanWeights, samplePattern } from '../../src/engine/pattern/sample';
import { cropTexture } from '../../src/ui/swatch/crop-texture';

const texture = (() => {
  const [width, height] = [64, 64];
  const data = new Uint8Array(width * height * 4);
  for (let i = 0; i < width * height; i++) data.set([(i * 7) % 256, 0, 0, 128], i * 4);
  return { width, height, width_m: 0.64, height_m: 0.64, data };
})();

it('shows a part at the same scale, where the colors come in shares near the whole', () => {
  // The second color grows from nothing at the left edge to all at the right one.
  const [width, height] = [64, 64];
  const data = new Uint8Array(width * height * 4);
  for (let i = 0; i < width * height; i++) data.set([4 * (i % width), 0, 0, 128], i * 4);
  const sheet = { width, height, width_m: 1.28, height_m: 1.28, data };
  const cropped = cropTexture(sheet, 0.3, 0.2);
  expect(cropped.data.length).toBeLessThan(sheet.data.length / 5);
  expect(cropped.width_m / cropped.width).toBeCloseTo(0.02, 9);
  expect(Math.abs(meanWeights(cropped)[1] - meanWeights(sheet)[1])).toBeLessThan(0.15);
});

it('lays pieces out from a whole one', () => {
  const tiles = bakePattern({
    pattern: { kind: 'plain' },
    layout: 'running-bond',
    piece_mm: [100, 50],
    joint_mm: 2,
    variation: 'V1',
    shares: [0.943, 0.057],
    seed: 1,
  });
  const cropped = cropTexture(tiles, 0.3, 0.2);
  expect(cropped.pieces).toBeUndefined();
  for (const [s, t] of [
    [0.051, 0.026],
    [0.102, 0.078],
    [0.153, 0.026],
  ] as const) {
    expect(samplePattern(cropped, s, t).weights[1]).toBeLessThan(0.02);
    expect(samplePattern(cropped, s + 0.051, t).weights[1]).toBeGreaterThan(0.3);
  }
});

it('keeps a texture that is small already', () => {
  expect(cropTexture(texture, 1, 1)).toBe(texture);
});
