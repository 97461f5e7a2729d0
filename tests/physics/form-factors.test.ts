import fc from 'fast-check';
import { expect, it } from 'vitest';
import { quadFactor } from '../../src/engine/light/polygon-factor';
import { buildTransport, buildTransportInSteps, type Transport } from '../../src/engine/light/transport';
import type { Rect } from '../../src/engine/light/types';
import { boxRects, ceilingLamp, roomOf } from './box-room';

// Formulas: J. R. Howell, A Catalog of Radiation Heat Transfer Configuration Factors, C-11 and C-14, and the two
// differential-element factors to a rectangle seen from a corner.

function parallel(a: number, b: number, c: number): number {
  const x = a / c;
  const y = b / c;
  const sx = Math.sqrt(1 + x * x);
  const sy = Math.sqrt(1 + y * y);
  const log = 0.5 * Math.log(((1 + x * x) * (1 + y * y)) / (1 + x * x + y * y));
  const arcs = x * sy * Math.atan(x / sy) + y * sx * Math.atan(y / sx) - x * Math.atan(x) - y * Math.atan(y);
  return (2 / (Math.PI * x * y)) * (log + arcs);
}

function perpendicular(depth: number, height: number, edge: number): number {
  const w = depth / edge;
  const h = height / edge;
  const w2 = w * w;
  const h2 = h * h;
  const r = Math.sqrt(h2 + w2);
  const arcs = w * Math.atan(1 / w) + h * Math.atan(1 / h) - r * Math.atan(1 / r);
  const log =
    Math.log(((1 + w2) * (1 + h2)) / (1 + w2 + h2)) +
    w2 * Math.log((w2 * (1 + w2 + h2)) / ((1 + w2) * (w2 + h2))) +
    h2 * Math.log((h2 * (1 + w2 + h2)) / ((1 + h2) * (w2 + h2)));
  return (arcs + log / 4) / (Math.PI * w);
}

const cornerParallel = (a: number, b: number, c: number): number => {
  const x = a / c;
  const y = b / c;
  const sx = Math.sqrt(1 + x * x);
  const sy = Math.sqrt(1 + y * y);
  return ((x / sx) * Math.atan(y / sx) + (y / sy) * Math.atan(x / sy)) / (2 * Math.PI);
};

const cornerUpright = (w: number, h: number, d: number): number => {
  const r = Math.hypot(d, h);
  return (Math.atan(w / d) - (d / r) * Math.atan(w / r)) / (2 * Math.PI);
};

const quad = (...points: number[]): Float64Array => Float64Array.from(points);

it('closed forms meet their published sums: a cube and a 4 x 3 x 2.5 m room close', () => {
  expect(parallel(1, 1, 1) + 4 * perpendicular(1, 1, 1)).toBeCloseTo(1, 9);
  const floor = parallel(4, 3, 2.5) + 2 * perpendicular(3, 2.5, 4) + 2 * perpendicular(4, 2.5, 3);
  expect(floor).toBeCloseTo(1, 9);
  expect(parallel(1, 1, 1)).toBeCloseTo(0.1998249, 7);
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
    [{ raysPerPatch: 1024, patchSize: 0.25 }, 0.003],
  ] as const) {
    const t = buildTransport(roomOf(boxRects(4, 3, 2.5)), options);
    expect(t.leak).toBeLessThan(1e-4);
    for (const [other, expected] of [
      [1, parallel(4, 3, 2.5)],
      [2, perpendicular(4, 2.5, 3)],
      [3, perpendicular(4, 2.5, 3)],
      [4, perpendicular(3, 2.5, 4)],
      [5, perpendicular(3, 2.5, 4)],
    ] as const) {
      expect(Math.abs(between(t, 0, other) / expected - 1)).toBeLessThan(tolerance);
    }
  }
});

it('reciprocity and closure hold to 1e-6 in a cut-up room, and the same seed gives the same numbers', () => {
  const t = buildTransport(roomOf(boxRects(3, 2, 2.5)), { raysPerPatch: 100, seed: 4 });
  const { patches, factors } = t;
  const exchange = new Map<number, number>();
  let largest = 0;
  let open = 0;
  let uneven = 0;
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
  for (const [key, af] of exchange) {
    const i = Math.floor(key / patches.count);
    const j = key % patches.count;
    uneven = Math.max(uneven, Math.abs(af - exchange.get(j * patches.count + i)!) / largest);
  }
  expect(open).toBeLessThan(1e-6);
  expect(uneven).toBeLessThan(1e-6);
  const again = buildTransport(roomOf(boxRects(3, 2, 2.5)), { raysPerPatch: 100, seed: 4 });
  expect(again.factors.value).toEqual(factors.value);
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

it('an open room leaks, and says where: the Cornell box stands open towards the viewer', () => {
  // Geometry: Cornell Program of Computer Graphics, Cornell Box Data, rounded to a 5.5 m cube.
  const open: Rect[] = boxRects(5.5, 5.5, 5.5).filter((_, i) => i !== 4);
  const t = buildTransport(roomOf(open), { patchSize: 0.6 });
  expect(t.leak).toBeGreaterThan(0.1);
  // The back wall faces the opening: one fifth of its light leaves (opposite faces of a cube).
  expect(t.leakByRect[4]!).toBeCloseTo(0.1998, 2);
});
