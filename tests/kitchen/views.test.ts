import { expect, it } from 'vitest';
import { SURFACES, type SurfaceId } from '../../src/engine/surface';
import { buildRoom } from '../../src/kitchen/build-room';
import type { Room } from '../../src/kitchen/types';
import type { Kitchen } from '../../src/model/kitchen';
import { kitchenMisfits } from '../../src/model/kitchen-misfits';
import { kitchenFor, usualRoom } from '../../src/model/new-kitchen';
import { pictureShares } from './geometry';
import { LAYOUTS } from './layouts';

const fresh = (['eu', 'us'] as const).flatMap((region) =>
  (['one-wall', 'galley', 'l', 'u', 'l-island', 'peninsula'] as const).map((layout): [string, Kitchen] => [
    `new ${layout}, ${region}`,
    kitchenFor(layout, region, usualRoom(layout, region))!,
  ]),
);

/** Share of a view (0-1) that some surfaces take. */
function sharesOf(room: Room, id: string): (...surfaces: SurfaceId[]) => number {
  const view = room.viewpoints.find((one) => one.id === id)!;
  const shares = pictureShares(room.light.fine, view, 1.5, 36);
  expect(shares.get(-2) ?? 0, `${id} looks out of the room`).toBe(0);
  return (...surfaces) => surfaces.reduce((sum, s) => sum + (shares.get(SURFACES.indexOf(s)) ?? 0), 0);
}

const FRONTS = ['base-fronts', 'wall-fronts', 'tall-fronts', 'island-fronts'] as const;
const COUNTERS = ['counter', 'island-counter'] as const;

it.each([...Object.entries(LAYOUTS), ...fresh])('sees in "%s" what the names of its views say', (_, kitchen) => {
  const room = buildRoom(kitchen);
  const ids = room.viewpoints.map(({ id }) => id);
  expect(ids.slice(0, 5)).toEqual(['doorway', 'at-counter', 'looking-down', 'seated', 'corner']);
  expect(room.viewpoints.filter(({ overview }) => overview).map(({ id }) => id)).toEqual(['doorway', 'seated']);
  for (const id of ['doorway', 'seated']) {
    const share = sharesOf(room, id);
    expect(share('floor'), id).toBeGreaterThan(0.08);
    expect(share(...FRONTS), id).toBeGreaterThan(0.12);
    expect(share('wall'), id).toBeLessThan(0.4);
  }
  expect(sharesOf(room, 'at-counter')(...COUNTERS)).toBeGreaterThan(0.07);
  expect(sharesOf(room, 'looking-down')(...COUNTERS)).toBeGreaterThan(0.1);
  const close = sharesOf(room, 'corner');
  expect(close('counter')).toBeGreaterThan(0.25);
  expect(close('floor')).toBeLessThan(0.05);
  for (const { id, eye } of room.viewpoints) {
    // Seated or standing eyes (1.2 m and 1.6 m, 1.75 m leaning over; common practice, no source).
    expect(eye[2], id).toBeGreaterThanOrEqual(1.2);
    expect(eye[2], id).toBeLessThanOrEqual(1.75);
  }
});

it('stands at the sink where the other views from the counter do not see it, and in the next room where there is one', () => {
  const u = LAYOUTS['U']!;
  // The left counter is the longer one: one looks into the left corner, away from a sink on the right.
  const atRight = { ...u, sink: { ...u.sink, run: 'right' as const, center: 2800 }, dishwasher: 'none' as const };
  expect(kitchenMisfits(atRight)).toEqual([]);
  const ids = (kitchen: Kitchen): string[] => buildRoom(kitchen).viewpoints.map(({ id }) => id);
  expect(ids(u)).not.toContain('at-sink');
  expect(ids(atRight)).toContain('at-sink');
  expect(sharesOf(buildRoom(atRight), 'at-sink')('sink')).toBeGreaterThan(0.03);

  const open = buildRoom(LAYOUTS['U with island, open side']!);
  const next = sharesOf(open, 'next-room');
  expect(next(...FRONTS)).toBeGreaterThan(0.15);
  expect(next(...COUNTERS)).toBeGreaterThan(0.03);
  const { eye } = open.viewpoints.find(({ id }) => id === 'next-room')!;
  expect(eye[1]).toBeLessThan(-0.12);
  expect(eye[1]).toBeGreaterThan(open.eyeLimits.min[1]);
});
