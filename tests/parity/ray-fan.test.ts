import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { inGroupsOfFour } from '../../src/engine/light/kernel/groups';
import type { LightKernel, RayFan, RayFrame } from '../../src/engine/light/kernel/types';
import { typescriptKernel } from '../../src/engine/light/kernel/typescript-kernel';
import { createWasmKernel } from '../../src/engine/light/kernel/wasm-kernel';
import { spreadRays } from '../../src/engine/light/ray-fan';
import { buildRectBvh } from '../../src/engine/light/rect-bvh';
import { shadowTargets } from '../../src/engine/light/shadow-targets';
import { buildTransport } from '../../src/engine/light/transport';
import type { Rect, Vec3 } from '../../src/engine/light/types';
import { buildRoom } from '../../src/kitchen/build-room';
import type { Kitchen } from '../../src/model/kitchen';

const wasm = createWasmKernel()!;

function traced(kernel: LightKernel, fan: RayFan, frame: RayFrame): [number, number][] {
  fan.hits.fill(-7);
  kernel.traceFan(fan, frame);
  return Array.from({ length: fan.count }, (_, k) => [fan.hits[k]!, fan.distances[k]!]);
}

/** How many rays the kernels do not agree on, to the last bit. */
function apart(fan: RayFan, frame: RayFrame): number {
  const exact = traced(typescriptKernel, fan, frame);
  const fast = traced(wasm, fan, frame);
  return exact.filter(([hit, t], k) => !Object.is(hit, fast[k]![0]) || !Object.is(t, fast[k]![1])).length;
}

/** A frame at a point, turned about all axes, or for no turns along them. */
function frameAt([x, y, z]: Vec3, [a, b, c]: Vec3): RayFrame {
  const turn = (p: Vec3, i: number, j: number, angle: number): Vec3 => {
    const out = [...p] as [number, number, number];
    out[i] = p[i]! * Math.cos(angle) - p[j]! * Math.sin(angle);
    out[j] = p[i]! * Math.sin(angle) + p[j]! * Math.cos(angle);
    return out;
  };
  const turned = (p: Vec3) => turn(turn(turn(p, 0, 1, a), 1, 2, b), 2, 0, c);
  return [x, y, z, ...turned([1, 0, 0]), ...turned([0, 1, 0]), ...turned([0, 0, 1])];
}

// On a grid of quarters, so that many lie in one plane, share edges and cover each other, and points lie in their planes.
const quarter = fc.integer({ min: 0, max: 12 }).map((n) => n / 4);
const place = fc.tuple(quarter, quarter, quarter);
const rectangle = fc
  .record({
    axis: fc.constantFrom(0, 1, 2),
    front: fc.boolean(),
    origin: place,
    a: fc.constantFrom(0.25, 0.5, 2),
    b: fc.constantFrom(0.25, 1, 3),
  })
  .map(({ axis, front, origin, a, b }) => {
    const edge = (along: number, length: number): Vec3 =>
      [0, 1, 2].map((k) => (k === along ? length : 0)) as unknown as Vec3;
    const u = edge((axis + 1) % 3, a);
    const v = edge((axis + 2) % 3, b);
    return { origin, u: front ? u : v, v: front ? v : u, surface: 0 };
  });
const angle = fc.oneof(fc.constantFrom(0, Math.PI / 2, -Math.PI / 2), fc.double({ min: -4, max: 4, noNaN: true }));
const anywhere = fc.double({ min: -1, max: 4, noNaN: true });

const scales = fc.constantFrom(0.01, 1, 7, 1000);
const larger = (rect: Rect, by: number): Rect => {
  const times = (v: Vec3): Vec3 => [v[0] * by, v[1] * by, v[2] * by];
  return { ...rect, origin: times(rect.origin), u: times(rect.u), v: times(rect.v) };
};

