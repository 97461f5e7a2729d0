import { differenceCiede2000 } from 'culori';
import { expect, it } from 'vitest';
import { bakePattern } from '../../src/engine/pattern/bake';
import { mipLevels } from '../../src/engine/pattern/mips';
import { mulberry32 } from '../../src/engine/random';
import { demoPatterns } from './demo-patterns';

// From afar a pattern must be the mixture of its components by area, in linear light, at every level for distance; the color of a
// texel is what the picture makes of it: gain times the weighted sum. The level of one texel is the graphics card's last one.
// Difference by CIEDE2000 (ISO/CIE 11664-6) from npm culori.

type Triple = readonly [number, number, number];

const patterns = demoPatterns();

it('has every demo finish that shows a pattern', () => {
  expect(patterns.length).toBeGreaterThan(30);
});

it.each(patterns.map((one) => [one.name, one] as const))(
  'keeps the mean of %s at every distance',
  (_, { spec, components }) => {
    const colors = components.map(({ labD65: { l, a, b } }) => xyzFromLab([l, a, b]));
    const expected = [0, 1, 2].map((c) => components.reduce((sum, { share }, k) => sum + share * colors[k]![c]!, 0));
    const texture = bakePattern(spec, { maxSize: 512 });
    const levels = [texture.data, ...mipLevels(texture)];
    expect(levels.at(-1)).toHaveLength(4);
    levels.forEach((data, level) => {
      expect(data).toHaveLength(4 * Math.max(1, texture.width >> level) * Math.max(1, texture.height >> level));
      expect(difference(meanColor(data, colors), expected as unknown as Triple)).toBeLessThan(0.3);
    });
  },
);

it('makes each texel of a level the mean color of the four under it, whatever the colors', () => {
  const width = 8;
  const height = 4;
  const random = mulberry32(3);
  const data = Uint8Array.from({ length: 4 * width * height }, (_, i) =>
    Math.floor(random() * (i % 4 === 3 ? 256 : 85)),
  );
  const texture = { width, height, width_m: 1, height_m: 1, data };
  const colors: readonly Triple[] = [
    [1, 0, 0.2],
    [0, 1, 0.4],
    [0.3, 0, 1],
    [0.7, 0.1, 0],
  ];
  const [half] = mipLevels(texture);
  for (let y = 0; y < height / 2; y++) {
    for (let x = 0; x < width / 2; x++) {
      const four = [0, 1].flatMap((dy) => [0, 1].map((dx) => 4 * ((2 * y + dy) * width + 2 * x + dx)));
      const under = meanColor(Uint8Array.from(four.flatMap((at) => [...data.subarray(at, at + 4)])), colors);
      const own = meanColor(half!.subarray(4 * (y * 4 + x), 4 * (y * 4 + x) + 4), colors);
      // Bytes of weights and gain round: half a step each of 1/255 and 1/128 of at most gain 2.
      own.forEach((v, c) => {
        expect(Math.abs(v - under[c]!)).toBeLessThan((2 * (3 * 0.5)) / 255 + 0.5 / 128);
      });
    }
  }
});

function meanColor(data: Uint8Array, colors: readonly Triple[]): Triple {
  const seen: [number, number, number] = [0, 0, 0];
  const most = colors.length;
  for (let i = 0; i < data.length; i += 4) {
    const gain = data[i + 3]! / 128;
    const [w1, w2, w3] = [data[i]! / 255, data[i + 1]! / 255, data[i + 2]! / 255];
    const weights = [1 - w1 - w2 - w3, w1, w2, w3];
    for (let c = 0; c < 3; c++) for (let k = 0; k < most; k++) seen[c]! += gain * weights[k]! * colors[k]![c]!;
  }
  return seen.map((v) => v / (data.length / 4)) as unknown as Triple;
}

const WHITE_D65 = [0.95047, 1, 1.08883];

function xyzFromLab([l, a, b]: Triple): Triple {
  const fy = (l + 16) / 116;
  const f = [fy + a / 500, fy, fy - b / 200];
  return f.map((v, c) => WHITE_D65[c]! * (v > 6 / 29 ? v ** 3 : 3 * (6 / 29) ** 2 * (v - 4 / 29))) as unknown as Triple;
}

function difference(one: Triple, other: Triple): number {
  const lab = (xyz: Triple) => {
    const [fx, fy, fz] = xyz.map((v, c) => {
      const t = v / WHITE_D65[c]!;
      return t > (6 / 29) ** 3 ? Math.cbrt(t) : t / (3 * (6 / 29) ** 2) + 4 / 29;
    });
    return { mode: 'lab65', l: 116 * fy! - 16, a: 500 * (fx! - fy!), b: 200 * (fy! - fz!) } as const;
  };
  return differenceCiede2000()(lab(one), lab(other));
}
