import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { SURFACES } from '../../src/engine/surface';
import { buildRoom } from '../../src/kitchen/build-room';
import { nextRoomOf } from '../../src/kitchen/parts/next-room';
import { planKitchen } from '../../src/kitchen/plan/plan-kitchen';
import type { Kitchen } from '../../src/model/kitchen';
import { pictureShares } from '../kitchen/geometry';

const kitchen: Kitchen = JSON.parse(readFileSync('scenes/peninsula.json', 'utf8'));
const room = buildRoom(kitchen);

// From the next room a third of the picture was the dark back of the wall beside the passage.
it('looks through the passage from the next room, not at the wall beside it', () => {
  const view = room.viewpoints.find(({ id }) => id === 'next-room')!;
  const nextWall = room.light.fine.map((rect) =>
    rect.surface === SURFACES.indexOf('wall') && rect.origin[0] >= room.size[0] - 1e-6
      ? { ...rect, surface: 99 }
      : rect,
  );
  expect(pictureShares(nextWall, view, 1.6, 36).get(99) ?? 0).toBeLessThan(0.25);
});

// The next room had no skirting, though its walls are finished like those of this one.
it('runs the skirting on into the next room and along the jambs', () => {
  const next = nextRoomOf(planKitchen(kitchen))!;
  const [far, near] = next.room.d;
  const trim = room.light.fine.filter(
    ({ surface, origin }) => surface === SURFACES.indexOf('frame') && origin[0] > room.size[0] + 1e-6,
  );
  const length = (axis: 0 | 1): number =>
    trim
      .filter(({ u, v }) => Math.abs(u[2]) + Math.abs(v[2]) > 0.05)
      .reduce((sum, { u, v }) => sum + Math.max(Math.abs(u[axis]), Math.abs(v[axis])), 0);
  // Two long walls and the wall across the way and beside the passage (from the record), each face once, ends of trim apart.
  const beside = kitchen.room.depth - (kitchen.open_side!.to - kitchen.open_side!.from);
  expect(length(1)).toBeGreaterThan((kitchen.room.depth + beside) / 1000 - 0.1);
  expect(length(0)).toBeGreaterThan(2 * (near - far) - 0.1);
});
