import fc from 'fast-check';
import { expect, it } from 'vitest';
import { cutRect, splitContacts } from '../../src/engine/light/split-contacts';
import type { Rect, Solid, Vec3 } from '../../src/engine/light/types';

const floor: Rect = { origin: [0, 0, 0], u: [4, 0, 0], v: [0, 3, 0], surface: 0 };
const area = (r: Rect): number => Math.hypot(...r.u) * Math.hypot(...r.v);
const total = (rects: readonly Rect[]): number => rects.reduce((sum, r) => sum + area(r), 0);
const split = (rects: readonly Rect[], solids: readonly Solid[]): Rect[] => splitContacts(rects, solids, cutRect);
const box = (min: Vec3, max: Vec3): Solid => ({ min, max });

it('drops the floor under a box and leaves four pieces around it', () => {
  const pieces = split([floor], [box([1, 1, 0], [2, 2, 0.9])]);
  expect(pieces).toHaveLength(4);
  expect(total(pieces)).toBeCloseTo(11, 9);
});

it('keeps an untouched rectangle as the same object, also above a box that ends at its back', () => {
  const top: Rect = { origin: [1, 1, 0.9], u: [1, 0, 0], v: [0, 1, 0], surface: 1 };
  expect(split([top], [box([1, 1, 0], [2, 2, 0.9])])[0]).toBe(top);
});

it('drops the wall behind a box that stands against it, also through a gap of 0.05 mm', () => {
  const wall: Rect = { origin: [0, 0, 0], u: [0, 0, 2.5], v: [4, 0, 0], surface: 0 };
  const pieces = split([wall], [box([1, 5e-5, 0], [2, 0.6, 0.9])]);
  expect(total(pieces)).toBeCloseTo(10 - 0.9, 9);
  expect(pieces.every((p) => p.origin[0] <= 1 - 1e-9 || p.origin[0] >= 2 - 1e-9 || p.origin[2] >= 0.9 - 1e-9)).toBe(
    true,
  );
});

it('cuts a window hole with a thin solid across the wall plane, with reversed edges too', () => {
  const hole = box([-0.001, 0.9, 1], [0.001, 2, 2.1]);
  for (const wall of [
    { origin: [0, 0, 0], u: [0, 3, 0], v: [0, 0, 2.5], surface: 0 },
    { origin: [0, 3, 0], u: [0, 0, 2.5], v: [0, -3, 0], surface: 0 },
  ] satisfies Rect[]) {
    const pieces = split([wall], [hole]);
    expect(pieces).toHaveLength(4);
    expect(total(pieces)).toBeCloseTo(7.5 - 1.21, 9);
  }
});

it('drops a rectangle that is buried whole', () => {
  expect(split([floor], [box([-1, -1, -1], [5, 5, 1])])).toHaveLength(0);
});

it('keeps area: pieces are disjoint and free cells equal a point count, for random boxes', () => {
  const range = fc.tuple(fc.integer({ min: 0, max: 40 }), fc.integer({ min: 1, max: 20 }));
  fc.assert(
    fc.property(fc.array(fc.tuple(range, range), { maxLength: 5 }), (ranges) => {
      const solids = ranges.map(([[x, w], [y, d]]) => box([x / 10, y / 10, 0], [(x + w) / 10, (y + d) / 10, 0.5]));
      const pieces = split([floor], solids);
      let free = 0;
      for (let i = 0; i < 40; i++) {
        for (let j = 0; j < 30; j++) {
          const x = (i + 0.5) / 10;
          const y = (j + 0.5) / 10;
          const buried = solids.some((s) => x > s.min[0] && x < s.max[0] && y > s.min[1] && y < s.max[1]);
          const holders = pieces.filter(
            (p) => x > p.origin[0] && x < p.origin[0] + p.u[0] && y > p.origin[1] && y < p.origin[1] + p.v[1],
          ).length;
          expect(holders).toBe(buried ? 0 : 1);
          free += holders;
        }
      }
      expect(total(pieces)).toBeCloseTo(free / 100, 6);
    }),
    { numRuns: 40 },
  );
});
