import Color from 'colorjs.io';
import { expect, it } from 'vitest';
import { differenceCiede2000 } from '../../src/engine/color/difference';
import { labD65FromHex } from '../../src/engine/color/display';
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
