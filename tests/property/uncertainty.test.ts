import fc from 'fast-check';
import { expect, it } from 'vitest';
import { multiply } from '../../src/engine/color/matrix3';
import type { Lab } from '../../src/engine/color/types';
import { covarianceOf } from '../../src/engine/uncertainty/covariance';
import { errorAxes, labCovariance, rmsDe00 } from '../../src/engine/uncertainty/lab-error';
import { labByXyz, xyzByLab } from '../../src/engine/uncertainty/lab-slopes';
import { mixedCovariance } from '../../src/engine/uncertainty/mixing';

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const color: fc.Arbitrary<Lab<'D65-2'>> = fc.record({ l: number(0, 100), a: number(-90, 90), b: number(-90, 90) });
const uncertainty = number(0, 8);

it('an uncertainty comes back from its covariance, for any color', () => {
  fc.assert(
    fc.property(color, uncertainty, (lab, u) => {
      expect(Math.abs(rmsDe00(lab, labCovariance(lab, u)) - u)).toBeLessThan(1e-9);
      expect(labCovariance(lab, u)).toEqual(covarianceOf(errorAxes(lab, u)).map((value) => expect.closeTo(value, 9)));
    }),
  );
});

it('errors in every direction are possible, and none is endless', () => {
  fc.assert(
    fc.property(color, (lab) => {
      const [ll, , , , aa, ab, , , bb] = labCovariance(lab, 1);
      expect(ll).toBeGreaterThan(0);
      expect(aa * bb - ab * ab).toBeGreaterThan(0);
      // A quarter of SC squared: 11 at a chroma of 127; in the blues, here up to a chroma of 92, the rotation term makes it
      // up to four times 6.5.
      expect(Math.max(ll, aa, bb)).toBeLessThan(36);
    }),
  );
});

it('slopes to tristimulus values and back undo each other', () => {
  fc.assert(
    fc.property(color, (lab) => {
      const identity = multiply(labByXyz(lab), xyzByLab(lab));
      identity.forEach((value, i) => {
        expect(value).toBeCloseTo(i % 4 === 0 ? 1 : 0, 9);
      });
    }),
  );
});

it('mixing readings never makes the light less known than the worst of them, and shared errors never average out', () => {
  const parts = fc.array(fc.record({ weight: number(0.05, 1), u: number(0.1, 3) }), { minLength: 2, maxLength: 4 });
  fc.assert(
    fc.property(color, parts, (lab, given) => {
      const total = given.reduce((sum, { weight }) => sum + weight, 0);
      const erring = (source: (i: number) => string) =>
        given.map(({ weight, u }, i) => ({ lab, weight: weight / total, axes: errorAxes(lab, u), source: source(i) }));
      // Parts of one colour, so that shares are all that counts.
      const shared = rmsDe00(
        lab,
        mixedCovariance(
          lab,
          erring(() => 'one'),
        ),
      );
      const apart = rmsDe00(lab, mixedCovariance(lab, erring(String)));
      const mean = given.reduce((sum, { weight, u }) => sum + (weight / total) * u, 0);
      expect(shared).toBeCloseTo(mean, 9);
      expect(apart).toBeLessThan(shared);
      expect(apart).toBeCloseTo(Math.hypot(...given.map(({ weight, u }) => (weight / total) * u)), 9);
    }),
  );
});
