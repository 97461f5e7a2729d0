import { expect, it } from 'vitest';
import type { Rect, Vec3 } from '../../src/engine/light/types';
import { buildRoom } from '../../src/kitchen/build-room';
import { normalOf } from '../../src/kitchen/study/mirrored-room-of';
import { demo, variants } from './detail-kitchens';

const spanOf = ({ origin, u, v }: Rect, axis: 0 | 1 | 2): readonly [number, number] => {
  const ends = [origin[axis], origin[axis] + u[axis] + v[axis]];
  return [Math.min(...ends), Math.max(...ends)];
};

it('covers every pane behind a roller blind, let down, and stands before it', () => {
  let cloths = 0;
  for (const kitchen of Object.values(variants).filter(({ openings }) =>
    openings.some(({ blind }) => blind === 'roller'),
  )) {
    const { blinds = [], windows, fine } = buildRoom(kitchen).light;
    for (const { rect, rolled_m, pane } of blinds) {
      cloths++;
      const normal: Vec3 = normalOf(rect);
      expect(normal).toEqual(normalOf(pane.rect));
      const across = Math.abs(normal[0]) > 0.5 ? 0 : 1;
      const along = across === 0 ? 1 : 0;
      const behind = windows.filter(
        (one) =>
          one.roller &&
          normalOf(one.rect).join() === normal.join() &&
          isWithin(spanOf(one.rect, along), spanOf(rect, along)),
      );
      expect(behind.length).toBeGreaterThan(0);
      const [low, high] = spanOf(rect, 2);
      for (const { rect: glass } of behind) {
        expect(spanOf(glass, 2)[0]).toBeGreaterThan(low);
        const before = (rect.origin[across] - glass.origin[across]) * normal[across];
        expect(before).toBeGreaterThan(0.05);
      }
      expect(rolled_m).toBeLessThan(high - low);
      // Nothing that hangs there rolled up sticks through it.
      const through = fine.filter((face) => {
        const [back, front] = spanOf(face, across);
        const crosses = back < rect.origin[across] - 1e-9 && front > rect.origin[across] + 1e-9;
        return crosses && overlaps(spanOf(face, along), spanOf(rect, along)) && overlaps(spanOf(face, 2), [low, high]);
      });
      expect(through).toEqual([]);
    }
  }
  expect(cloths).toBeGreaterThan(1);
  expect(buildRoom({ ...demo, openings: [] }).light.blinds).toEqual([]);
});

const isWithin = ([a, b]: readonly [number, number], [from, to]: readonly [number, number]): boolean =>
  a > from - 1e-9 && b < to + 1e-9;

const overlaps = ([a, b]: readonly [number, number], [from, to]: readonly [number, number]): boolean =>
  a < to - 1e-6 && b > from + 1e-6;
