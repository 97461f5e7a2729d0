import fc from 'fast-check';
import { expect, it } from 'vitest';
import { type AdaptedTo, mixedWhite, twoStepMatrix } from '../../src/engine/appearance/mixed-adaptation';
import { adaptationMatrix } from '../../src/engine/color/adapt';
import { chromaticityFromXyz } from '../../src/engine/color/chromaticity';
import { apply, multiply } from '../../src/engine/color/matrix3';
import type { White, Xyz } from '../../src/engine/color/types';
import { A_2, C_2, D50_2, D65_2 } from '../../src/engine/color/whites';

type Triple = [number, number, number];
const xyz = ([x, y, z]: Triple): Xyz<White> => ({ x, y, z });
const whites: Xyz<White>[] = [A_2, C_2, D50_2, D65_2];

// Two-step CAT16 of Zhai and Luo 2018: values in the tests of colour-science.
it.each<[Triple, Triple, number, Triple, number, Triple, Triple]>([
  [
    [48.9, 43.62, 6.25],
    [109.85, 100, 35.585],
    0.9407,
    [95.047, 100, 108.883],
    0.98,
    [100, 100, 100],
    [40.37398343, 43.69426311, 20.51733764],
  ],
  [
    [52.034, 58.824, 23.703],
    [92.288, 100, 38.775],
    0.6709,
    [105.432, 100, 137.392],
    0.5331,
    [97.079, 100, 141.798],
    [56.77130011, 58.81317888, 64.66922808],
  ],
])('adapts %j by two steps as published', (color, from, fromDegree, to, toDegree, baseline, published) => {
  const matrix = twoStepMatrix(
    { white: xyz(from), degree: fromDegree },
    { white: xyz(to), degree: toDegree },
    xyz(baseline),
  );
  apply(matrix, color).forEach((value, i) => {
    // Printed with eight decimals.
    expect(Math.abs(value - published[i]!)).toBeLessThan(1e-7);
  });
});

const states: fc.Arbitrary<AdaptedTo> = fc.record({
  white: fc.constantFrom(...whites),
  degree: fc.double({ min: 0, max: 1, noNaN: true }),
});

it('leads back by the inverse, and nowhere else through a third state', () => {
  fc.assert(
    fc.property(states, states, states, (a, b, c) => {
      const back = multiply(twoStepMatrix(b, a), twoStepMatrix(a, b));
      back.forEach((value, i) => {
        expect(value).toBeCloseTo(i % 4 === 0 ? 1 : 0, 10);
      });
      const through = multiply(twoStepMatrix(b, c), twoStepMatrix(a, b));
      twoStepMatrix(a, c).forEach((value, i) => {
        expect(through[i]).toBeCloseTo(value, 10);
      });
    }),
  );
});

it('is the one step of CAT16 when both eyes are fully adapted, whatever the baseline', () => {
  for (const from of whites) {
    for (const to of whites) {
      const oneStep = adaptationMatrix(from, to);
      const dim = { x: from.x / 3, y: from.y / 3, z: from.z / 3 };
      twoStepMatrix({ white: dim, degree: 1 }, { white: to, degree: 1 }, C_2).forEach((value, i) => {
        expect(value).toBeCloseTo(oneStep[i]!, 12);
      });
    }
  }
});

it('is the one step at any degree when the other eye is fully adapted to the baseline', () => {
  const oneStep = adaptationMatrix(A_2, D65_2, 0.7);
  twoStepMatrix({ white: A_2, degree: 0.7 }, { white: D65_2, degree: 1 }, D65_2).forEach((value, i) => {
    expect(value).toBeCloseTo(oneStep[i]!, 12);
  });
});

it('adopts the white itself when one light has all the weight', () => {
  for (const white of whites) {
    const mixed = mixedWhite([
      { white, white_cd_m2: 80, weight: 2 },
      { white: D65_2, white_cd_m2: 500, weight: 0 },
    ]);
    expect(mixed.x).toBeCloseTo((100 * white.x) / white.y, 10);
    expect(mixed.y).toBe(100);
    expect(mixed.z).toBeCloseTo((100 * white.z) / white.y, 10);
  }
});

it('adopts a white between two lights, nearer the one that is brighter or more looked at', () => {
  const at = (lampWeight: number, lamp_cd_m2: number) =>
    chromaticityFromXyz(
      mixedWhite<White>([
        { white: A_2, white_cd_m2: lamp_cd_m2, weight: lampWeight },
        { white: D65_2, white_cd_m2: 100, weight: 1 - lampWeight },
      ]),
    ).x;
  const [day, lamp] = [chromaticityFromXyz(D65_2).x, chromaticityFromXyz(A_2).x];
  // Equal luminances: the cube root drops out and the whites mix by weight alone, Y = 100 for both.
  const even = { x: (A_2.x + D65_2.x) / 2, y: 100, z: (A_2.z + D65_2.z) / 2 };
  expect(at(0.5, 100)).toBeCloseTo(chromaticityFromXyz(even).x, 12);
  expect(at(0.4, 100)).toBeGreaterThan(day);
  expect(at(0.6, 100)).toBeGreaterThan(at(0.4, 100));
  expect(at(0.6, 800)).toBeGreaterThan(at(0.6, 100));
  expect(at(0.6, 800)).toBeLessThan(lamp);
  // Eight times the luminance counts twice.
  expect(at(0.5, 800)).toBeCloseTo(at(2 / 3, 100), 12);
});

it('asks for a light that counts', () => {
  expect(() => mixedWhite([{ white: A_2, white_cd_m2: 100, weight: 0 }])).toThrow(RangeError);
  expect(() => mixedWhite([])).toThrow(RangeError);
});
