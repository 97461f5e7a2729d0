import fc from 'fast-check';
import { expect, it } from 'vitest';
import { longestRow, moduleWidths } from '../../src/model/layout/module-widths';

/** European module widths, common practice. */
const STANDARD = [300, 400, 450, 500, 600, 800, 900, 1000, 1200];
const sum = (widths: readonly number[]): number => widths.reduce((a, b) => a + b, 0);

it('fills a run with standard widths exactly', () => {
  fc.assert(
    fc.property(fc.integer({ min: 14, max: 120 }), (steps) => {
      const widths = moduleWidths('eu', steps * 50)!;
      expect(sum(widths)).toBe(steps * 50);
      for (const width of widths) expect(STANDARD).toContain(width);
    }),
  );
});

it('says when no set of modules fits', () => {
  // 350, 550 and 650 are neither widths nor sums of widths of 300 or more in this list.
  for (const length of [50, 250, 350, 550, 650, 620]) expect(moduleWidths('eu', length)).toBeNull();
  expect(moduleWidths('eu', 0)).toEqual([]);
});

it('prefers few and even units', () => {
  expect(moduleWidths('eu', 1800)).toEqual([900, 900]);
  expect(moduleWidths('eu', 1200)).toEqual([600, 600]);
  expect(moduleWidths('eu', 900)).toEqual([900]);
});

it('leaves less than the narrowest unit of a run over', () => {
  fc.assert(
    fc.property(fc.integer({ min: 300, max: 6000 }), (limit) => {
      const rest = limit - sum(longestRow('eu', limit));
      expect(rest).toBeGreaterThanOrEqual(0);
      expect(rest).toBeLessThan(limit < 700 ? 150 : 50);
    }),
  );
  expect(longestRow('eu', 299)).toEqual([]);
});

it('uses widths of 12 to 48 in in steps of 3 in in North America', () => {
  const IN = 25.4;
  fc.assert(
    fc.property(fc.integer({ min: 4, max: 100 }), (steps) => {
      const widths = moduleWidths('us', steps * 3 * IN)!;
      expect(sum(widths)).toBeCloseTo(steps * 3 * IN, 6);
      for (const width of widths) {
        expect(width / (3 * IN)).toBeCloseTo(Math.round(width / (3 * IN)), 9);
        expect(width).toBeGreaterThanOrEqual(12 * IN);
        expect(width).toBeLessThanOrEqual(48 * IN + 1e-9);
      }
    }),
  );
  expect(moduleWidths('us', 600)).toBeNull();
});
