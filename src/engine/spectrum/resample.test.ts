import fc from 'fast-check';
import { expect, it } from 'vitest';
import { COLOR_CHECKER } from '../../../tests/vectors/color-checker.data';
import { differenceCiede2000 } from '../color/difference';
import { labD65FromXyzD65 } from '../color/lab';
import { xyzFromReflectance } from '../color/xyz';
import { reflectanceSpd } from './grid';
import { lightById } from './lights';
import { observer2 } from './observers';
import { reflectanceOnGrid } from './resample';
import type { ReflectanceSpd } from './types';

const sampled = (start_nm: number, step_nm: number, end_nm: number, f: (nm: number) => number) => ({
  start_nm,
  step_nm,
  reflectance: Array.from({ length: (end_nm - start_nm) / step_nm + 1 }, (_, i) => f(start_nm + i * step_nm)),
});

function onGrid(given: Parameters<typeof reflectanceOnGrid>[0]): ReflectanceSpd {
  const result = reflectanceOnGrid(given);
  if (!result.ok) throw new Error(result.problem.text);
  return result.value;
}

it('takes 5 nm data on the grid unchanged, without a notice', () => {
  const result = reflectanceOnGrid({ start_nm: 380, step_nm: 5, reflectance: COLOR_CHECKER[0]!.reflectance });
  expect(result.ok && [...result.value]).toEqual(COLOR_CHECKER[0]!.reflectance);
  expect(result.ok && result.notices).toBeUndefined();
});

it('is exact for cubics at every step and offset (a property of third-degree Lagrange interpolation)', () => {
  const coefficient = fc.double({ min: -0.1, max: 0.1, noNaN: true });
  fc.assert(
    fc.property(
      fc.constantFrom(1, 5, 10, 20),
      fc.integer({ min: 0, max: 19 }),
      coefficient,
      coefficient,
      coefficient,
      (step, offset, a, b, c) => {
        const f = (nm: number) => {
          const t = (nm - 580) / 200;
          return 0.5 + ((a * t + b) * t + c) * t;
        };
        const rho = onGrid(sampled(380 - offset, step, 380 - offset + step * Math.ceil(440 / step), f));
        rho.forEach((value, i) => {
          expect(value).toBeCloseTo(f(380 + 5 * i), 10);
        });
      },
    ),
  );
});

it('keeps the colour of measured spectra at 10 nm (0.1 CIEDE2000) and 20 nm (0.6)', () => {
  const labOf = (rho: ReflectanceSpd) =>
    labD65FromXyzD65(xyzFromReflectance<'D65-2'>(rho, lightById('D65')!, observer2));
  for (const { reflectance } of COLOR_CHECKER) {
    const fine = labOf(reflectanceSpd(reflectance));
    for (const [step_nm, limit] of [
      [10, 0.1],
      [20, 0.6],
    ] as const) {
      const coarse = reflectance.filter((_, i) => i % (step_nm / 5) === 0);
      expect(differenceCiede2000(fine, labOf(onGrid({ start_nm: 380, step_nm, reflectance: coarse })))).toBeLessThan(
        limit,
      );
    }
  }
});

it('holds the end values of 400-700 nm data and says so (ASTM E308)', () => {
  const result = reflectanceOnGrid(sampled(400, 10, 700, (nm) => (nm - 300) / 500));
  expect(result.ok && [result.value[0], result.value[4], result.value[64], result.value[80]]).toEqual([
    0.2, 0.2, 0.8, 0.8,
  ]);
  expect(result.ok && result.notices?.map((notice) => notice.code)).toEqual(['spectrum-extended']);
});

it('does not overshoot a steep edge beyond 0-1', () => {
  const rho = onGrid(sampled(380, 20, 780, (nm) => (nm < 580 ? 0 : 1)));
  expect(rho.every((value) => value >= 0 && value <= 1)).toBe(true);
});

it.each([
  ['spectrum-step', sampled(380, 4, 780, () => 0.5)],
  ['spectrum-step', { start_nm: 380, step_nm: Number.NaN, reflectance: [0.5] }],
  ['spectrum-range', sampled(410, 10, 780, () => 0.5)],
  ['spectrum-range', sampled(380, 10, 690, () => 0.5)],
  ['spectrum-range', { start_nm: 400, step_nm: 10, reflectance: [] }],
  ['spectrum-not-a-number', sampled(380, 10, 780, (nm) => (nm === 500 ? Number.NaN : 0.5))],
  ['spectrum-negative', sampled(380, 10, 780, (nm) => (nm === 500 ? -0.01 : 0.5))],
  ['spectrum-percent', sampled(380, 10, 780, () => 45)],
  ['spectrum-above-one', sampled(380, 10, 780, (nm) => (nm === 440 ? 1.08 : 0.9))],
])('refuses with %s', (code, given) => {
  const result = reflectanceOnGrid(given);
  expect(!result.ok && result.problem.code).toBe(code);
  expect(!result.ok && result.problem.remedy.length).toBeGreaterThan(10);
});
