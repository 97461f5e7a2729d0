import { describe, expect, it } from 'vitest';
import { differenceCiede2000 } from '../../src/engine/color/difference';
import type { Lab } from '../../src/engine/color/types';
import { drawLab, errorAxes } from '../../src/engine/uncertainty/lab-error';
import { COLORS, erring, plainNormals, rms } from './uncertainty-brute-force';

const DRAWS = 10_000;

function drawnRms(lab: Lab<'D65-2'>, u: number): number {
  const normal = plainNormals(41);
  return rms(
    Array.from({ length: DRAWS }, () => differenceCiede2000(lab, drawLab(lab, u, [normal(), normal(), normal()]))),
  );
}

describe.each(Object.entries({ ...COLORS, neutral: { l: 50, a: 0, b: 0 }, black: { l: 15, a: 0, b: 0 } }))(
  'drawn errors of a %s',
  (_, lab) => {
    // 10 000 draws leave 0.4 % of sampling error; at u = 1 a neutral, whose chroma can only grow, loses 1 % more.
    it.each([0.25, 1])('have the root mean square difference asked for: %f', (u) => {
      expect(drawnRms(lab, u) / u).toBeGreaterThan(0.98);
      expect(drawnRms(lab, u) / u).toBeLessThan(1.02);
    });
  },
);

it('departs for large errors as CIEDE2000 bends: a little less at the ends of lightness, more in a strong blue', () => {
  // At u = 5 a white loses what L* 100 cuts off, a neutral what a larger chroma weighs less; along the blues of the rotation
  // term hue errors weigh more than at the colour itself. Observed, as a record of how far the small-error rule may be taken.
  expect(drawnRms(COLORS['near-neutral white'], 5) / 5).toBeCloseTo(0.95, 1.5);
  expect(drawnRms({ l: 50, a: 0, b: 0 }, 5) / 5).toBeCloseTo(0.94, 1.5);
  expect(drawnRms(COLORS.wood, 5) / 5).toBeCloseTo(1.01, 1.5);
  expect(drawnRms({ l: 35, a: 5, b: -50 }, 5) / 5).toBeCloseTo(1.15, 1.5);
});

it('has no jump at the neutral axis: a hair to any side, the same errors', () => {
  const at = errorAxes({ l: 90, a: 0, b: 0 }, 1);
  for (let deg = 0; deg < 360; deg += 15) {
    const hair = 1e-6;
    const a = hair * Math.cos((deg * Math.PI) / 180);
    const beside = errorAxes({ l: 90, a, b: hair * Math.sin((deg * Math.PI) / 180) }, 1);
    // Chroma and hue weights change by 0.045 per unit of chroma at most.
    expect(Math.max(...beside.map((value, i) => Math.abs(value - at[i]!)))).toBeLessThan(1e-7);
  }
});

it('keeps lightness inside 0-100', () => {
  expect(drawLab({ l: 98, a: 0, b: 1 }, 5, [3, 0, 0]).l).toBe(100);
  expect(drawLab({ l: 2, a: 0, b: 1 }, 5, [-3, 0, 0]).l).toBe(0);
  expect(drawLab({ l: 50, a: 2, b: 8 }, 1, [0.4, -1, 2])).toEqual(erring({ l: 50, a: 2, b: 8 }, 1, [0.4, -1, 2]));
});
