import fc from 'fast-check';
import { expect, it } from 'vitest';
import { layoutPatches, patchAt } from '../../src/engine/light/patches';
import { quadFactor } from '../../src/engine/light/polygon-factor';
import { buildTransport, buildTransportInSteps, type Transport } from '../../src/engine/light/transport';
import type { Rect } from '../../src/engine/light/types';
import { boxRects, ceilingLamp, roomOf } from './box-room';
import { cornerParallel, cornerUpright, parallel, perpendicular } from './configuration-factors';
import { checkRoom } from './light-check-room';

const quad = (...points: number[]): Float64Array => Float64Array.from(points);

it('closed forms meet their published sums: a cube and a 4 x 3 x 2.5 m room close', () => {
  expect(parallel(1, 1, 1) + 4 * perpendicular(1, 1, 1)).toBeCloseTo(1, 9);
  const floor = parallel(4, 3, 2.5) + 2 * perpendicular(3, 2.5, 4) + 2 * perpendicular(4, 2.5, 3);
  expect(floor).toBeCloseTo(1, 9);
  expect(parallel(1, 1, 1)).toBeCloseTo(0.1998249, 7);
  expect(perpendicular(1, 1, 1)).toBeCloseTo(0.20004378, 7);
  expect(parallel(4, 3, 2.5)).toBeCloseTo(0.292074, 6);
  expect(perpendicular(3, 2.5, 4)).toBeCloseTo(0.203525, 6);
  expect(perpendicular(4, 2.5, 3)).toBeCloseTo(0.150438, 6);
  expect(perpendicular(1, 2, 1)).toBeCloseTo(0.232853, 6);
  expect(parallel(2, 1, 1)).toBeCloseTo(0.285875, 6);
});

it('point to rectangle: facing and upright corner positions, to 1e-7', () => {
  expect(quadFactor(0, 0, 0, 0, 0, 1, quad(0, 0, 1, 1, 0, 1, 1, 1, 1, 0, 1, 1))).toBeCloseTo(0.13853161, 7);
  expect(quadFactor(0, 0, 0, 0, 0, 1, quad(0, 1, 0, 1, 1, 0, 1, 1, 1, 0, 1, 1))).toBeCloseTo(0.0557342, 7);
});

it('point to rectangle: any size and distance, the part below the horizon clipped away', () => {
  const length = fc.double({ min: 0.05, max: 5, noNaN: true });
  fc.assert(
    fc.property(length, length, length, length, (a, b, c, below) => {
      const facing = quadFactor(0, 0, 0, 0, 0, 1, quad(0, 0, c, a, 0, c, a, b, c, 0, b, c));
      expect(facing).toBeCloseTo(cornerParallel(a, b, c), 7);
      const sunk = quadFactor(0, 0, 0, 0, 0, 1, quad(0, c, -below, a, c, -below, a, c, b, 0, c, b));
      expect(sunk).toBeCloseTo(cornerUpright(a, b, c), 7);
    }),
  );
});

/** Form factor between whole rectangles, from those of their patches. */
function between(t: Transport, from: number, to: number): number {
  const { patches, factors } = t;
  let exchanged = 0;
  let area = 0;
  for (let i = 0; i < patches.count; i++) {
    if (patches.rect[i] !== from) continue;
    area += patches.area[i]!;
    for (let e = factors.start[i]!; e < factors.start[i + 1]!; e++) {
      if (patches.rect[factors.column[e]!] === to) exchanged += patches.area[i]! * factors.value[e]!;
    }
  }
  return exchanged / area;
}

it('ray estimates in a 4 x 3 x 2.5 m room meet C-11 and C-14: 1 % at the product settings, 0.3 % with 1024 rays', () => {
  for (const [options, tolerance] of [
    [{}, 0.01],
    [{ raysPerPatch: 1024 }, 0.003],
  ] as const) {
    const t = buildTransport(roomOf(boxRects(4, 3, 2.5)), options);
    expect(t.leak).toBeLessThan(1e-4);
    for (const [from, to, expected] of [
      [0, 1, parallel(4, 3, 2.5)],
      [0, 2, perpendicular(4, 2.5, 3)],
      [0, 3, perpendicular(4, 2.5, 3)],
      [0, 4, perpendicular(3, 2.5, 4)],
      [0, 5, perpendicular(3, 2.5, 4)],
      [2, 3, parallel(3, 2.5, 4)],
      [4, 5, parallel(4, 2.5, 3)],
      [2, 4, perpendicular(3, 4, 2.5)],
    ] as const) {
      expect(Math.abs(between(t, from, to) / expected - 1)).toBeLessThan(tolerance);
    }
  }
});

