import { expect, it } from 'vitest';
import { buildNodes } from '../../src/engine/light/nodes';
import { buildTransport } from '../../src/engine/light/transport';
import type { Rect } from '../../src/engine/light/types';
import { boxRects, ceilingLamp, roomOf, withPattern } from '../physics/box-room';

// A strip of wall between an upstand and the height of a window sill had nodes three times as far apart as the wall above it, and
// stood out as a band.
it('takes light on a strip cut from a wall as often as on the rest of it', () => {
  const [a, b, h] = [3, 3, 2.5];
  const walls = boxRects(a, b, h);
  const back = walls.pop()!;
  const part = (z0: number, z1: number): Rect => ({ ...back, origin: [0, b, z0], v: [0, 0, z1 - z0] });
  const room = roomOf([...walls, back], { lamps: [ceilingLamp(1.5, 1.5, h, 0.2, 1000)] });
  const trim: Rect = { origin: [0, 0, 1.2], u: [0, 0.02, 0], v: [a, 0, 0], surface: 0 };
  const fine = [...walls, part(0, 1), part(1, 1.018), part(1.018, h), trim].map(withPattern);
  const { atlas } = buildNodes({ ...room, fine }, buildTransport({ ...room, fine }), { rays: 8 });
  const along = (rect: number): number => Math.max(atlas.blocks[4 * rect + 2]!, atlas.blocks[4 * rect + 3]!);
  expect(along(6)).toBe(along(5));
  expect(along(6)).toBeGreaterThanOrEqual(a / 0.2);
  // A ledge by itself is seen as one.
  expect(along(8)).toBeLessThan(along(6) / 2);
});
