import fc from 'fast-check';
import { expect, it } from 'vitest';
import { directionThrough, lensTowards } from './lens';
import type { Vec3 } from './types';

const coordinate = fc.double({ min: -5, max: 5, noNaN: true });
const point = fc.tuple(coordinate, coordinate, coordinate) as fc.Arbitrary<Vec3>;
const cosine = (a: Vec3, b: Vec3) => (a[0] * b[0] + a[1] * b[1] + a[2] * b[2]) / (Math.hypot(...a) * Math.hypot(...b));

it('has the target in the middle of the picture', () => {
  fc.assert(
    fc.property(point, point, (eye, target) => {
      const towards: Vec3 = [target[0] - eye[0], target[1] - eye[1], target[2] - eye[2]];
      fc.pre(Math.hypot(towards[0], towards[1]) > 1e-3);
      expect(cosine(directionThrough(lensTowards(eye, target), 0, 0), towards)).toBeCloseTo(1, 9);
    }),
  );
});

it('keeps upright lines upright for a usual tilt: points above each other have the same x in the picture', () => {
  const lens = lensTowards([0, 0, 1.6], [0.5, 3, 0.9]);
  const column = (p: Vec3): number => {
    const d: Vec3 = [p[0], p[1], p[2] - 1.6];
    const depth = d[0] * lens.forward[0] + d[1] * lens.forward[1] + d[2] * lens.forward[2];
    return (d[0] * lens.right[0] + d[1] * lens.right[1] + d[2] * lens.right[2]) / depth;
  };
  expect(column([1, 2, 0])).toBeCloseTo(column([1, 2, 2.4]), 12);
});

it('stays a right-handed frame of unit vectors, also straight down', () => {
  for (const target of [
    [0, 0, -1],
    [1, 1, -3],
    [2, 0, 0.5],
  ] as const) {
    const { forward, right, up } = lensTowards([0, 0, 1], target);
    expect(cosine(forward, right)).toBeCloseTo(0, 12);
    expect(cosine(forward, up)).toBeCloseTo(0, 12);
    expect(right[0] * up[1] - right[1] * up[0]).toBeCloseTo(-forward[2], 12);
    expect(Math.hypot(...forward)).toBeCloseTo(1, 12);
  }
});
