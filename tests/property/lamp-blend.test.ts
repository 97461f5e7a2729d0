import fc from 'fast-check';
import { expect, it } from 'vitest';
import { xyzFromEmission } from '../../src/engine/color/xyz';
import { blendLights } from '../../src/engine/lamp/blend';
import { LIGHT_IDS, lightById, perLux } from '../../src/engine/spectrum/lights';
import { observer2 } from '../../src/engine/spectrum/observers';
import type { EmissionSpd } from '../../src/engine/spectrum/types';

const light = fc.constantFrom(...LIGHT_IDS).map((id) => lightById(id)!);
const part = fc.record({ spd: light, level: fc.double({ min: 0.001, max: 1000, noNaN: true }) });

function blended(parts: readonly { spd: EmissionSpd; level: number }[]): EmissionSpd {
  const result = blendLights(parts);
  if (!result.ok) throw new Error(result.problem.text);
  return result.value;
}

it('adds lux: the blend has as many as its levels, and its XYZ is the sum of the parts (Grassmann)', () => {
  fc.assert(
    fc.property(fc.array(part, { minLength: 1, maxLength: 5 }), (parts) => {
      const xyz = xyzFromEmission(blended(parts), observer2);
      const lux = parts.reduce((sum, { level }) => sum + level, 0);
      expect(Math.abs(xyz.y / lux - 1)).toBeLessThan(1e-12);
      const x = parts.reduce((sum, { spd, level }) => sum + level * xyzFromEmission(perLux(spd), observer2).x, 0);
      expect(Math.abs(xyz.x / x - 1)).toBeLessThan(1e-12);
    }),
  );
});

it('does not depend on the order of the lamps nor on the scale of their spectra', () => {
  fc.assert(
    fc.property(part, part, fc.double({ min: 1e-6, max: 1e6, noNaN: true }), (first, second, scale) => {
      const plain = blended([first, second]);
      const scaled = first.spd.map((power) => power * scale) as EmissionSpd;
      const turned = blended([second, { spd: scaled, level: first.level }]);
      plain.forEach((power, i) => {
        expect(Math.abs(turned[i]! - power)).toBeLessThanOrEqual(1e-12 * power);
      });
    }),
  );
});

it('leaves out a lamp at level 0', () => {
  const [a, led] = [lightById('A')!, lightById('LED-B3')!];
  expect([
    ...blended([
      { spd: a, level: 2 },
      { spd: led, level: 0 },
    ]),
  ]).toEqual([...blended([{ spd: a, level: 2 }])]);
});

it.each([
  ['level-negative', [1, -0.1]],
  ['level-not-a-number', [Number.NaN, 1]],
  ['level-not-a-number', [Number.POSITIVE_INFINITY]],
  ['all-lights-off', [0, 0]],
  ['all-lights-off', []],
])('refuses with %s', (code, levels) => {
  const result = blendLights(levels.map((level) => ({ spd: lightById('D65')!, level })));
  expect(!result.ok && result.problem.code).toBe(code);
});
