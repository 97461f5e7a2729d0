import { expect, it } from 'vitest';
import { ciecam02FromXyz, xyzFromCiecam02 } from '../../src/engine/appearance/ciecam02';
import type { Cam } from '../../src/engine/appearance/correlates';
import { viewingConditions } from '../../src/engine/appearance/viewing-conditions';
import type { Xyz } from '../../src/engine/color/types';

type Triple = [number, number, number];
const xyz = ([x, y, z]: Triple): Xyz<'setting-2'> => ({ x, y, z });
const D65: Triple = [95.05, 100, 108.88];

const seen = (color: Triple, white: Triple, la_cd_m2: number, yb: number): Cam =>
  ciecam02FromXyz(xyz(color), viewingConditions({ white: xyz(white), la_cd_m2, yb }));

// J, C, h, s, Q, M, H. Average surround. The first two: worked examples of CIE 159:2004, section 9. The others: the
// worksheet of appearance models that goes with M. D. Fairchild's handbook, the last with its hue quadrature corrected.
it.each<[string, Triple, Triple, number, number, number[]]>([
  [
    'CIE 159, bright',
    [19.31, 23.93, 10.14],
    [98.88, 90, 32.03],
    200,
    18,
    [48.0314, 38.7789, 191.0452, 46.0177, 183.124, 38.7789, 240.8885],
  ],
  [
    'CIE 159, dim light',
    [19.31, 23.93, 10.14],
    [98.88, 90, 32.03],
    20,
    18,
    [47.6856, 36.0527, 185.3445, 51.1275, 113.8401, 29.758, 232.663],
  ],
  [
    'a near-neutral gray',
    [19.01, 20, 21.78],
    D65,
    1000 / Math.PI,
    20,
    [41.73109, 0.10471, 219.04841, 2.36031, 195.37131, 0.10884, 278.0607],
  ],
  [
    'a pink',
    [57.06, 43.06, 31.96],
    D65,
    100 / Math.PI,
    20,
    [65.95523, 48.5705, 19.55739, 52.24549, 152.6722, 41.67327, 399.38837],
  ],
])('has the published correlates of %s to 1e-4', (_name, color, white, la, yb, published) => {
  const { j, c, h_deg, s, q, m, hueQuadrature } = seen(color, white, la, yb);
  [j, c, h_deg, s, q, m, hueQuadrature].forEach((value, i) => {
    // Printed with four or five decimals.
    expect(Math.abs(value - published[i]!)).toBeLessThan(1e-4);
  });
});

// The same worksheet's inputs 3 and 4, computed with colour-science 0.4.6. Its hue quadrature of the second is left out: that
// code splits the last quarter at 360 degrees, as the worksheet did before its correction.
it.each<[string, Triple, Triple, number, number[]]>([
  [
    'a dark green under A',
    [3.53, 6.56, 2.14],
    [109.85, 100, 35.58],
    318.31,
    [21.7854284, 46.9441468, 177.1403065, 58.7928421, 141.1727577, 48.7977511, 220.3911985],
  ],
  [
    'a bluish gray under A',
    [19.01, 20, 21.78],
    [109.85, 100, 35.58],
    31.83,
    [42.5318905, 51.9150345, 248.9042218, 60.2199648, 122.8276233, 44.5427518],
  ],
])('agrees with another implementation on %s', (_name, color, white, la, expected) => {
  const { j, c, h_deg, s, q, m, hueQuadrature } = seen(color, white, la, 20);
  expected.forEach((value, i) => {
    // Seven printed decimals; the other code's inverse matrix is its own.
    expect(Math.abs(value - [j, c, h_deg, s, q, m, hueQuadrature][i]!)).toBeLessThan(1e-6);
  });
});

it('has the white at J 100 and comes back from its correlates', () => {
  const white = xyz([109.85, 100, 35.58]);
  const conditions = viewingConditions({ white, la_cd_m2: 20, yb: 20, surround: 'dim' });
  expect(ciecam02FromXyz(white, conditions).j).toBeCloseTo(100, 10);
  const { j, m, h_deg } = ciecam02FromXyz(xyz([30, 25, 12]), conditions);
  const back = xyzFromCiecam02({ j, m, h_deg }, conditions);
  // Rounding of doubles through two powers of about 1/0.42.
  expect(Math.abs(back.x - 30)).toBeLessThan(1e-9);
  expect(Math.abs(back.y - 25)).toBeLessThan(1e-9);
  expect(Math.abs(back.z - 12)).toBeLessThan(1e-9);
});

it('makes a perfect white neutral at full adaptation under any light', () => {
  const white = xyz([109.85, 100, 35.58]);
  const adapted = ciecam02FromXyz(white, viewingConditions({ white, la_cd_m2: 100, yb: 20, degree: 1 }));
  // The cone space of the responses is equal-energy normalised to the five digits of its matrix.
  expect(adapted.m).toBeLessThan(0.01);
});