it('reciprocity and closure hold to 1e-6 with unequal patches, in a box with a lamp and in a kitchen-like room', () => {
  const lamp = ceilingLamp(0.4, 0.5, 2.5, 0.3, 1000);
  for (const room of [roomOf(boxRects(3, 2, 2.5), { lamps: [lamp] }), checkRoom().room]) {
    const { patches, factors } = buildTransport(room, { raysPerPatch: 49, seed: 4 });
    expect(Math.max(...patches.area) / Math.min(...patches.area)).toBeGreaterThan(10);
    const exchange = new Map<number, number>();
    let largest = 0;
    let open = 0;
    for (let i = 0; i < patches.count; i++) {
      let row = 0;
      for (let e = factors.start[i]!; e < factors.start[i + 1]!; e++) {
        row += factors.value[e]!;
        const af = patches.area[i]! * factors.value[e]!;
        exchange.set(i * patches.count + factors.column[e]!, af);
        largest = Math.max(largest, af);
      }
      open = Math.max(open, Math.abs(row - 1));
    }
    let uneven = 0;
    for (const [key, af] of exchange) {
      const i = Math.floor(key / patches.count);
      const j = key % patches.count;
      uneven = Math.max(uneven, Math.abs(af - exchange.get(j * patches.count + i)!) / largest);
    }
    expect(open).toBeLessThan(1e-6);
    expect(uneven).toBeLessThan(1e-6);
  }
});

it('patches tile their rectangle, are found by where they lie, and are small by the strip and in corners', () => {
  const { coarse, lamps } = checkRoom().room;
  const patches = layoutPatches(
    coarse,
    0.3,
    lamps.map(({ rect }) => rect),
  );
  const { span, rect } = patches;
  const covered = new Float64Array(coarse.length);
  for (let p = 0; p < patches.count; p++) {
    const [u0, du, v0, dv] = span.subarray(4 * p, 4 * p + 4) as unknown as [number, number, number, number];
    covered[rect[p]!]! += du * dv;
    for (const f of [0.01, 0.5, 0.99]) expect(patchAt(patches, rect[p]!, u0 + f * du, v0 + (1 - f) * dv)).toBe(p);
  }
  for (const share of covered) expect(share).toBeCloseTo(1, 9);
  // The wall opposite the run, 2.5 m high: near 0.3 m in its middle, a few centimetres by floor and ceiling.
  const wall = [...rect.keys()].filter((p) => rect[p] === 5);
  const lengths = wall.map((p) => 2.5 * span[4 * p + 1]!);
  expect(Math.min(...lengths)).toBeLessThan(0.1);
  expect(Math.max(...lengths)).toBeGreaterThan(0.25);
  expect(Math.max(...lengths)).toBeLessThan(0.3 + 1e-9);
});

it('the same seed gives the same numbers', () => {
  const build = (): Transport => buildTransport(roomOf(boxRects(3, 2, 2.5)), { raysPerPatch: 36, seed: 4 });
  expect(build().factors).toEqual(build().factors);
});

it('in steps it comes to the same, and says so often, forwards, how far it is', () => {
  const room = roomOf(boxRects(3, 2, 2.5), { lamps: [ceilingLamp(1, 1, 2.5, 0.4, 1000)] });
  const steps = buildTransportInSteps(room);
  const shares: number[] = [];
  let step = steps.next();
  for (; !step.done; step = steps.next()) shares.push(step.value);
  // 8000 rays are a step: this room casts more than a dozen times that.
  expect(shares.length).toBeGreaterThan(12);
  expect(shares).toEqual([...shares].sort((a, b) => a - b));
  expect(shares[0]!).toBeGreaterThan(0);
  expect(shares.at(-1)!).toBeLessThan(1);
  const atOnce = buildTransport(room);
  expect(step.value.factors).toEqual(atOnce.factors);
  expect(step.value.direct).toEqual(atOnce.direct);
});

it('an open room leaks, and says where', () => {
  const open: Rect[] = boxRects(5.5, 5.5, 5.5).filter((_, i) => i !== 4);
  const t = buildTransport(roomOf(open), { patchSize: 0.6 });
  expect(t.leak).toBeGreaterThan(0.1);
  // The back wall faces the opening: one fifth of its light leaves (opposite faces of a cube).
  expect(t.leakByRect[4]!).toBeCloseTo(0.1998, 2);
});
