import fc from 'fast-check';
import { expect, it } from 'vitest';
import { bradfordD65ToC } from '../../src/engine/color/adapt';
import { chromaticityFromXyz } from '../../src/engine/color/chromaticity';
import { xyzD65FromLabD65 } from '../../src/engine/color/lab';
import {
  labD65FromHueValueChroma,
  labD65FromMunsell,
  munsellFromLabD65,
  munsellNotation,
} from '../../src/engine/naming/munsell';
import { munsellValueFromY } from '../../src/engine/naming/munsell-value';

it.each([
  // Newhall, Nickerson and Judd, JOSA 33, 385 (1943): x, y under illuminant C and Y relative to magnesium oxide.
  ['2.5GY 2/2', 0.3421, 0.3803, 3.126],
  ['10BG 2/6', 0.1669, 0.257, 3.126],
  ['5PB 3/4', 0.2393, 0.2361, 6.55],
  ['5R 2/8', 0.5143, 0.28, 3.126],
  ['7.5YR 2/6', 0.5475, 0.4271, 3.126],
  ['5Y 2/4', 0.4543, 0.4573, 3.126],
  ['5P 3/2', 0.2997, 0.27, 6.55],
  ['2.5GY 5/2', 0.3352, 0.3636, 19.77],
  ['10G 5/2', 0.291, 0.331, 19.77],
  ['10BG 5/2', 0.2796, 0.3111, 19.77],
  ['5PB 5/2', 0.2882, 0.2923, 19.77],
  ['5P 5/2', 0.3045, 0.2928, 19.77],
  ['5R 5/2', 0.3392, 0.3192, 19.77],
  ['7.5YR 5/2', 0.354, 0.3445, 19.77],
  ['5Y 5/2', 0.35, 0.362, 19.77],
  ['2.5GY 8/2', 0.3327, 0.3555, 59.1],
  ['10G 8/2', 0.2957, 0.3293, 59.1],
  ['10BG 8/2', 0.2894, 0.3152, 59.1],
  ['5PB 8/2', 0.2974, 0.3039, 59.1],
  ['5P 8/8', 0.2914, 0.2534, 59.1],
  ['5R 8/8', 0.4001, 0.3263, 59.1],
  ['7.5YR 8/8', 0.4306, 0.3952, 59.1],
  ['5Y 8/8', 0.4158, 0.4378, 59.1],
  ['2.5GY 9/8', 0.3834, 0.449, 78.66],
  ['10G 9/8', 0.2574, 0.3618, 78.66],
  ['5PB 9/2', 0.2991, 0.3057, 78.66],
  ['5R 9/4', 0.3495, 0.3226, 78.66],
  ['5Y 9/2', 0.3378, 0.3504, 78.66],
])('%s has the renotation chromaticity under C', (notation, x, y, luminance) => {
  const lab = labD65FromMunsell(notation);
  if (!lab.ok) throw new Error(lab.problem.text);
  const underC = bradfordD65ToC(xyzD65FromLabD65(lab.value));
  const xy = chromaticityFromXyz(underC);
  expect(Math.abs(xy.x - x)).toBeLessThan(1e-5);
  expect(Math.abs(xy.y - y)).toBeLessThan(1e-5);
  // 0.975: from magnesium oxide to the perfect diffuser (ASTM D1535).
  expect(Math.abs(underC.y - luminance * 0.975)).toBeLessThan(0.005);
});

it.each([
  // ASTM D1535: luminance factor of Munsell values.
  [1, 1.18],
  [2, 3.05],
  [5, 19.27],
  [8, 57.62],
  [9, 76.7],
  [10, 100],
])('value %f has Y %f', (value, y) => {
  expect(Math.abs(munsellValueFromY(y) - value)).toBeLessThan(0.003);
  expect(Math.abs(xyzD65FromLabD65(labD65FromHueValueChroma(0, value, 0)).y - y)).toBeLessThan(0.006);
});

it('comes back from CIELAB', () => {
  fc.assert(
    fc.property(
      // Steps of a thousandth: a hue of 1e-16 upsets the renotation package's interpolation, and nobody has such a hue.
      fc.integer({ min: 0, max: 99_999 }).map((step) => step / 1000),
      fc.double({ min: 1, max: 9.5, noNaN: true }),
      fc.double({ min: 0.3, max: 8, noNaN: true }),
      (hue100, value, chroma) => {
        const back = munsellFromLabD65(labD65FromHueValueChroma(hue100, value, chroma));
        const turn = Math.abs(back.hue100 - hue100);
        expect(Math.min(turn, 100 - turn)).toBeLessThan(0.01);
        expect(Math.abs(back.value - value)).toBeLessThan(0.001);
        expect(Math.abs(back.chroma - chroma)).toBeLessThan(0.001);
      },
    ),
  );
});

it('finds no chroma in neutrals and never fails, even on colours that cannot be', () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 100, noNaN: true }), (l) => {
      expect(munsellFromLabD65({ l, a: 0, b: 0 }).chroma).toBeLessThan(1e-9);
    }),
  );
  const coordinate = fc.double({ min: -150, max: 150, noNaN: true });
  fc.assert(
    fc.property(fc.double({ min: -5, max: 110, noNaN: true }), coordinate, coordinate, (l, a, b) => {
      const { hue100, value, chroma } = munsellFromLabD65({ l, a, b });
      expect(hue100 >= 0 && hue100 < 100 && value >= 0 && value <= 10 && chroma >= 0).toBe(true);
    }),
  );
});

it.each([
  [24.13, 9.2, 1.3, '4.1Y 9.2/1.3'],
  [10, 5, 2, '10.0R 5.0/2.0'],
  [99.97, 5, 2, '10.0RP 5.0/2.0'],
  [0.04, 5, 2, '10.0RP 5.0/2.0'],
  [0.06, 5, 2, '0.1R 5.0/2.0'],
  [50, 9.25, 0.02, 'N 9.3'],
])('prints %f %f %f as %s', (hue100, value, chroma, notation) => {
  expect(munsellNotation(hue100, value, chroma)).toBe(notation);
});

it('reads notations as people write them and refuses the rest', () => {
  for (const good of ['N 9.25', 'N9/', '2.5y 8.5/2', ' 10 RP 5 / 2 ', '5PB3/.5']) {
    expect(labD65FromMunsell(good).ok, good).toBe(true);
  }
  for (const bad of ['', '5Q 5/2', '11Y 5/2', '5Y 11/2', '5Y 5', 'N', '5Y -1/2', '5Y 5/99', '5Y 5/2/1']) {
    const result = labD65FromMunsell(bad);
    expect(!result.ok && result.problem.code, bad).toBe('munsell-not-understood');
  }
});
