import { expect, it } from 'vitest';
import { xyzD65FromLabD65 } from '../../src/engine/color/lab';
import {
  cieTint,
  cieWhiteness,
  cieWhitenessHolds,
  stensby,
  wid,
  yellownessE313,
} from '../../src/engine/color/whiteness';
import { D65_2 } from '../../src/engine/color/whites';

const fromXy = (x: number, y: number, luminance: number) => ({
  x: (x / y) * luminance,
  y: luminance,
  z: ((1 - x - y) / y) * luminance,
});

it('has the worked values of CIE whiteness and tint (CIE 15:2004 equations, values of colour-science 0.4.6)', () => {
  const sample = fromXy(0.3167, 0.3334, 100);
  const white = fromXy(0.3139, 0.3311, 100);
  expect(cieWhiteness(sample, white)).toBeCloseTo(93.85, 2);
  expect(cieTint(sample, white)).toBeCloseTo(-1.305, 3);
  expect(cieWhitenessHolds(sample, white)).toBe(true);
});

it('gives the perfect diffuser whiteness 100 and tint 0 (CIE 15)', () => {
  expect(cieWhiteness(D65_2)).toBe(100);
  expect(cieTint(D65_2)).toBe(0);
  expect(yellownessE313(D65_2)).toBeCloseTo(0, 1);
});

it.each([
  // Limits of CIE 15: 40 < W < 5 Y - 280, -4 < T < 2.
  ['a cool counter', { l: 88.5, a: -0.8, b: -0.3 }, true],
  ['a yellowish white, W below 40', { l: 88, a: 0.6, b: 12 }, false],
  ['a gray, W above 5 Y - 280', { l: 60, a: 0, b: 0 }, false],
  ['a green white, T above 2', { l: 96, a: -4, b: 1 }, false],
])('knows where whiteness says something: %s', (_name, lab, holds) => {
  expect(cieWhitenessHolds(xyzD65FromLabD65(lab))).toBe(holds);
});

it('has the yellowness of ASTM E313 for X 95, Y 100, Z 105 (C/2 and D65/10: colour-science 0.4.6)', () => {
  expect(yellownessE313<'C-2'>({ x: 95, y: 100, z: 105 }, 'C-2')).toBeCloseTo(10.0895, 4);
  expect(yellownessE313<'D65-10'>({ x: 95, y: 100, z: 105 }, 'D65-10')).toBeCloseTo(2.8945, 4);
  expect(yellownessE313({ x: 95, y: 100, z: 105 })).toBeCloseTo(4.34, 4);
});

it('has the worked value of Stensby whiteness (colour-science 0.4.6)', () => {
  expect(stensby({ l: 100, a: -2.46875131, b: -16.72486654 })).toBeCloseTo(142.768, 3);
});

it('reads the dental whiteness index as its printed formula does', () => {
  // Perez et al. 2016: 0.511 L* - 2.324 a* - 1.100 b*, here worked by hand for L* 93, a* -0.3, b* 1.8.
  expect(wid({ l: 93, a: -0.3, b: 1.8 })).toBeCloseTo(47.523 + 0.6972 - 1.98, 10);
});
