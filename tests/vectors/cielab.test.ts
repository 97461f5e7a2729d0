import fc from 'fast-check';
import { expect, it } from 'vitest';
import { chromaOf, hueDegOf, labFromXyz, xyzFromLab, yFromLightness } from '../../src/engine/color/lab';
import type { White, Xyz } from '../../src/engine/color/types';
import { A_2, C_2, D50_2, D65_2, D65_10 } from '../../src/engine/color/whites';
import { xyzFromReflectance } from '../../src/engine/color/xyz';
import { reflectanceSpd } from '../../src/engine/spectrum/grid';
import { lightById } from '../../src/engine/spectrum/lights';
import { observer2 } from '../../src/engine/spectrum/observers';
import { COLOR_CHECKER } from './color-checker.data';

it.each([
  // ASTM E308-18, table 5, and CIE 15:2018, table 9.
  ['D65, 2 degrees', D65_2, 95.04, 108.88],
  ['D65, 10 degrees', D65_10, 94.81, 107.32],
  ['D50, 2 degrees', D50_2, 96.42, 82.51],
  ['C, 2 degrees', C_2, 98.07, 118.22],
  ['A, 2 degrees', A_2, 109.85, 35.58],
] as [string, Xyz<White>, number, number][])('has the published white of %s to 0.01', (_name, white, x, z) => {
  expect(white.y).toBe(100);
  expect(Math.abs(white.x - x)).toBeLessThan(0.0101);
  expect(Math.abs(white.z - z)).toBeLessThan(0.0101);
});

it('gives a perfect reflector L* 100, a* 0, b* 0 exactly', () => {
  const perfect = reflectanceSpd(new Float64Array(81).fill(1));
  const xyz = xyzFromReflectance<'D65-2'>(perfect, lightById('D65')!, observer2);
  expect(labFromXyz(xyz, D65_2)).toEqual({ l: 100, a: 0, b: 0 });
});

const LINDBLOOM_D65 = { x: 95.047, y: 100, z: 108.883 };
const LINDBLOOM_D50 = { x: 96.422, y: 100, z: 82.521 };

it.each([
  // Calculator at brucelindbloom.com, as quoted by the colorspacious test suite.
  [LINDBLOOM_D65, [10, 20, 30], [51.8372, -56.3591, -13.1812]],
  [LINDBLOOM_D65, [80, 90, 10], [95.9968, -10.6593, 102.8625]],
  [LINDBLOOM_D65, [0.5, 0.6, 0.4], [5.4198, -2.879, 3.623]],
  [LINDBLOOM_D50, [2.61219, 1.52732, 10.96471], [12.7806, 26.1147, -52.4348]],
  [LINDBLOOM_D50, [2.39318, 2.01643, 1.64315], [15.5732, 9.7574, 0.2281]],
  [LINDBLOOM_D50, [0.5, 0.6, 0.4], [5.4198, -3.1711, 1.7953]],
] as [Xyz<White>, number[], number[]][])('agrees with a published calculator: %o %o', (white, [x, y, z], [l, a, b]) => {
  const lab = labFromXyz({ x: x!, y: y!, z: z! }, white);
  expect(Math.abs(lab.l - l!)).toBeLessThan(1e-4);
  // Where the ratio is below (6/29)^3 the calculator rounds 903.3 and 7.787 differently from the fractions of the standard.
  expect(Math.abs(lab.a - a!)).toBeLessThan(2e-3);
  expect(Math.abs(lab.b - b!)).toBeLessThan(2e-3);
});

it('comes back through the inverse', () => {
  const coordinate = fc.double({ min: 0, max: 110, noNaN: true });
  fc.assert(
    fc.property(coordinate, coordinate, coordinate, (x, y, z) => {
      const back = xyzFromLab<'D65-2'>(labFromXyz<'D65-2'>({ x, y, z }, D65_2), D65_2);
      expect(back.x).toBeCloseTo(x, 9);
      expect(back.y).toBeCloseTo(y, 9);
      expect(back.z).toBeCloseTo(z, 9);
    }),
  );
});

it('has the lightness of 18 percent gray (CIE 15: L* 49.496) and hue angles by quadrant', () => {
  expect(yFromLightness(49.4961)).toBeCloseTo(18, 3);
  expect(hueDegOf({ l: 50, a: 0, b: -10 })).toBe(270);
  expect(hueDegOf({ l: 50, a: -3, b: 3 })).toBeCloseTo(135, 12);
  expect(chromaOf({ l: 50, a: -3, b: 4 })).toBe(5);
});

it.each(COLOR_CHECKER)('has the CIELAB of a chart patch from its spectrum: $patch', ({ labD50, reflectance }) => {
  const xyz = xyzFromReflectance<'D50-2'>(reflectanceSpd(reflectance), lightById('D50')!, observer2);
  const lab = labFromXyz(xyz, D50_2);
  expect(Math.abs(lab.l - labD50[0])).toBeLessThan(0.02);
  expect(Math.abs(lab.a - labD50[1])).toBeLessThan(0.02);
  expect(Math.abs(lab.b - labD50[2])).toBeLessThan(0.02);
});
