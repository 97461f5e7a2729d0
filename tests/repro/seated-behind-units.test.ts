import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { SURFACES } from '../../src/engine/surface';
import { buildRoom } from '../../src/kitchen/build-room';
import type { Kitchen } from '../../src/model/kitchen';
import { pictureShares } from '../kitchen/geometry';

// Seated at a table one sat in the farthest corner of the room, close behind the side of a tall unit (U) or under a shelf (galley).
it.each(['galley', 'u'])('sits where no unit fills the picture of the %s', (name) => {
  const kitchen: Kitchen = JSON.parse(readFileSync(`scenes/${name}.json`, 'utf8'));
  const room = buildRoom(kitchen);
  const shares = pictureShares(room.light.fine, room.viewpoints.find(({ id }) => id === 'seated')!, 1.6, 36);
  const share = (surface: (typeof SURFACES)[number]): number => shares.get(SURFACES.indexOf(surface)) ?? 0;
  expect(share('tall-fronts')).toBeLessThan(0.2);
  expect(share('counter')).toBeLessThan(0.2);
  expect(share('floor')).toBeGreaterThan(0.15);
});
