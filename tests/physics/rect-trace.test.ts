import fc from 'fast-check';
import { expect, it } from 'vitest';
import { castRay } from '../../src/engine/light/ray';
import { buildRectBvh, rectNormal } from '../../src/engine/light/rect-bvh';
import { isBlocked, traceNearest } from '../../src/engine/light/rect-trace';
import type { Rect, Vec3 } from '../../src/engine/light/types';
import { boxRects } from './box-room';

const unit = fc.integer({ min: 0, max: 1000 }).map((x) => x / 1000);
const rectangle: fc.Arbitrary<Rect> = fc
  .tuple(fc.integer({ min: 0, max: 5 }), unit, unit, unit, unit, unit)
  .map(([kind, x, y, z, a, b]) => {
    const edge = (axis: number, length: number): Vec3 =>
      [0, 1, 2].map((k) => (k === axis ? 0.05 + length : 0)) as unknown as Vec3;
    const axis = kind % 3;
    const first = (axis + 1) % 3;
    const second = (axis + 2) % 3;
    return {
      origin: [3 * x, 3 * y, 3 * z],
      u: edge(kind < 3 ? first : second, a),
      v: edge(kind < 3 ? second : first, b),
      surface: 0,
    };
  });
/** Off every rectangle's plane (those lie on thousandths), so that no ray starts in one. */
const coordinate = fc.integer({ min: -1000, max: 4000 }).map((mm) => (mm + 0.37) / 1000);
const component = fc.integer({ min: -1000, max: 1000 }).map((x) => (x + 0.5) / 1000);
const direction = fc.tuple(component, component, component);

/** Distance to one rectangle along a ray, straight from its definition. */
function meet(rect: Rect, o: Vec3, d: Vec3, widen = 0): number {
  const { axis } = rectNormal(rect);
  const t = (rect.origin[axis] - o[axis]) / d[axis];
  if (!(t > 0) || !Number.isFinite(t)) return Infinity;
  const p = o.map((x, k) => x + d[k]! * t - rect.origin[k]!);
  for (const edge of [rect.u, rect.v]) {
    const length = Math.hypot(...edge);
    const along = p.reduce((sum, x, k) => sum + (x * edge[k]!) / length, 0);
    if (along < -widen || along > length + widen) return Infinity;
  }
  return t;
}

it('the hierarchy finds what a search through all rectangles finds', () => {
  fc.assert(
    fc.property(
      fc.array(rectangle, { minLength: 1, maxLength: 60 }),
      fc.tuple(coordinate, coordinate, coordinate),
      direction,
      (rects, o, d) => {
        const bvh = buildRectBvh(rects);
        const nearest = Math.min(...rects.map((rect) => meet(rect, o, d)));
        const slot = traceNearest(bvh, ...o, ...d, Infinity);
        const hit = slot < 0 ? Infinity : bvh.hitDistance[0]!;
        // Rectangles are widened by a micrometre: the hit lies between those of exact and of wider rectangles.
        const widened = Math.min(...rects.map((rect) => meet(rect, o, d, 2e-6)));
        expect(hit).toBeLessThanOrEqual(nearest * (1 + 1e-12));
        expect(hit).toBeGreaterThanOrEqual(widened * (1 - 1e-12));
        if (nearest < Infinity) {
          expect(isBlocked(bvh, ...o, ...d, nearest * 1.001)).toBe(true);
          bvh.lastBlocker[0] = -1;
          expect(isBlocked(bvh, ...o, ...d, hit * 0.999)).toBe(false);
        }
      },
    ),
    { numRuns: 300 },
  );
});

it('from inside a box every ray meets a front, where its fractions say', () => {
  const rects = boxRects(4, 3, 2.5);
  const bvh = buildRectBvh(rects);
  fc.assert(
    fc.property(unit, unit, unit, direction, (x, y, z, d) => {
      const eye: Vec3 = [0.1 + 3.8 * x, 0.1 + 2.8 * y, 0.1 + 2.3 * z];
      const hit = castRay(bvh, eye, d)!;
      const length = Math.hypot(...d);
      const rect = rects[hit.rect]!;
      for (const k of [0, 1, 2] as const) {
        const onRect = rect.origin[k] + rect.u[k] * hit.u + rect.v[k] * hit.v;
        expect(onRect).toBeCloseTo(eye[k] + (d[k] * hit.distance) / length, 5);
      }
    }),
  );
});

it('a picked ray that meets a back, or nothing, gives nothing', () => {
  const bvh = buildRectBvh(boxRects(4, 3, 2.5));
  expect(castRay(bvh, [5, 1, 1], [-1, 0, 0])).toBeNull();
  expect(castRay(bvh, [5, 1, 1], [1, 0, 0])).toBeNull();
  expect(castRay(bvh, [1, 1, 1], [0, 0, 0])).toBeNull();
});
