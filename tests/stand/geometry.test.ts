import { describe, expect, it } from 'vitest';
import { lensTowards } from '../../src/engine/light/lens';
import { mulberry32 } from '../../src/engine/random';
import { buildStand } from '../../src/kitchen/stand/build-stand';
import type { Arrangement } from '../../src/kitchen/stand/types';
import { demoProject } from '../io/demo';
import { area, castRay, coplanarOverlaps, facing } from '../kitchen/geometry';

const demo = demoProject();
const ARRANGEMENTS: readonly Arrangement[] = ['as-in-room', 'all-flat', 'all-upright'];
const standOf = (arrangement: Arrangement, options = demo.options) => buildStand(demo, options, arrangement);

describe.each(ARRANGEMENTS)('%s', (arrangement) => {
  const { room, samples } = standOf(arrangement);
  const { fine, coarse } = room.light;

  it('is closed: every ray from the eye meets the front of something', () => {
    const random = mulberry32(11);
    for (const rects of [fine, coarse]) {
      for (const { eye } of room.viewpoints) {
        for (let i = 0; i < 400; i++) {
          const [x, y, z] = [random() - 0.5, random() - 0.5, random() - 0.5];
          const hit = castRay(rects, eye, [x, y, z]);
          expect(hit?.front, `${eye} ${[x, y, z]}`).toBe(true);
        }
      }
    }
  });

  it('has nothing twice in one plane', () => {
    expect(coplanarOverlaps(fine)).toEqual([]);
    expect(coplanarOverlaps(coarse)).toEqual([]);
  });

  it('shows the chief face of every sample in full, lying or standing', () => {
    for (const { surface, size_m, placed, frame_m } of samples) {
      const own = fine.filter((rect) => room.surfaces[rect.surface] === surface);
      const faces = own.filter((rect) => {
        const { axis, sign } = facing(rect);
        return placed === 'up' ? axis === 2 && sign > 0 : axis === 1 && sign < 0;
      });
      // The steps round a panel face along the sample, so that they add nothing here.
      const shown = faces.filter(({ u, v }) => Math.min(Math.hypot(...u), Math.hypot(...v)) > 0.025);
      const whole = size_m[0] * size_m[1];
      expect(
        shown.reduce((sum, rect) => sum + area(rect), 0),
        surface,
      ).toBeCloseTo(whole, 6);
      expect(shown.length, surface).toBe(frame_m === null ? 1 : 5);
    }
  });
});

it('lays counter and floor and stands all else, or puts all into one plane', () => {
  const lying = (arrangement: Arrangement) =>
    standOf(arrangement)
      .samples.filter(({ placed }) => placed === 'up')
      .map(({ surface }) => surface);
  expect(lying('as-in-room')).toEqual(['floor', 'counter']);
  expect(lying('all-upright')).toEqual([]);
  expect(lying('all-flat')).toHaveLength(standOf('all-flat').samples.length);
});

it('shows each finish as laid once, in the order of deciding', () => {
  // The demo: the slate stays; counter and upstand, all fronts, ceiling and trim, sink, faucet and appliance share theirs.
  expect(standOf('as-in-room', [demo.options[1]!]).samples.map(({ surface }) => surface)).toEqual([
    'floor',
    'counter',
    'base-fronts',
    'backsplash',
    'wall',
    'ceiling',
    'hardware',
    'sink',
  ]);
});

// Sizes samples are handed out in: common practice, no source. The demo's slate tile is 400 mm, its joint 3 mm; wall tile 200 x 100
// with 2 mm in running bond: a field of one and a half by three.
it.each([
  ['floor', 0.403, 0.403],
  ['counter', 0.3, 0.2],
  ['base-fronts', 0.3, 0.4],
  ['backsplash', 0.303, 0.306],
  ['wall', 0.21, 0.297],
  ['hardware', 0.1, 0.15],
])('gives the %s sample its real size', (surface, width, height) => {
  const sample = standOf('as-in-room', [demo.options[1]!]).samples.find((one) => one.surface === surface)!;
  expect(sample.size_m[0]).toBeCloseTo(width, 6);
  expect(sample.size_m[1]).toBeCloseTo(height, 6);
});

it.each(ARRANGEMENTS)('has every sample in every picture as wide as a tablet’s or wider: %s', (arrangement) => {
  const { room, samples } = standOf(arrangement);
  for (const viewpoint of room.viewpoints) {
    const lens = lensTowards(viewpoint.eye, viewpoint.target);
    const high = Math.tan((viewpoint.fov_deg * Math.PI) / 360);
    for (const { size_m, placed, at } of samples) {
      for (const [a, b] of [
        [0, 0],
        [size_m[0], 0],
        [0, size_m[1]],
        [size_m[0], size_m[1]],
      ] as const) {
        const point = placed === 'up' ? [at[0] + a, at[1] + b, at[2]] : [at[0] + a, at[1], at[2] + b];
        const along = (axis: readonly number[]) =>
          axis.reduce((sum, value, k) => sum + value * (point[k]! - viewpoint.eye[k]!), 0);
        const depth = along(lens.forward);
        const up = along(lens.up) / depth - lens.shift;
        expect(up).toBeLessThan(high);
        // Where the controls lie no sample does: the lowest fifth of the picture.
        expect(up).toBeGreaterThan(-high + 2 * 0.2 * high);
        expect(Math.abs(along(lens.right) / depth)).toBeLessThan(1.35 * high);
      }
    }
  }
});
