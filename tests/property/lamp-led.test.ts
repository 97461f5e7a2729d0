import fc from 'fast-check';
import { expect, it } from 'vitest';
import { cctDuv } from '../../src/engine/color/correlated-temperature';
import { whiteOf, xyzFromEmission } from '../../src/engine/color/xyz';
import { colorRendering } from '../../src/engine/lamp/color-rendering';
import { type LedLabel, phosphorLedSpd } from '../../src/engine/lamp/phosphor-led';
import { observer2 } from '../../src/engine/spectrum/observers';

const RUNS = { numRuns: 60 };
const temperature = fc.double({ min: 2200, max: 6500, noNaN: true });
const index = fc.double({ min: 63, max: 96, noNaN: true });
const duv = fc.double({ min: -0.003, max: 0.003, noNaN: true });

function led(label: LedLabel) {
  const result = phosphorLedSpd(label);
  if (!result.ok) throw new Error(result.problem.text);
  return result.value;
}

it('has the color temperature, Duv and Ra asked for, one lux and no negative power', () => {
  fc.assert(
    fc.property(temperature, index, duv, (cct_k, ra, offset) => {
      const spd = led({ cct_k, ra, duv: offset });
      const reading = cctDuv(whiteOf(spd, observer2))!;
      expect(Math.abs(reading.cct_k / cct_k - 1)).toBeLessThan(1e-5);
      expect(Math.abs(reading.duv - offset)).toBeLessThan(1e-6);
      // 0.01 K of the reading's own accuracy move Ra by less; M1 and M2 of daylight are rounded to 0.001.
      expect(Math.abs(colorRendering(spd)!.ra - ra)).toBeLessThan(0.02);
      expect(xyzFromEmission(spd, observer2).y).toBeCloseTo(1, 9);
      expect(Math.min(...spd)).toBeGreaterThanOrEqual(0);
    }),
    RUNS,
  );
});

it('changes little when the label changes little, across the change of reference at 5000 K, too', () => {
  const change = (first: LedLabel, second: LedLabel) => {
    const [a, b] = [led(first), led(second)];
    const sum = a.reduce((total, power) => total + power, 0);
    return a.reduce((total, power, i) => total + Math.abs(power - b[i]!), 0) / sum;
  };
  fc.assert(
    fc.property(fc.oneof(temperature, fc.constant(4996)), index, (cct_k, ra) => {
      // Steepest at 2200 K and Ra 96: 0.6 % of the power moves in 10 K, 0.7 % in 0.2 of Ra. At 5000 K it is 0.2 %.
      expect(change({ cct_k, ra }, { cct_k: cct_k + 10, ra })).toBeLessThan(0.01);
      expect(change({ cct_k, ra }, { cct_k, ra: ra + 0.2 })).toBeLessThan(0.01);
    }),
    RUNS,
  );
});

it('reaches the classes 70, 80, 90, 95 and 97 from 2200 to 6500 K', () => {
  for (const cct_k of [2200, 2700, 3000, 4000, 5000, 6500]) {
    for (const ra of [70, 80, 90, 95, 97]) expect(phosphorLedSpd({ cct_k, ra }).ok, `${cct_k} K, ${ra}`).toBe(true);
  }
});

it('names the range it reaches when it refuses an Ra, and keeps that word', () => {
  fc.assert(
    fc.property(fc.double({ min: 1800, max: 8000, noNaN: true }), duv, (cct_k, offset) => {
      const refused = phosphorLedSpd({ cct_k, ra: 99.5, duv: offset });
      expect(!refused.ok && refused.problem.code).toBe('led-ra');
      const [, from, to] = (refused.ok ? '' : refused.problem.remedy).match(/from (\d+) to (\d+)/)!;
      expect(phosphorLedSpd({ cct_k, ra: Number(from), duv: offset }).ok).toBe(true);
      expect(phosphorLedSpd({ cct_k, ra: Number(to), duv: offset }).ok).toBe(true);
    }),
    RUNS,
  );
});

it.each([
  ['led-temperature', { cct_k: 1500, ra: 80 }],
  ['led-temperature', { cct_k: 9000, ra: 80 }],
  ['led-temperature', { cct_k: Number.NaN, ra: 80 }],
  ['led-duv', { cct_k: 3000, ra: 80, duv: 0.02 }],
  ['led-duv', { cct_k: 3000, ra: 80, duv: Number.NaN }],
  ['led-ra', { cct_k: 3000, ra: 40 }],
  ['led-ra', { cct_k: 3000, ra: Number.NaN }],
])('refuses with %s', (code, label) => {
  const result = phosphorLedSpd(label);
  expect(!result.ok && result.problem.code).toBe(code);
  expect(!result.ok && result.problem.remedy.length).toBeGreaterThan(10);
});
