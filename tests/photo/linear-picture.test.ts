import { expect, it } from 'vitest';
import { differenceCiede2000 } from '../../src/engine/color/difference';
import { labD65FromHex } from '../../src/engine/color/display';
import { labD65FromDisplayP3 } from '../../src/engine/color/display-p3';
import { labD65FromXyzD65 } from '../../src/engine/color/lab';
import { linearPictureMaker, type PictureSpace } from '../../src/engine/photo/linear-picture';

function pictureOf(
  width: number,
  height: number,
  space: PictureSpace,
  code: (x: number, y: number) => readonly number[],
) {
  const maker = linearPictureMaker(width, height, space);
  for (let y = 0; y < height; y++) {
    maker.take(Uint8Array.from({ length: 4 * width }, (_, i) => [...code(Math.floor(i / 4), y), 255][i % 4]!));
  }
  return maker.finish();
}

it('decodes sRGB and Display P3 to the colors their codes stand for', () => {
  for (const [space, labOf] of [
    ['srgb', labD65FromHex],
    ['display-p3', labD65FromDisplayP3],
  ] as const) {
    for (const hex of ['#c8b090', '#ffffff', '#204060', '#808080']) {
      const rgb = [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16));
      const { xyz } = pictureOf(2, 2, space, () => rgb);
      const lab = labD65FromXyzD65({ x: 100 * xyz[0]!, y: 100 * xyz[1]!, z: 100 * xyz[2]! });
      const given = labOf(hex);
      expect(differenceCiede2000(lab, given.ok ? given.value : { l: 0, a: 0, b: 0 })).toBeLessThan(0.01);
    }
  }
});

it('makes small of large pictures in linear light', () => {
  // Black and white in a chessboard send out half of the light, L* 76.1, not the half of the code, L* 53.4.
  const maker = linearPictureMaker(3600, 900, 'srgb');
  const row = Uint8Array.from({ length: 4 * 3600 }, (_, i) => (Math.floor(i / 4) % 2 ? 255 : 0));
  for (let y = 0; y < 900; y++) maker.take(y % 2 ? row.toReversed() : row);
  const { width, height, step, xyz, high, low } = maker.finish();
  expect([width, height, step]).toEqual([1800, 450, 2]);
  const mean = xyz.reduce((sum, value, i) => (i % 3 === 1 ? sum + value : sum), 0) / (width * height);
  expect(mean).toBeCloseTo(0.5, 4);
  // Half of the pixels each, 127.5 of 255.
  expect([high[0], low[0]]).toEqual([128, 128]);
});

it('counts the pixels at the ends of the code', () => {
  const { high, low } = pictureOf(
    4,
    1,
    'srgb',
    (x) =>
      [
        [255, 200, 200],
        [0, 100, 100],
        [252, 3, 128],
        [128, 128, 254],
      ][x]!,
  );
  expect([...high]).toEqual([255, 0, 0, 255]);
  expect([...low]).toEqual([0, 255, 0, 0]);
});
