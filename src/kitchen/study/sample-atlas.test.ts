import { expect, it } from 'vitest';
import { sampleAtlas } from './sample-atlas';

// Two blocks in a 4-wide atlas: 3 x 2 samples at (1, 0), one sample at (0, 0).
const layout = { width: 4, height: 2, blocks: Int32Array.from([1, 0, 3, 2, 0, 0, 1, 1]) };
const values = [9, 0, 1, 2, 0, 10, 11, 12];
const read = (texel: number) => values[texel]!;

it.each([
  [0, 0, 0],
  [1, 0, 2],
  [0.25, 0, 0.5],
  [0, 0.5, 5],
  [1, 1, 12],
  [0.75, 0.5, 6.5],
])('reads (%f, %f) as %f', (u, v, expected) => expect(sampleAtlas(layout, 0, u, v, read)).toBeCloseTo(expected, 12));

it('is constant where there is one sample', () => {
  for (const [u, v] of [
    [0, 0],
    [1, 1],
    [0.3, 0.7],
  ] as const)
    expect(sampleAtlas(layout, 1, u, v, read)).toBe(9);
});
