import { expect, it } from 'vitest';
import { paintSwatch } from '../../src/engine/pattern/swatch';
import { cropTexture } from '../../src/ui/swatch/crop-texture';

const texture = (() => {
  const [width, height] = [64, 64];
  const data = new Uint8Array(width * height * 4);
  for (let i = 0; i < width * height; i++) data.set([(i * 7) % 256, 0, 0, 128], i * 4);
  return { width, height, width_m: 0.64, height_m: 0.64, data };
})();

it('paints the same sample from the cropped texture as from the whole', () => {
  const cropped = cropTexture(texture, 0.3, 0.2);
  expect(cropped.data.length).toBeLessThan(texture.data.length / 5);
  const colors = [
    [0.1, 0.1, 0.1],
    [0.8, 0.7, 0.6],
  ] as const;
  const paint = (of: typeof texture) => paintSwatch(of, colors, 20, 12, 10);
  expect(paint(cropped as typeof texture)).toEqual(paint(texture));
});

it('keeps a texture that is small already', () => {
  expect(cropTexture(texture, 1, 1)).toBe(texture);
});
