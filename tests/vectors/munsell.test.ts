import fc from 'fast-check';
import { mhvcToLab } from 'munsell';
import { expect, it } from 'vitest';
import { bradfordD65ToC } from '../../src/engine/color/adapt';
import { chromaticityFromXyz } from '../../src/engine/color/chromaticity';
import { differenceCiede2000 } from '../../src/engine/color/difference';
import { xyzD65FromLinearSrgb } from '../../src/engine/color/display';
import { labD65FromXyzD65, labFromXyz, xyzD65FromLabD65 } from '../../src/engine/color/lab';
import { C_2 } from '../../src/engine/color/whites';
import {
  labD65FromHueValueChroma,
  labD65FromMunsell,
  munsellFromLabD65,
  munsellNotation,
} from '../../src/engine/naming/munsell';
import { munsellValueFromY } from '../../src/engine/naming/munsell-value';
import { renotationForward, renotationInverse } from '../../src/engine/naming/renotation';
import { mulberry32 } from '../../src/engine/random';

const three = new Float64Array(3);

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
      fc.double({ min: 0, max: 100, noNaN: true }),
      fc.double({ min: 0.05, max: 10, noNaN: true }),
      fc.double({ min: 0.01, max: 60, noNaN: true }),
      (hue100, value, chroma) => {
        const back = munsellFromLabD65(labD65FromHueValueChroma(hue100, value, chroma));
        const turn = Math.abs(back.hue100 - hue100);
        // A hue is a direction: the nearer the neutral, the less it weighs. 1e-9 is what rounding leaves of Newton's 1e-11.
        expect(Math.min(turn, 100 - turn) * Math.min(1, chroma)).toBeLessThan(1e-9);
        expect(Math.abs(back.value - value)).toBeLessThan(1e-9);
        expect(Math.abs(back.chroma - chroma)).toBeLessThan(1e-9);
      },
    ),
  );
});

it('interpolates as the munsell package does, to 1e-9 in L*, a*, b* under C', () => {
  const random = mulberry32(1943);
  for (let i = 0; i < 30_000; i++) {
    // Chromas beyond the table's 50 and values below its 0.2 among them.
    const [hue100, value, chroma] = [100 * random(), 10 * random(), (i % 2 ? 60 : 3) * random()];
    renotationForward(hue100, value, chroma, three);
    mhvcToLab(hue100, value, chroma).forEach((expected, k) => {
      if (!(Math.abs(three[k]! - expected) < 1e-9)) expect.fail(`${hue100} ${value}/${chroma}: ${three}`);
    });
  }
});

const random = mulberry32(1705);
const spread = (reach: number) => reach * (2 * random() - 1);

it.each([
  [20_000, 'screen colours', () => labD65FromXyzD65(xyzD65FromLinearSrgb({ r: random(), g: random(), b: random() }))],
  [25_000, 'near-neutrals', () => ({ l: 100 * random(), a: spread(4), b: spread(4) })],
  [5_000, 'almost exact neutrals', () => ({ l: 100 * random(), a: spread(1e-6), b: spread(1e-6) })],
  [10_000, 'blacks', () => ({ l: 2 * random(), a: spread(3), b: spread(3) })],
  [
    10_000,
    'colours at and beyond the edge of what a surface can be',
    () => ({ l: 100 * random(), a: spread(150), b: spread(150) }),
  ],
])('inverts %i %s so that the package leads back within 1e-6', (count, _what, draw) => {
  for (let i = 0; i < count; i++) {
    const lab = draw();
    const underC = labFromXyz(bradfordD65ToC(xyzD65FromLabD65(lab)), C_2);
    // Beyond white the lightness is held.
    if (!(underC.l > 0 && underC.l < 100)) continue;
    renotationInverse(underC.l, underC.a, underC.b, three);
    const [l, a, b] = mhvcToLab(three[0]!, three[1]!, three[2]!);
    const miss = Math.max(Math.abs(l - underC.l), Math.abs(a - underC.a), Math.abs(b - underC.b));
    if (!(miss < 1e-6)) expect.fail(`${JSON.stringify(lab)} misses by ${miss}`);
  }
});

it('leads 100,000 random colours back to where they were: below 0.01 CIEDE2000 asked, 1e-6 kept', () => {
  for (let i = 0; i < 100_000; i++) {
    const screen = xyzD65FromLinearSrgb({ r: random(), g: random(), b: random() });
    // Adaptation to C lifts blues a little: in the last half unit some would pass white, where lightness is held.
    const lab = i % 2 ? labD65FromXyzD65(screen) : { l: 0.5 + 99 * random(), a: spread(6), b: spread(6) };
    const { hue100, value, chroma } = munsellFromLabD65(lab);
    const difference = differenceCiede2000(lab, labD65FromHueValueChroma(hue100, value, chroma));
    if (!(difference < 1e-6)) expect.fail(`${JSON.stringify(lab)} misses by ${difference}`);
  }
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
