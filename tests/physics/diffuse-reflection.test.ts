import { expect, it } from 'vitest';
import { finishGather, gatherPoint, startGather } from '../../src/engine/light/gather-rows';
import { gatherNodes } from '../../src/engine/light/nodes';
import { buildTransport } from '../../src/engine/light/transport';
import type { Rect, Vec3 } from '../../src/engine/light/types';
import { roomOf } from './box-room';
import { cornerParallel, cornerUpright } from './configuration-factors';

// CIE 171:2006 cases 5.6 and 5.7, diffuse reflection without and with an obstacle: a uniformly lit level patch of
// illuminance E and reflectance rho is a source of exitance rho E, so a point gets rho E C with C the configuration factor
// of what it sees of the patch. Values from that definition, because the report's own table for 5.7 has known errata
// (I. Ashdown, CIE 171:2006 - Errata, 2016).

/** A lit patch a x b on the floor at one corner of x = y = 0. */
const [A, B, LUX] = [0.5, 0.7, 1000];
const RHO = [0.2, 0.55, 0.9];
const patch: Rect = { origin: [0, 0, 0], u: [A, 0, 0], v: [0, B, 0], surface: 0 };
const HEIGHT = 1.2;

/** What a point gets in each band from the lit patch, past the obstacles, by a final gather with so many rays. */
function received(obstacles: readonly Rect[], point: Vec3, normal: Vec3): number[] {
  const room = roomOf([patch, ...obstacles], {}, ['lit', 'obstacle']);
  const transport = buildTransport(room, { raysPerPatch: 4 });
  const bands = RHO.length;
  const { count, rect } = transport.patches;
  const radiosity = Float32Array.from({ length: count * bands }, (_, i) =>
    rect[Math.floor(i / bands)] === 0 ? RHO[i % bands]! * LUX : 0,
  );
  const gatherer = startGather(room, transport, 1 << 16, 3);
  gatherPoint(gatherer, ...point, ...normal);
  return [...gatherNodes({ rows: finishGather(gatherer) }, radiosity, bands)];
}

/** 65 536 evenly spread rays know a factor of 0.01 to 0.10 to about 0.3 %. */
function expectFactor(found: readonly number[], factor: number): void {
  found.forEach((lx, k) => {
    expect(Math.abs(lx / (RHO[k]! * LUX * factor) - 1)).toBeLessThan(0.005);
  });
}

it('5.6: a ceiling point over the corner, over the middle and off to one side', () => {
  const whole = cornerParallel(A, B, HEIGHT);
  expectFactor(received([], [0, 0, HEIGHT], [0, 0, -1]), whole);
  expectFactor(received([], [A / 2, B / 2, HEIGHT], [0, 0, -1]), 4 * cornerParallel(A / 2, B / 2, HEIGHT));
  const beside = cornerParallel(A + 0.6, B, HEIGHT) - cornerParallel(0.6, B, HEIGHT);
  expectFactor(received([], [-0.6, 0, HEIGHT], [0, 0, -1]), beside);
});

it('5.6: an upright point beside the patch', () => {
  // Seen from the wall, the floor's patch is "upright", its distance the point's height.
  for (const height of [0.3, 0.8]) {
    const near = 0.4;
    const factor = cornerUpright(B, near + A, height) - cornerUpright(B, near, height);
    expectFactor(received([], [-near, 0, height], [1, 0, 0]), factor);
  }
});

it('5.7: a screen between hides part of the patch', () => {
  // Half way up: what lies beyond x = 2 edge is hidden from a point above the corner.
  for (const edge of [0.05, 0.1, 0.2]) {
    const screen: Rect = { origin: [edge, -2, HEIGHT / 2], u: [3, 0, 0], v: [0, 4, 0], surface: 1 };
    expectFactor(received([screen], [0, 0, HEIGHT], [0, 0, -1]), cornerParallel(2 * edge, B, HEIGHT));
  }
});

it('5.7: from a wall, over an upright obstacle that stands between', () => {
  // The line from the point over the obstacle's top meets the floor where the visible part begins.
  const [near, height, at, top] = [0.4, 0.8, 0.2, 0.5];
  const obstacle: Rect = { origin: [at - near, -2, 0], u: [0, 0, top], v: [0, 4, 0], surface: 1 };
  const from = (at * height) / (height - top);
  expect(from).toBeGreaterThan(near);
  expect(from).toBeLessThan(near + A);
  const factor = cornerUpright(B, near + A, height) - cornerUpright(B, from, height);
  expectFactor(received([obstacle], [-near, 0, height], [1, 0, 0]), factor);
  const wall: Rect = { ...obstacle, u: [0, 0, 2] };
  expect(received([wall], [-near, 0, height], [1, 0, 0])).toEqual([0, 0, 0]);
});
