import { expect, it } from 'vitest';
import { adaptationDegree, viewingConditions } from '../../src/engine/appearance/viewing-conditions';
import { D65_2 } from '../../src/engine/color/whites';

it('has the degree of adaptation of CIE 159 in closed form', () => {
  // F (1 - e^(-(La + 42)/92) / 3.6): at La 0 worked by hand, 42/92 = 0.456522, e^-0.456522 = 0.633483.
  expect(adaptationDegree(1, 0)).toBeCloseTo(1 - 0.633483 / 3.6, 6);
  // 50 cd/m2: the exponent is exactly -1.
  expect(adaptationDegree(1, 50)).toBeCloseTo(1 - Math.exp(-1) / 3.6, 12);
  expect(adaptationDegree(0.9, 50)).toBeCloseTo(0.9 * (1 - Math.exp(-1) / 3.6), 12);
});

it('runs from 0.82 in the dark to 1 in full light and never leaves 0 to 1', () => {
  expect(adaptationDegree(1, 1e5)).toBe(1);
  expect(adaptationDegree(0.8, 1e5)).toBe(0.8);
  let before = 0;
  for (let la = 0; la < 1000; la += 10) {
    const degree = adaptationDegree(1, la);
    expect(degree).toBeGreaterThanOrEqual(before);
    expect(degree).toBeLessThanOrEqual(1);
    before = degree;
  }
  expect(adaptationDegree(2, 1e5)).toBe(1);
  expect(adaptationDegree(-1, 10)).toBe(0);
});

it('is taken from the surround unless it is given', () => {
  const dim = viewingConditions({ white: D65_2, la_cd_m2: 50, yb: 20, surround: 'dim' });
  expect(dim.degree).toBe(adaptationDegree(0.9, 50));
  expect(viewingConditions({ white: D65_2, la_cd_m2: 50, yb: 20, degree: 1 }).degree).toBe(1);
});

it('asks for some light', () => {
  expect(() => viewingConditions({ white: D65_2, la_cd_m2: 0, yb: 20 })).toThrow(RangeError);
  expect(() => viewingConditions({ white: D65_2, la_cd_m2: Number.NaN, yb: 20 })).toThrow(RangeError);
});
