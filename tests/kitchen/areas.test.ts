import { expect, it } from 'vitest';
import type { Rect } from '../../src/engine/light/types';
import { SURFACES, type SurfaceId } from '../../src/engine/surface';
import { buildRoom } from '../../src/kitchen/build-room';
import { counterSlabs } from '../../src/kitchen/parts/slabs';
import { planKitchen } from '../../src/kitchen/plan/plan-kitchen';
import type { Kitchen } from '../../src/model/kitchen';
import { kitchenMisfits } from '../../src/model/kitchen-misfits';
import { area, facing } from './geometry';
import { LAYOUTS } from './layouts';

const total = (rects: readonly Rect[], surface: SurfaceId, faces?: (rect: Rect) => boolean): number =>
  rects
    .filter((rect) => rect.surface === SURFACES.indexOf(surface) && (!faces || faces(rect)))
    .reduce((sum, rect) => sum + area(rect), 0);
const isUp = (rect: Rect): boolean => facing(rect).axis === 2 && facing(rect).sign === 1;

it('lays an L counter of 3600 + 2400 mm, 620 deep, and an island of 2000 x 1000: 5.3356 m2 without cut-outs', () => {
  // Worked by hand: 3.6 x 0.62 + (2.4 - 0.62) x 0.62 + 2.0 x 1.0.
  const usual = LAYOUTS['L with island']!;
  const [left, back] = usual.runs;
  const kitchen: Kitchen = {
    ...usual,
    room: { width: 5000, depth: 4600, height: 2500 },
    runs: [
      { ...left!, from: 2200, to: 4600 },
      { ...back!, from: 0, to: 3600, tall_to: [] },
    ],
    island: { ...usual.island!, x: 1600, y: 1600, width: 2000, depth: 1000 },
    sink: { ...usual.sink, center: 3200 },
    cooktop: { ...usual.cooktop, center: 2200 },
    openings: [],
  };
  expect(kitchenMisfits(kitchen)).toEqual([]);
  const slabs = counterSlabs(planKitchen(kitchen));
  const sum = slabs.reduce((all, { box: [min, max] }) => all + (max[0] - min[0]) * (max[1] - min[1]), 0);
  expect(sum).toBeCloseTo(5.3356, 9);
  // The coarse room cuts sink and cooktop out of the same slabs as fields.
  const { coarse } = buildRoom(kitchen).light;
  const fields = 0.56 * 0.4 + 0.86 * 0.51;
  expect(total(coarse, 'counter', isUp) + total(coarse, 'island-counter', isUp)).toBeCloseTo(5.3356 - fields, 9);
});

it('covers the floor beside the runs of a U, and the walls round the openings of a room', () => {
  const u = LAYOUTS['U']!;
  const { coarse } = buildRoom(u).light;
  const { width, depth, height } = { width: 4.6, depth: 4, height: 2.5 };
  // Closed forms: 620 mm deep runs, the right one from 900 mm, the left one from 1300 mm from the door's wall.
  const runs = width * 0.62 + (depth - 0.62 - 1.3) * 0.62 + (depth - 0.62 - 0.9) * 0.62;
  expect(total(coarse, 'floor')).toBeCloseTo(width * depth - runs, 9);
  // Tall units have a panel of 20 mm, two modules of 600 mm, a free end panel of 20 mm: 1240 mm x 2300 mm of the right wall.
  const left = depth * height - (depth - 0.62 - 1.3) * 0.9 - 0.62 * 0.9 - (depth - 1.3) * 0.1;
  const onLeft = coarse.filter((rect) => facing(rect).axis === 0 && facing(rect).sign === 1 && rect.origin[0] === 0);
  const wallUnits = planKitchen(u).runs.find(({ wall }) => wall === 'left')!.over;
  const over = wallUnits.reduce((sum, { from, to }) => sum + (to - from) * 0.72, 0);
  // Where both rows reach the corner the back row's box closes it: 330 mm more of the left wall.
  expect(total(onLeft, 'wall') + over + 0.33 * 0.72).toBeCloseTo(left, 9);
  expect(total(onLeft, 'upstand')).toBeCloseTo((depth - 1.3) * 0.1, 9);
});

it('closes the next room: floor, ceiling and four walls of its own', () => {
  const kitchen = LAYOUTS['U with island, open side']!;
  const { coarse } = buildRoom(kitchen).light;
  const beyond = coarse.filter(({ origin, u, v }) => origin[1] + Math.max(0, u[1], v[1]) < -0.12 + 1e-9);
  // 5.2 m wide as the wall they share, 3 m deep, 2.6 m high; the passage is 2.7 x 2.2 m in a wall 120 mm thick.
  expect(total(beyond, 'floor')).toBeCloseTo(5.2 * 3, 9);
  expect(total(beyond, 'ceiling')).toBeCloseTo(5.2 * 3, 9);
  expect(total(beyond, 'wall')).toBeCloseTo(2 * (5.2 + 3) * 2.6 - 2.7 * 2.2, 9);
});

it('numbers every field that is laid by itself, with its coordinates at real size', () => {
  for (const kitchen of Object.values(LAYOUTS)) {
    const { fine } = buildRoom(kitchen).light;
    for (const surface of ['floor', 'backsplash', 'upstand', 'counter', 'island-counter', 'ceiling'] as const) {
      for (const rect of fine)
        if (rect.surface === SURFACES.indexOf(surface)) expect(rect.piece, surface).toBeGreaterThan(0);
    }
    const tile = fine.filter((rect) => rect.surface === SURFACES.indexOf('backsplash'));
    for (const run of planKitchen(kitchen).runs) {
      if (run.splash.kind === 'upstand') continue;
      const axis = run.wall === 'back' ? 1 : 0;
      const field = tile.filter((rect) => facing(rect).axis === axis && isOn(rect, run.wall, kitchen));
      expect(new Set(field.map(({ piece }) => piece)).size, run.wall).toBe(1);
      const s = field.flatMap(({ pattern: { s0, su, sv } }) => [s0, s0 + su + sv]);
      const t = field.flatMap(({ pattern: { t0, tu, tv } }) => [t0, t0 + tu + tv]);
      // From the lower left corner of the field, on the counter.
      expect(Math.min(...s)).toBeGreaterThan(-1e-9);
      expect(Math.min(...s)).toBeLessThan(0.01);
      expect(Math.min(...t)).toBeGreaterThan(-1e-9);
    }
  }
});

function isOn({ origin }: Rect, wall: 'left' | 'back' | 'right', { room }: Kitchen): boolean {
  if (wall === 'left') return Math.abs(origin[0] - 0.008) < 1e-6;
  if (wall === 'right') return Math.abs(origin[0] - (room.width / 1000 - 0.008)) < 1e-6;
  return Math.abs(origin[1] - (room.depth / 1000 - 0.008)) < 1e-6;
}
