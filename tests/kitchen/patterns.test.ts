import { expect, it } from 'vitest';
import scene from '../../scenes/l-island.json';
import type { FineRect } from '../../src/engine/light/types';
import { SURFACES, type SurfaceId } from '../../src/engine/surface';
import { buildRoom } from '../../src/kitchen/build-room';
import type { Kitchen } from '../../src/model/kitchen';
import { facing } from './geometry';

const { fine } = buildRoom(scene as Kitchen).light;
const of = (surface: SurfaceId): FineRect[] => fine.filter((rect) => rect.surface === SURFACES.indexOf(surface));

it('is laid at real size: a metre in the room is a metre of pattern, at right angles', () => {
  for (const { u, v, pattern, surface } of fine) {
    if (surface < 0) continue;
    expect(Math.hypot(pattern.su, pattern.tu)).toBeCloseTo(Math.hypot(...u), 9);
    expect(Math.hypot(pattern.sv, pattern.tv)).toBeCloseTo(Math.hypot(...v), 9);
    expect(pattern.su * pattern.sv + pattern.tu * pattern.tv).toBeCloseTo(0, 9);
  }
});

it('runs over the whole floor with s along x and t along y', () => {
  for (const { origin, pattern } of of('floor')) {
    expect([pattern.s0, pattern.t0]).toEqual([expect.closeTo(origin[0], 9), expect.closeTo(origin[1], 9)]);
  }
});

it('stands whole tiles on the counter: t is the height over the counter', () => {
  const faces = of('backsplash').filter((rect) => facing(rect).axis === 1);
  expect(faces.length).toBeGreaterThan(1);
  for (const { origin, pattern } of faces) {
    expect(pattern.t0).toBeCloseTo(origin[2] - 0.9, 9);
    expect(pattern.s0).toBeCloseTo(origin[0], 9);
  }
});

it('carries the veins of a slab over its front edge', () => {
  const tops = of('counter').filter((rect) => facing(rect).axis === 2 && facing(rect).sign === 1);
  const edge = of('counter').find((rect) => facing(rect).axis === 1 && facing(rect).sign === -1)!;
  expect(edge).toBeDefined();
  // On the front edge of the back run t goes on below the top's front line, y = 3.38.
  expect(edge.pattern.t0).toBeCloseTo(3.38 - (0.9 - edge.origin[2]), 9);
  const backRun = tops.filter((rect) => rect.piece === edge.piece);
  expect(backRun.length).toBeGreaterThan(0);
  for (const { origin, pattern } of backRun) expect(pattern.s0).toBeCloseTo(origin[0], 9);
  const shortLeg = tops.filter((rect) => rect.piece !== edge.piece);
  for (const { origin, pattern } of shortLeg) expect(pattern.s0).toBeCloseTo(origin[1], 9);
});
