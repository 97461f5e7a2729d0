import { converter } from 'culori';
import { expect, it } from 'vitest';
import { decodeSrgb, encodeSrgb, linearSrgbFromXyzD65, xyzD65FromLinearSrgb } from '../../src/engine/color/display';
import { chromaOf, hueDegOf, labD65FromXyzD65, xyzD65FromLabD65 } from '../../src/engine/color/lab';
import { D65_2 } from '../../src/engine/color/whites';
import { mulberry32 } from '../../src/engine/random';

// Outside check: culori, a general colour library. Its D65 is the rounded chromaticity 0.3127, 0.3290, so tristimulus values
// are compared relative to the white of each; then only the formulas are left to differ.

const toXyz = converter('xyz65');
const toLab = converter('lab65');
const toLch = converter('lch65');
const toLinear = converter('lrgb');
const toRgb = converter('rgb');
const white = toXyz({ mode: 'lab65', l: 100, a: 0, b: 0 });

const random = mulberry32(4);
const spread = (reach: number) => reach * (2 * random() - 1);
const randomLab = (i: number) => ({
  l: 100 * random(),
  a: spread(i % 2 ? 3 : 100),
  b: spread(i % 2 ? 3 : 100),
});

it('agrees on CIELAB to tristimulus values and back over 5000 colours, near-neutrals among them, to 1e-9', () => {
  for (let i = 0; i < 5000; i++) {
    const lab = randomLab(i);
    const ours = xyzD65FromLabD65(lab);
    const theirs = toXyz({ mode: 'lab65', ...lab });
    // Their constants of the straight part near black are 24389/27 and 216/24389, the same numbers.
    const misses = [
      ours.x / D65_2.x - theirs.x / white.x,
      ours.y / D65_2.y - theirs.y / white.y,
      ours.z / D65_2.z - theirs.z / white.z,
    ];
    const back = toLab({
      mode: 'xyz65',
      x: (ours.x / D65_2.x) * white.x,
      y: (ours.y / D65_2.y) * white.y,
      z: (ours.z / D65_2.z) * white.z,
    });
    const again = labD65FromXyzD65(ours);
    const labMisses = [again.l - back.l, again.a - (back.a ?? 0), again.b - (back.b ?? 0)];
    const worst = Math.max(...misses.map(Math.abs), ...labMisses.map(Math.abs));
    if (!(worst < 1e-9)) expect.fail(`${JSON.stringify(lab)}: ${worst}`);
  }
});

it('agrees on chroma and hue angle to 1e-9', () => {
  for (let i = 0; i < 2000; i++) {
    const lab = randomLab(i);
    const theirs = toLch({ mode: 'lab65', ...lab });
    if (!(Math.abs(chromaOf(lab) - theirs.c) < 1e-9)) expect.fail(JSON.stringify(lab));
    if (!(Math.abs(hueDegOf(lab) - (theirs.h ?? 0)) < 1e-9)) expect.fail(JSON.stringify(lab));
  }
});

it('agrees on the sRGB transfer curve to 1e-12 and on the primaries to 3e-4', () => {
  for (let i = 0; i < 2000; i++) {
    const code = i / 2000;
    const linear = toLinear({ mode: 'rgb', r: code, g: 0, b: 0 }).r;
    expect(Math.abs(decodeSrgb(code) - linear)).toBeLessThan(1e-12);
    expect(Math.abs(encodeSrgb(code) - toRgb({ mode: 'lrgb', r: code, g: 0, b: 0 }).r)).toBeLessThan(1e-12);
  }
  for (let i = 0; i < 2000; i++) {
    const linear = { r: random(), g: random(), b: random() };
    const ours = xyzD65FromLinearSrgb(linear);
    const theirs = toXyz({ mode: 'lrgb', ...linear });
    // The whites differ by 1e-4 in X and 2e-4 in Z.
    expect(Math.abs(ours.x / 100 - theirs.x)).toBeLessThan(3e-4);
    expect(Math.abs(ours.y / 100 - theirs.y)).toBeLessThan(3e-4);
    expect(Math.abs(ours.z / 100 - theirs.z)).toBeLessThan(3e-4);
    const back = linearSrgbFromXyzD65(ours);
    expect(
      Math.max(Math.abs(back.r - linear.r), Math.abs(back.g - linear.g), Math.abs(back.b - linear.b)),
    ).toBeLessThan(1e-12);
  }
});
