import fc from 'fast-check';
import { expect, it } from 'vitest';
import { blockersOf } from '../../src/engine/light/blockers';
import { buildRectBvh } from '../../src/engine/light/rect-bvh';
import { isBlocked } from '../../src/engine/light/rect-trace';
import { reverseBits, sobolSecond, unitInterval } from '../../src/engine/light/sobol';
import type { Rect } from '../../src/engine/light/types';
import { boxRects } from './box-room';

it('the sequence is a (0, 2)-net: 64 points, one in each cell of every grid of 64 equal cells, bits flipped or not', () => {
  fc.assert(
    fc.property(fc.nat(), fc.nat(), fc.integer({ min: 0, max: 6 }), (flipU, flipV, split) => {
      const across = 2 ** split;
      const up = 64 / across;
      const cells = new Set<number>();
      for (let i = 0; i < 64; i++) {
        const u = unitInterval(reverseBits(i) ^ flipU);
        const v = unitInterval(sobolSecond(i) ^ flipV);
        cells.add(Math.floor(v * up) * across + Math.floor(u * across));
      }
      expect(cells.size).toBe(64);
    }),
  );
});

it('the outer shell never casts a shadow inside, and what stands in the room is kept', () => {
  const shelf: Rect = { origin: [1, 1, 1], u: [1, 0, 0], v: [0, 1, 0], surface: 6 };
  const rects = [...boxRects(3, 3, 2.5), shelf];
  const kept = blockersOf(rects, []);
  expect(kept).toEqual([shelf]);
  const all = buildRectBvh(rects);
  const few = buildRectBvh(kept);
  const inside = (high: number) => fc.integer({ min: 1, max: 999 }).map((x) => (x * high) / 1000);
  const point = fc.tuple(inside(3), inside(3), inside(2.5));
  fc.assert(
    fc.property(point, point, (a, b) => {
      const d = [b[0] - a[0], b[1] - a[1], b[2] - a[2]] as const;
      expect(isBlocked(few, ...a, ...d, 1)).toBe(isBlocked(all, ...a, ...d, 1));
    }),
    { numRuns: 500 },
  );
});
