import fc from 'fast-check';
import { expect, it } from 'vitest';
import { chromaticityFromXyz } from '../color/chromaticity';
import { whiteOf } from '../color/xyz';
import { wavelengthNm } from './grid';
import { LIGHT_IDS, lightById } from './lights';
import { observer2 } from './observers';
import { emissionOnGrid } from './resample-emission';
import type { SampledEmission } from './resample-emission-mean';

type Curve = (nm: number) => number;

const range = (from: number, to: number, step: number): number[] =>
  Array.from({ length: Math.floor((to - from) / step + 1e-9) + 1 }, (_, k) => from + k * step);

const sampled = (nm: readonly number[], curve: Curve): SampledEmission => ({ nm, power: nm.map(curve) });

function onGrid(given: SampledEmission) {
  const result = emissionOnGrid(given);
  if (!result.ok) throw new Error(result.problem.text);
  return result.value;
}

const xyOf = (given: SampledEmission) => chromaticityFromXyz(whiteOf(onGrid(given), observer2));
const codes = (given: SampledEmission) => {
  const result = emissionOnGrid(given);
  return result.ok ? (result.notices ?? []).map((notice) => notice.code) : [result.problem.code];
};

const peak =
  (at: number, width: number): Curve =>
  (nm) =>
    Math.exp(-4 * Math.LN2 * ((nm - at) / width) ** 2);

/** A white LED: blue peak of 20 nm, phosphor of 110 nm. */
const led =
  (blue_nm: number): Curve =>
  (nm) =>
    peak(blue_nm, 20)(nm) + 0.5 * peak(560, 110)(nm);

/** A line of 1 nm width and unit power, as a fine instrument records it. */
const line =
  (at: number): Curve =>
  (nm) =>
    Math.max(0, 1 - Math.abs(nm - at));

it('leaves data on the grid as they are, without a notice', () => {
  for (const id of LIGHT_IDS) {
    const given = { nm: range(380, 780, 5), power: [...lightById(id)!] };
    expect([...onGrid(given)]).toEqual(given.power);
    expect(codes(given)).toEqual([]);
  }
});

it('is exact for a straight line at any steps, even or not (the mean of a straight line is its middle)', () => {
  fc.assert(
    fc.property(fc.array(fc.double({ min: 0.3, max: 10, noNaN: true }), { minLength: 60, maxLength: 900 }), (steps) => {
      const nm = [370];
      for (let k = 0; nm.at(-1)! < 790; k++) nm.push(nm.at(-1)! + steps[k % steps.length]!);
      const spd = onGrid(sampled(nm, (x) => 2 + x / 100));
      spd.forEach((power, i) => {
        expect(power).toBeCloseTo(2 + wavelengthNm(i) / 100, 9);
      });
    }),
  );
});

it('keeps the power and the mean wavelength of a line wherever it lies, at steps of 0.5-10 nm', () => {
  const step = fc.constantFrom(0.5, 1, 2, 3, 5, 10);
  fc.assert(
    fc.property(fc.double({ min: 400, max: 760, noNaN: true }), step, (at, step_nm) => {
      // The instrument's band is as wide as its step: a triangle of unit area.
      const curve: Curve = (nm) => Math.max(0, 1 - Math.abs(nm - at) / step_nm) / step_nm;
      const spd = onGrid(sampled(range(360, 800, step_nm), curve));
      const power = 5 * spd.reduce((sum, value) => sum + value, 0);
      const moment = 5 * spd.reduce((sum, value, i) => sum + value * wavelengthNm(i), 0);
      expect(power).toBeCloseTo(1, 9);
      expect(moment / power).toBeCloseTo(at, 6);
    }),
  );
});

it.each([
  // x, y of the primaries of the CIE 1931 RGB system (CIE 15; Wyszecki and Stiles, Color Science, 2nd ed., 3.3).
  [435.8, 0.16658, 0.00886],
  [546.1, 0.27376, 0.71741],
  [700, 0.73467, 0.26533],
])('gives the line of %f nm its published chromaticity', (at, x, y) => {
  const xy = xyOf(sampled(range(380, 780, 0.1), line(at)));
  // The matching functions count as straight between grid points; a line cannot be better known on a 5 nm grid.
  expect(Math.abs(xy.x - x)).toBeLessThan(6e-4);
  expect(Math.abs(xy.y - y)).toBeLessThan(6e-4);
});

it('integrates a lamp with lines given at 1 nm; picking every fifth value would lose them', () => {
  const lamp: Curve = (nm) => 0.02 + line(435.8)(nm) + 2.5 * line(544.2)(nm) + 4 * line(611.4)(nm);
  const fine = sampled(range(380, 780, 1), lamp);
  const truth = xyOf(sampled(range(375, 785, 0.1), lamp));
  const xy = xyOf(fine);
  // Ten times finer data differ by what 1 nm leaves open of a line of 1 nm width.
  expect(Math.hypot(xy.x - truth.x, xy.y - truth.y)).toBeLessThan(1e-4);
  const picked = xyOf({ nm: range(380, 780, 5), power: fine.power.filter((_, k) => k % 5 === 0) });
  expect(Math.hypot(picked.x - truth.x, picked.y - truth.y)).toBeGreaterThan(0.05);
});

