import fc from 'fast-check';
import { expect, it } from 'vitest';
import { COLOR_CHECKER } from '../../../tests/vectors/color-checker.data';
import { differenceCiede2000 } from '../color/difference';
import { labD65FromXyzD65 } from '../color/lab';
import type { Lab } from '../color/types';
import { xyzFromReflectance } from '../color/xyz';
import { mulberry32 } from '../random';
import { lagrangeAt } from './cubic-lagrange';
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

it('is exact for cubics at every step and offset (a property of third-degree Lagrange interpolation and of its weights)', () => {
  const coefficient = fc.double({ min: -0.1, max: 0.1, noNaN: true });
  fc.assert(
    fc.property(
      fc.constantFrom(0.5, 1, 2, 10 / 3, 4, 5, 7, 10, 20),
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

const labOf = (rho: ReflectanceSpd) => labD65FromXyzD65(xyzFromReflectance<'D65-2'>(rho, lightById('D65')!, observer2));

it('keeps the colour of measured spectra at 10 nm (0.1 CIEDE2000) and 20 nm (0.2), wherever the steps begin', () => {
  // Measured: 0.085 and 0.180 at most, on a saturated purple and a blue; the limits leave a little room for other patches.
  for (const { reflectance } of COLOR_CHECKER) {
    const fine = labOf(reflectanceSpd(reflectance));
    for (const [step, first, limit] of [
      [2, 0, 0.1],
      [2, 1, 0.1],
      [4, 0, 0.2],
      [4, 1, 0.2],
      [4, 2, 0.2],
      [4, 3, 0.2],
    ] as const) {
      const coarse = reflectance.filter((_, i) => i >= first && (i - first) % step === 0);
      const given = { start_nm: 380 + 5 * first, step_nm: 5 * step, reflectance: coarse };
      expect(differenceCiede2000(fine, labOf(onGrid(given)))).toBeLessThan(limit);
    }
  }
});

it('gives at 5 nm what sums at 1 nm give, noise and all (CIE 15:2018, 7.1: 1 nm is the reference)', () => {
  // Light times observer between its 5 nm values by cubics, so that both sides know the same tables.
  const random = mulberry32(11);
  const d65 = lightById('D65')!;
  const products = [observer2.x, observer2.y, observer2.z].map((values) => Array.from(values, (v, k) => v * d65[k]!));
  const at1nm = Array.from({ length: 401 }, (_, i) => products.map((product) => lagrangeAt(product, i / 5)));
  const labAt1nm = (rho: readonly number[]): Lab<'D65-2'> => {
    const perfect = at1nm.reduce((sum, xyz) => sum + xyz[1]!, 0);
    const sum = (r: number) => (100 * at1nm.reduce((total, xyz, i) => total + xyz[r]! * rho[i]!, 0)) / perfect;
    return labD65FromXyzD65({ x: sum(0), y: sum(1), z: sum(2) });
  };
  for (const noise of [0, 0.005]) {
    for (const { reflectance } of COLOR_CHECKER) {
      const fine = Array.from({ length: 401 }, (_, i) => {
        const scatter = noise * 2 * (random() + random() + random() - 1.5);
        return Math.min(1, Math.max(0, lagrangeAt(reflectance, i / 5) + scatter));
      });
      const ours = labOf(onGrid({ start_nm: 380, step_nm: 1, reflectance: fine }));
      expect(differenceCiede2000(ours, labAt1nm(fine))).toBeLessThan(0.02);
    }
  }
});

it('takes any even step up to 20 nm, and says that it brought an odd one to 5 nm', () => {
  const curve = (nm: number) => 0.5 + 0.2 * Math.sin(nm / 60);
  for (const step_nm of [2, 10 / 3, 4, 7, 15]) {
    const result = reflectanceOnGrid(sampled(380, step_nm, 780 + step_nm, curve));
    expect(result.ok && result.notices?.map((notice) => notice.code)).toEqual(['spectrum-resampled']);
    const rho = result.ok ? result.value : [];
    // Cubic interpolation misses by step^4 / 24 of the fourth derivative, 0.2 / 60^4, at most: 3e-5 at 15 nm.
    rho.forEach((value, i) => {
      expect(Math.abs(value - curve(380 + 5 * i))).toBeLessThan(4e-5);
    });
  }
});

it('counts noise about black and white as 0 and 1, and says so', () => {
  const dark = reflectanceOnGrid(sampled(380, 5, 780, (nm) => (nm < 420 ? -0.0012 : 0.02)));
  expect(dark.ok && [dark.value[0], dark.value[40]]).toEqual([0, 0.02]);
  expect(dark.ok && dark.notices?.map((notice) => notice.code)).toEqual(['spectrum-noise']);
  expect(dark.ok && dark.notices?.[0]?.text).toContain('-0.0012');
  const white = reflectanceOnGrid(sampled(380, 5, 780, () => 1.002));
  expect(white.ok && white.value.every((value) => value === 1)).toBe(true);
});

it('leaves the mean of a noisy black where it is: what is cut off below 0 is taken from the values beside it', () => {
  const random = mulberry32(5);
  let mean = 0;
  let cut = 0;
  const runs = 300;
  for (let run = 0; run < runs; run++) {
    const noisy = sampled(380, 10, 780, () =>
      Math.max(-0.0049, 0.005 + 0.0066 * (random() + random() + random() - 1.5)),
    );
    const rho = onGrid(noisy);
    const given = noisy.reflectance.reduce((sum, value) => sum + value, 0) / noisy.reflectance.length;
    mean += (rho.reduce((sum, value) => sum + value, 0) / rho.length - given) / runs;
    const clipped = noisy.reflectance.reduce((sum, value) => sum + Math.max(0, value), 0) / noisy.reflectance.length;
    cut += (clipped - given) / runs;
    expect(Math.min(...rho)).toBeGreaterThanOrEqual(0);
  }
  // Cutting off alone would lighten by nearly 1e-4; the ends weigh a little differently at 5 nm.
  expect(cut).toBeGreaterThan(5e-5);
  expect(Math.abs(mean)).toBeLessThan(cut / 5);
});

it('says in percent and at which wavelength a spectrum is above white: a brightener in the blue, else fluorescence', () => {
  const above = (at: number) => {
    const result = reflectanceOnGrid(sampled(380, 10, 780, (nm) => (nm === at ? 1.03274 : 0.9)));
    return result.ok ? '' : `${result.problem.text} ${result.problem.remedy}`;
  };
  expect(above(420)).toBe(
    '103.3% at 420 nm: more than a white can send back, so it likely holds an optical brightener. ' +
      'Measure with a UV-cut filter (M2); brighteners are not computed here.',
  );
  expect(above(600)).toMatch(/^103\.3% at 600 nm: .*fluorescent or the white calibration is off/);
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
  ['spectrum-step', sampled(380, 25, 780, () => 0.5)],
  ['spectrum-step', { start_nm: 380, step_nm: 0, reflectance: [0.5] }],
  ['spectrum-step', { start_nm: 380, step_nm: -10, reflectance: [0.5] }],
  ['spectrum-step', { start_nm: 380, step_nm: Number.NaN, reflectance: [0.5] }],
  ['spectrum-range', sampled(410, 10, 780, () => 0.5)],
  ['spectrum-range', sampled(380, 10, 690, () => 0.5)],
  ['spectrum-range', { start_nm: 400, step_nm: 10, reflectance: [] }],
  ['spectrum-range', { start_nm: Number.NaN, step_nm: 10, reflectance: [0.5] }],
  ['spectrum-not-a-number', sampled(380, 10, 780, (nm) => (nm === 500 ? Number.NaN : 0.5))],
  ['spectrum-negative', sampled(380, 10, 780, (nm) => (nm === 500 ? -0.01 : 0.5))],
  ['spectrum-percent', sampled(380, 10, 780, () => 45)],
  ['spectrum-above-one', sampled(380, 10, 780, (nm) => (nm === 440 ? 1.08 : 0.9))],
])('refuses with %s', (code, given) => {
  const result = reflectanceOnGrid(given);
  expect(!result.ok && result.problem.code).toBe(code);
  expect(!result.ok && result.problem.remedy.length).toBeGreaterThan(10);
});
