import { describe, expect, it } from 'vitest';
import { buildRectBvh } from '../../src/engine/light/rect-bvh';
import type { SurfaceId } from '../../src/engine/surface';
import { buildRoom } from '../../src/kitchen/build-room';
import { presentSurfaces } from '../../src/kitchen/present-surfaces';
import { type Meetings, meetingsOf } from '../../src/kitchen/study/meetings';
import type { Room } from '../../src/kitchen/types';
import { LAYOUTS } from './layouts';

/** All viewpoints looked from coarsely; by overviews' own shares it is the same, only finer. */
const looked = (room: Room): Meetings =>
  meetingsOf({ room, transport: { fineBvh: buildRectBvh(room.light.fine) }, overviews: [], shares: [] });

const kitchens = Object.entries(LAYOUTS).map(([name, kitchen]) => {
  const room = buildRoom(kitchen);
  return { name, room, present: presentSurfaces(room), meetings: looked(room) };
});
const between = (meetings: Meetings, a: SurfaceId, b: SurfaceId) => meetings.get(a)?.[b] ?? 'apart';

// What touches what in a fitted kitchen: how it is built, no source needed.
const TOUCH: readonly (readonly [SurfaceId, SurfaceId])[] = [
  ['counter', 'base-fronts'],
  ['counter', 'backsplash'],
  ['counter', 'upstand'],
  ['counter', 'sink'],
  ['counter', 'tap'],
  ['island-counter', 'island-fronts'],
  ['floor', 'plinth'],
  ['floor', 'wall'],
  ['wall', 'ceiling'],
  ['wall-fronts', 'backsplash'],
  ['upstand', 'wall'],
  ['hardware', 'base-fronts'],
];
const NEVER_TOUCH: readonly (readonly [SurfaceId, SurfaceId])[] = [
  ['counter', 'ceiling'],
  ['floor', 'backsplash'],
  ['floor', 'ceiling'],
  ['island-counter', 'backsplash'],
  ['plinth', 'wall-fronts'],
  ['tap', 'wall'],
];

describe.each(kitchens)('surfaces that meet in the kitchen "$name"', ({ name, present, meetings }) => {
  const there = ([a, b]: readonly [SurfaceId, SurfaceId]) => present.includes(a) && present.includes(b);

  it('touch where they are built onto each other', () => {
    for (const [a, b] of TOUCH.filter(there)) expect([a, b, between(meetings, a, b)]).toEqual([a, b, 'adjacent']);
  });

  it('do not touch where something or nothing stands between them', () => {
    for (const pair of NEVER_TOUCH.filter(there)) {
      // A peninsula's counter does run into the backsplash.
      if (name === 'L with peninsula' && pair[0] === 'island-counter') continue;
      expect([...pair, between(meetings, ...pair)]).not.toEqual([...pair, 'adjacent']);
    }
  });

  it('meet each other alike from both sides, and never themselves', () => {
    for (const a of present) {
      expect(meetings.get(a)![a]).toBeUndefined();
      for (const b of present) expect(between(meetings, a, b)).toBe(between(meetings, b, a));
    }
  });

  it('are seen together where an overview shows both', () => {
    for (const one of ['floor', 'base-fronts', 'wall'] as const)
      expect(between(meetings, 'counter', one)).not.toBe('apart');
  });
});

it('joins a peninsula, but no island, to what stands on the walls', () => {
  const of = (name: string) => kitchens.find((kitchen) => kitchen.name === name)!.meetings;
  expect(between(of('L with peninsula'), 'counter', 'island-counter')).toBe('adjacent');
  for (const name of ['L with island', 'U with island, open side']) {
    expect(between(of(name), 'counter', 'island-counter')).toBe('together');
    expect(between(of(name), 'island-fronts', 'base-fronts')).toBe('together');
  }
});

it('does not depend on the order of a room’s rectangles', () => {
  const { room, meetings, present } = kitchens[0]!;
  const fine = [...room.light.fine].reverse();
  const turned = looked({ ...room, edges: [...room.edges].reverse(), light: { ...room.light, fine } });
  for (const a of present) for (const b of present) expect(between(turned, a, b)).toBe(between(meetings, a, b));
});

it('has surfaces that nobody sees at once', () => {
  const { meetings } = kitchens.find(({ name }) => name === 'one wall')!;
  expect(between(meetings, 'floor', 'ceiling')).toBe('apart');
});
