import { describe, expect, it } from 'vitest';
import { normalTriples, standardNormals } from '../../src/engine/uncertainty/draws';
import { normalQuantile } from '../../src/engine/uncertainty/normal-quantile';

describe('the normal quantile', () => {
  it.each([
    // Check values printed with algorithm AS 241 (Wichura 1988, Applied Statistics 37, 477), from memory.
    [0.25, -0.67448975],
    [0.001, -3.09023231],
    [1e-20, -9.26234009],
    // Usual two-sided limits of 95 and 99 percent.
    [0.975, 1.95996398],
    [0.995, 2.5758293],
  ])('of %f is %f', (probability, value) => {
    // The variant of seven digits.
    expect(normalQuantile(probability) / value).toBeCloseTo(1, 6);
    if (probability > 1e-9) expect(normalQuantile(1 - probability) / -value).toBeCloseTo(1, 6);
  });
});

describe.each([
  [3, 6],
  [3, 200],
  [12, 200],
  [60, 200],
])('%i numbers in %i rows', (dimensions, count) => {
  const rows = standardNormals(dimensions, count, 7);
  const columns = Array.from({ length: dimensions }, (_, d) =>
    Float64Array.from({ length: count }, (_, i) => rows[i * dimensions + d]!),
  );

  it('have mean 0, variance 1 and no correlation, to rounding', () => {
    let worst = 0;
    columns.forEach((one, d) => {
      worst = Math.max(worst, Math.abs(one.reduce((sum, x) => sum + x, 0) / count));
      columns.slice(0, d + 1).forEach((other, e) => {
        const product = one.reduce((sum, x, i) => sum + x * other[i]!, 0) / count;
        worst = Math.max(worst, Math.abs(product - (d === e ? 1 : 0)));
      });
    });
    expect(worst).toBeLessThan(1e-10);
  });

  it('are the same for the same seed and others for another', () => {
    expect(standardNormals(dimensions, count, 7)).toEqual(rows);
    expect(standardNormals(dimensions, count, 8)).not.toEqual(rows);
  });
});

it('spreads like normal numbers: 68.27, 95.45 and 99.73 percent within one, two and three deviations', () => {
  const triples = normalTriples(2000, 3);
  for (const [limit, share] of [
    [1, 0.6827],
    [2, 0.9545],
    [3, 0.9973],
  ] as const) {
    const within = triples.filter((x) => Math.abs(x) < limit).length / triples.length;
    // Strata hold each share to one of 1000 pairs per column; taking the correlations out moves a few more over the limit.
    expect(Math.abs(within - share)).toBeLessThan(0.006);
  }
});

it('refuses fewer rows than it takes to tell the numbers apart', () => {
  expect(() => standardNormals(3, 4, 1)).toThrow(RangeError);
  expect(() => standardNormals(3, 7, 1)).toThrow(RangeError);
});
