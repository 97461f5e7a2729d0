import fc from 'fast-check';
import { expect, it } from 'vitest';
import { COLOR_CHECKER } from '../../../tests/vectors/color-checker.data';
import { reflectanceSpd } from './grid';
import { lhtssReflectance, zFromReflectance } from './lhtss';
import { WEIGHTS_D65_2 } from './tristimulus-weights';
import type { ReflectanceSpd } from './types';

function tristimulus(rho: ArrayLike<number>): Float64Array {
  const sums = new Float64Array(3);
  for (let i = 0; i < 81; i++)
    for (let r = 0; r < 3; r++) sums[r] = sums[r]! + WEIGHTS_D65_2.rows[3 * i + r]! * rho[i]!;
  return sums;
}

const chart = COLOR_CHECKER.map(({ reflectance }) => reflectanceSpd(reflectance));
const wave = (size: number) => Float64Array.from({ length: 81 }, (_, i) => size * Math.sin(i / 6));
const far = (one: ArrayLike<number>, other: ArrayLike<number>) =>
  Math.max(...Array.from(one, (value, i) => Math.abs(value - other[i]!)));

it('returns a curve whose shape it is given, whatever the curve', () => {
  // With the shape of the curve itself a slope of 0 is possible, so the curve is the only least one.
  for (const rho of chart) {
    const again = lhtssReflectance(tristimulus(rho), WEIGHTS_D65_2, zFromReflectance(rho))!;
    expect(far(again, rho)).toBeLessThan(1e-9);
  }
});

it('has exactly the color with any shape', () => {
  fc.assert(
    fc.property(fc.constantFrom(...chart), fc.double({ min: -0.5, max: 0.5, noNaN: true }), (rho, size) => {
      const target = tristimulus(rho);
      const shaped = lhtssReflectance(target, WEIGHTS_D65_2, wave(size))!;
      expect(far(tristimulus(shaped), target)).toBeLessThan(1e-10);
      expect(shaped.every((value) => value > 0 && value < 1)).toBe(true);
    }),
  );
});

it('takes a constant shape for none, and adds nothing for a constant', () => {
  for (const rho of chart) {
    const target = tristimulus(rho);
    const plain = lhtssReflectance(target, WEIGHTS_D65_2)!;
    expect(far(lhtssReflectance(target, WEIGHTS_D65_2, new Float64Array(81).fill(0.7))!, plain)).toBeLessThan(1e-8);
    const shaped = lhtssReflectance(target, WEIGHTS_D65_2, wave(0.2))!;
    const raised = lhtssReflectance(
      target,
      WEIGHTS_D65_2,
      wave(0.2).map((value) => value - 1.3),
    )!;
    expect(far(shaped, raised)).toBeLessThan(1e-8);
  }
});

it('departs from the shape with the least slope: no curve of the color does with less', () => {
  const target = tristimulus(chart[1]!);
  const shape = wave(0.3);
  const slopes = (rho: ReflectanceSpd) => {
    const rest = zFromReflectance(rho).map((value, i) => value - shape[i]!);
    return rest.reduce((sum, value, i) => (i === 0 ? 0 : sum + (value - rest[i - 1]!) ** 2), 0);
  };
  const least = slopes(lhtssReflectance(target, WEIGHTS_D65_2, shape)!);
  for (const size of [-0.3, -0.1, 0, 0.1, 0.2, 0.29, 0.31, 0.4]) {
    expect(slopes(lhtssReflectance(target, WEIGHTS_D65_2, wave(size))!), `${size}`).toBeGreaterThan(least);
  }
});
