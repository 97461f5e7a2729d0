import fc from 'fast-check';
import { expect, it } from 'vitest';
import {
  adaptationMatrix,
  adaptXyz,
  bradfordCToD65,
  bradfordD65ToC,
  bradfordMatrix,
} from '../../src/engine/color/adapt';
import { apply, inverse, multiply } from '../../src/engine/color/matrix3';
import type { Matrix3, White, Xyz } from '../../src/engine/color/types';
import { A_2, C_2, D50_2, D65_2 } from '../../src/engine/color/whites';

const D65 = { x: 95.047, y: 100, z: 108.883 };
const D50 = { x: 96.422, y: 100, z: 82.521 };
const A = { x: 109.85, y: 100, z: 35.585 };

// Complete adaptation computed with colour-science 0.4.6; the Bradford D65 to D50 matrix is also the one printed at
// brucelindbloom.com.
it.each([
  [
    'CAT16 D65 to D50',
    adaptationMatrix(D65, D50),
    [1.0108226, 0.0405991, -0.034106, 0.0054139, 0.9935956, 0.001156, 0.0002508, -0.0114802, 0.7682115],
    [20.55744, 20.99113, 11.28711],
  ],
  [
    'CAT16 D65 to A',
    adaptationMatrix(D65, A),
    [1.0569984, 0.2004882, -0.097934, 0.0262811, 0.9733385, 0.0015448, 0.0001799, -0.0312849, 0.3553942],
    [23.88121, 20.9889, 4.67753],
  ],
  [
    'Bradford D65 to D50',
    bradfordMatrix(D65, D50),
    [1.0478112, 0.0228866, -0.050127, 0.0295424, 0.9904844, -0.0170491, -0.0092345, 0.0150436, 0.7521316],
    [20.68494, 21.13528, 11.4132],
  ],
  [
    'Bradford D65 to A',
    bradfordMatrix(D65, A),
    [1.2164557, 0.1109905, -0.1549325, 0.1533326, 0.9152313, -0.0559953, -0.0239469, 0.0358984, 0.3147529],
    [24.33593, 21.44658, 4.99622],
  ],
] as [string, Matrix3, number[], number[]][])('%s', (_name, matrix, published, adapted) => {
  // Bradford inverse matrices are printed with seven decimals, so the last digit may differ.
  matrix.forEach((value, i) => {
    expect(Math.abs(value - published[i]!)).toBeLessThan(2e-6);
  });
  apply(matrix, [20, 21, 15]).forEach((value, i) => {
    expect(Math.abs(value - adapted[i]!)).toBeLessThan(5e-5);
  });
});

it('turns one white into the other at full adaptation and leaves colours alone at none', () => {
  const whites: Xyz<White>[] = [D65_2, D50_2, C_2, A_2];
  const coordinate = fc.double({ min: 0, max: 100, noNaN: true });
  fc.assert(
    fc.property(
      fc.constantFrom(...whites),
      fc.constantFrom(...whites),
      coordinate,
      coordinate,
      coordinate,
      (from, to, x, y, z) => {
        const white = adaptXyz(from, from, to);
        expect(white.x).toBeCloseTo(to.x, 9);
        expect(white.y).toBeCloseTo(to.y, 9);
        expect(white.z).toBeCloseTo(to.z, 9);
        const same = adaptXyz<White>({ x, y, z }, from, to, 0);
        expect(same.x).toBeCloseTo(x, 9);
        expect(same.z).toBeCloseTo(z, 9);
      },
    ),
  );
});

it('does not care in which unit the whites are given', () => {
  const dim = { x: D50_2.x / 7, y: D50_2.y / 7, z: D50_2.z / 7 };
  const once = adaptXyz<'D65-2'>({ x: 30, y: 40, z: 20 }, D50_2, D65_2, 0.7);
  const again = adaptXyz<'D65-2'>({ x: 30, y: 40, z: 20 }, dim, D65_2, 0.7);
  expect(again.x).toBeCloseTo(once.x, 10);
  expect(again.y).toBeCloseTo(once.y, 10);
});

it('goes to illuminant C and back', () => {
  const white = bradfordD65ToC(D65_2);
  expect(
    [white.x, white.y, white.z].map((value, i) => value - [C_2.x, C_2.y, C_2.z][i]!).every((d) => Math.abs(d) < 1e-9),
  ).toBe(true);
  const back = bradfordCToD65(bradfordD65ToC({ x: 20, y: 30, z: 40 }));
  expect(back.x).toBeCloseTo(20, 10);
  expect(back.y).toBeCloseTo(30, 10);
  expect(back.z).toBeCloseTo(40, 10);
});

it('inverts matrices', () => {
  const m: Matrix3 = [2, -1, 0, -1, 2, -1, 0, -1, 2];
  // The inverse of this second-difference matrix is known in closed form.
  const known = [0.75, 0.5, 0.25, 0.5, 1, 0.5, 0.25, 0.5, 0.75];
  inverse(m).forEach((value, i) => {
    expect(value).toBeCloseTo(known[i]!, 12);
  });
  multiply(m, inverse(m)).forEach((value, i) => {
    expect(value).toBeCloseTo(i % 4 === 0 ? 1 : 0, 12);
  });
  expect(() => inverse([1, 2, 3, 2, 4, 6, 0, 0, 1])).toThrow(RangeError);
});
