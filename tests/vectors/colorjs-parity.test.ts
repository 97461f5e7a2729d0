import Color from 'colorjs.io';
import { expect, it } from 'vitest';
import { differenceCiede2000 } from '../../src/engine/color/difference';
import { decodeSrgb, encodeSrgb, labD65FromHex } from '../../src/engine/color/display';
import { labD65FromXyzD65, xyzD65FromLabD65 } from '../../src/engine/color/lab';
import { D65_2 } from '../../src/engine/color/whites';
import { mulberry32 } from '../../src/engine/random';

// Outside check: colorjs.io, a general colour library with its own CIEDE2000 and sRGB conversion.

it('agrees with colorjs.io on CIEDE2000 over 500 random pairs, near-neutrals among them, to 1e-9', () => {
  const random = mulberry32(15);
  for (let i = 0; i < 500; i++) {
    const spread = i % 2 ? 4 : 60;
    const lab = () => ({ l: 100 * random(), a: spread * (random() - 0.5), b: spread * (random() - 0.5) });
    const [first, second] = [lab(), lab()];
    // Its formula works in its space 'lab'; the white point plays no part in the formula.
    const color = ({ l, a, b }: typeof first) => new Color('lab', [l, a, b]);
    const expected = color(first).deltaE(color(second), '2000');
    expect(Math.abs(differenceCiede2000(first, second) - expected)).toBeLessThan(1e-9);
  }
});

it('agrees with colorjs.io on CIELAB to tristimulus values and back, relative to the white of each, to 1e-9', () => {
  const random = mulberry32(27);
  const [xn, yn, zn] = new Color('lab-d65', [100, 0, 0]).to('xyz-d65').coords as [number, number, number];
  for (let i = 0; i < 2000; i++) {
    const spread = i % 2 ? 6 : 200;
    const lab = { l: 100 * random(), a: spread * (random() - 0.5), b: spread * (random() - 0.5) };
    const ours = xyzD65FromLabD65(lab);
    const ratios = [ours.x / D65_2.x, ours.y / D65_2.y, ours.z / D65_2.z] as const;
    const theirs = new Color('lab-d65', [lab.l, lab.a, lab.b]).to('xyz-d65').coords as [number, number, number];
    const xyzMisses = [ratios[0] - theirs[0] / xn, ratios[1] - theirs[1] / yn, ratios[2] - theirs[2] / zn];
    const back = new Color('xyz-d65', [ratios[0] * xn, ratios[1] * yn, ratios[2] * zn]).to('lab-d65').coords;
    const again = labD65FromXyzD65(ours);
    const labMisses = [again.l - back[0]!, again.a - back[1]!, again.b - back[2]!];
    const worst = Math.max(...xyzMisses.map(Math.abs), ...labMisses.map(Math.abs));
    if (!(worst < 1e-9)) expect.fail(`${JSON.stringify(lab)}: ${worst}`);
  }
});

it('agrees with colorjs.io on the sRGB transfer curve to 1e-12', () => {
  for (let i = 0; i <= 1000; i++) {
    const code = i / 1000;
    const linear = new Color('srgb', [code, 0, 0]).to('srgb-linear').coords[0]!;
    expect(Math.abs(decodeSrgb(code) - linear)).toBeLessThan(1e-12);
    const encoded = new Color('srgb-linear', [code, 0, 0]).to('srgb').coords[0]!;
    expect(Math.abs(encodeSrgb(code) - encoded)).toBeLessThan(1e-12);
  }
});

it('agrees with colorjs.io on the Lab of screen colours within 0.02 (its D65 white is rounded to four decimals)', () => {
  const random = mulberry32(65);
  for (let i = 0; i < 200; i++) {
    const hex = `#${Math.floor(random() * 0x1000000)
      .toString(16)
      .padStart(6, '0')}`;
    const ours = labD65FromHex(hex);
    if (!ours.ok) throw new Error(ours.problem.text);
    const [l, a, b] = new Color(hex).to('lab-d65').coords as [number, number, number];
    expect(Math.abs(ours.value.l - l)).toBeLessThan(0.02);
    expect(Math.abs(ours.value.a - a)).toBeLessThan(0.02);
    expect(Math.abs(ours.value.b - b)).toBeLessThan(0.02);
  }
});
