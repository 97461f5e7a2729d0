import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { SURFACES } from '../../src/engine/surface';
import { buildRoom } from '../../src/kitchen/build-room';
import { pieceShifts, placeOnPattern } from '../../src/kitchen/study/lay-pattern';
import type { Kitchen } from '../../src/model/kitchen';

// A seam ran down the middle of a waterfall end, its veins mirrored like an ink blot: the pattern of its narrow edges was unfolded far
// to both sides, and the strip was taken to be nearly three times as wide as it is.
const kitchen: Kitchen = JSON.parse(readFileSync('scenes/peninsula.json', 'utf8'));

it('cuts a waterfall end from one slab, without a seam', () => {
  const { light } = buildRoom(kitchen);
  const surface = SURFACES.indexOf('island-counter');
  // Usual size of an engineered slab, trade guidance.
  const [length, width] = [3.05, 1.4];
  const shifts = pieceShifts(
    light,
    'island-counter',
    {
      pattern: { kind: 'veined', spacing_mm: 260, direction_deg: 28 },
      layout: 'plain',
      variation: 'V1',
      shares: [0.8, 0.2],
      seed: 1,
      slab: { size_mm: [1000 * length, 1000 * width], match: 'bookmatch' },
    },
    { layout: 'plain' },
  )!;
  const ends = light.fine.filter(
    (rect) => rect.surface === surface && Math.abs(rect.u[2]) + Math.abs(rect.v[2]) > 0.5 && rect.origin[2] < 0.5,
  );
  expect(ends.length).toBeGreaterThan(2);
  for (const rect of ends) {
    for (const [u, v] of [
      [0, 0],
      [1, 1],
    ] as const) {
      const [s, t] = placeOnPattern(rect, u, v, shifts);
      expect(s).toBeGreaterThan(0);
      expect(s).toBeLessThan(length);
      expect(t).toBeGreaterThan(0);
      expect(t).toBeLessThan(width);
    }
  }
});