/** Straight lines between samples: what data at coarse steps amount to. */
const joined =
  (nm: readonly number[], curve: Curve): Curve =>
  (x) => {
    const k = Math.max(
      1,
      nm.findIndex((value) => value >= x),
    );
    const t = (x - nm[k - 1]!) / (nm[k]! - nm[k - 1]!);
    return curve(nm[k - 1]!) * (1 - t) + curve(nm[k]!) * t;
  };

it('knows a white LED to 4e-4 in x, y from steps up to 5 nm, to 1.5e-3 from 10 nm; 20 nm would leave it open by 0.01', () => {
  // On the grid a smooth spectrum is exact: sums of equal steps converge fast.
  const truth = xyOf(sampled(range(380, 780, 5), led(452)));
  const worst = (step_nm: number) =>
    Math.max(
      ...range(0, step_nm - 1, 1).map((phase) => {
        const nm = range(380 - phase, 800, step_nm);
        // Steps that are refused are shown as what they amount to: straight lines.
        const given = step_nm > 10 ? sampled(range(380, 780, 5), joined(nm, led(452))) : sampled(nm, led(452));
        const xy = xyOf(given);
        return Math.hypot(xy.x - truth.x, xy.y - truth.y);
      }),
    );
  for (const step_nm of [1, 2, 3, 4, 5]) expect(worst(step_nm), `${step_nm} nm`).toBeLessThan(4e-4);
  // As good as a good spectroradiometer (about 1.5e-3 for LEDs; common practice, no source).
  expect(worst(10)).toBeLessThan(1.5e-3);
  expect(worst(20)).toBeGreaterThan(0.01);
});

it('holds the ends of 400-700 nm data, says so and by how much x, y are open for it', () => {
  const given = sampled(range(400, 700, 1), (nm) => nm - 300);
  const spd = onGrid(given);
  expect([spd[0], spd[3], spd[4], spd[64], spd[80]].map((value) => Math.round(value! * 10) / 10)).toEqual([
    // The triangle rounds the kink: the mean of t (1 - t / 5) over 0-5 nm is 5 / 6.
    100, 100, 100.8, 399.2, 400,
  ]);
  const result = emissionOnGrid(given);
  expect(codes(given)).toEqual(['lamp-extended']);
  expect(result.ok && result.notices?.[0]?.text).toMatch(/400-700 nm.*up to 0\.000[1-9]\./);
});

it('holds ends with less harm than zeros: D65 known over 400-700 nm', () => {
  const full = lightById('D65')!;
  const truth = chromaticityFromXyz(whiteOf(full, observer2));
  const held = xyOf({ nm: range(400, 700, 5), power: [...full.slice(4, 65)] });
  const zeroed = xyOf({ nm: range(380, 780, 5), power: [...full].map((power, i) => (i < 4 || i > 64 ? 0 : power)) });
  // 1e-4 is invisible: a tenth of a spectroradiometer's own error.
  expect(Math.hypot(held.x - truth.x, held.y - truth.y)).toBeLessThan(1.1e-4);
  expect(Math.hypot(zeroed.x - truth.x, zeroed.y - truth.y)).toBeGreaterThan(3e-4);
});

it('takes no notice of what lies beyond the visible', () => {
  const nm = [200, 300, ...range(370, 790, 1), 900, 1100];
  expect(codes(sampled(nm, (x) => (x < 350 || x > 800 ? -5 : 1)))).toEqual([]);
});

it('sets noise to zero after the mean, and says so', () => {
  const given = sampled(range(380, 780, 1), (nm) => peak(560, 60)(nm) + (nm < 420 ? -0.004 : 0));
  expect(codes(given)).toEqual(['lamp-noise']);
  expect(onGrid(given).every((power) => power >= 0)).toBe(true);
});

it('says that 10 nm is coarse', () => {
  expect(codes(sampled(range(380, 780, 10), led(452)))).toEqual(['lamp-coarse']);
});

const flat = () => 1;

it.each([
  ['lamp-lengths', { nm: range(380, 780, 5), power: [1] }],
  ['lamp-not-a-number', sampled(range(380, 780, 5), (nm) => (nm === 500 ? Number.NaN : 1))],
  ['lamp-not-a-number', sampled(range(380, 780, 5), (nm) => (nm === 500 ? Number.POSITIVE_INFINITY : 1))],
  ['lamp-not-a-number', { nm: [Number.NaN, ...range(385, 780, 5)], power: range(380, 780, 5).map(flat) }],
  ['lamp-order', sampled(range(380, 780, 5).reverse(), flat)],
  ['lamp-order', sampled([380, 380, ...range(385, 780, 5)], flat)],
  ['lamp-range', { nm: [], power: [] }],
  ['lamp-range', { nm: [500], power: [1] }],
  ['lamp-range', sampled(range(405, 780, 5), flat)],
  ['lamp-range', sampled(range(380, 695, 5), flat)],
  ['lamp-range', sampled(range(0.38, 0.78, 0.005), flat)],
  ['lamp-step', sampled(range(380, 780, 20), flat)],
  ['lamp-step', sampled([...range(380, 500, 1), ...range(520, 780, 1)], flat)],
  ['lamp-negative', sampled(range(380, 780, 5), (nm) => (nm === 500 ? -0.02 : 1))],
  ['lamp-dark', sampled(range(380, 780, 5), () => 0)],
  ['lamp-dark', sampled(range(380, 780, 5), () => -1)],
])('refuses with %s', (code, given) => {
  const result = emissionOnGrid(given);
  expect(!result.ok && result.problem.code).toBe(code);
  expect(!result.ok && result.problem.remedy.length).toBeGreaterThan(10);
});