it('the kernels see the same rectangle at the same distance with every ray of any fan, to the last bit', () => {
  let met = 0;
  fc.assert(
    fc.property(
      fc.array(rectangle, { maxLength: 60 }),
      fc.nat({ max: 60 }),
      fc.oneof(place, fc.tuple(anywhere, anywhere, anywhere)),
      fc.tuple(angle, angle, angle),
      fc.integer({ min: 1, max: 90 }),
      scales,
      (rects, oneSidedFrom, point, turns, count, scale) => {
        const bvh = buildRectBvh(
          rects.map((rect) => larger(rect, scale)),
          oneSidedFrom,
        );
        const fan = spreadRays(bvh, count, count);
        const at: Vec3 = [point[0] * scale, point[1] * scale, point[2] * scale];
        expect(apart(fan, frameAt(at, turns))).toBe(0);
        met += fan.hits.filter((hit) => hit >= 0).length;
      },
    ),
    { numRuns: 3000 },
  );
  expect(met).toBeGreaterThan(1000);
});

it('the kernels see the same targets free, whatever stands between, and whatever stood there before', () => {
  let free = 0;
  let shut = 0;
  fc.assert(
    fc.property(
      fc.array(rectangle, { maxLength: 60 }),
      fc.nat({ max: 60 }),
      fc.array(fc.oneof(place, fc.tuple(anywhere, anywhere, anywhere)), { minLength: 1, maxLength: 4 }),
      fc.array(fc.oneof(place, fc.tuple(anywhere, anywhere, anywhere)), { minLength: 1, maxLength: 40 }),
      scales,
      (rects, oneSidedFrom, from, to, scale) => {
        const bvh = buildRectBvh(
          rects.map((rect) => larger(rect, scale)),
          oneSidedFrom,
        );
        const targets = shadowTargets(Float64Array.from(to.flat(), (one) => one * scale));
        for (const point of from) {
          const [x, y, z] = [point[0] * scale, point[1] * scale, point[2] * scale];
          const seen = ({ shadeFan }: LightKernel) => {
            targets.blocked.fill(0);
            shadeFan(bvh, targets, to.length, x, y, z);
            return [...targets.blocked.subarray(0, to.length)].map((one) => one !== 0);
          };
          const exact = seen(typescriptKernel);
          expect(seen(wasm)).toEqual(exact);
          for (const one of exact) one ? shut++ : free++;
        }
      },
    ),
    { numRuns: 3000 },
  );
  expect(Math.min(free, shut)).toBeGreaterThan(1000);
});

it('from every prop of the L kitchen the kernels see the same', () => {
  const { light } = buildRoom(JSON.parse(readFileSync('scenes/l-island.json', 'utf8')) as Kitchen);
  const fan = spreadRays(buildTransport(light, { raysPerPatch: 8 }).gatherBvh, 144, 11);
  let points = 0;
  for (const { positions } of light.props) {
    for (let k = 0; k < positions.length; k += 3 * 37, points++) {
      const point: Vec3 = [positions[k]!, positions[k + 1]!, positions[k + 2]!];
      expect(apart(fan, frameAt(point, [0, (points * Math.PI) / 2, points]))).toBe(0);
    }
  }
  expect(points).toBeGreaterThan(100);
});

it('rays are spread by the cosine: unit directions to the front, whose mean is 2/3 of the normal', () => {
  for (const count of [9, 64, 144, 640]) {
    const { groups, ...fan } = spreadRays(buildRectBvh([]), count, 3);
    expect(fan.count).toBe(count);
    const sum = [0, 0, 0];
    for (let k = 0; k < count; k++) {
      const at = inGroupsOfFour(k);
      const d = [groups[at]!, groups[at + 4]!, groups[at + 8]!];
      expect(Math.hypot(...d)).toBeCloseTo(1, 12);
      expect(d[2]).toBeGreaterThan(0);
      d.forEach((one, i) => {
        sum[i]! += one / count;
      });
    }
    // The integral of cos over the hemisphere by cos / pi is 2/3, those of its sides 0.
    expect(sum[2]!).toBeCloseTo(2 / 3, 2);
    expect(Math.hypot(sum[0]!, sum[1]!)).toBeLessThan(1.5 / count);
  }
});
