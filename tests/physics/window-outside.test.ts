import { describe, expect, it } from 'vitest';
import type { Outdoors } from '../../src/engine/daylight/types';
import { addDirect } from '../../src/engine/light/direct-scene';
import { buildRectBvh } from '../../src/engine/light/rect-bvh';
import type { Rect, Vec3 } from '../../src/engine/light/types';
import { prepareWindows } from '../../src/engine/light/window-light';
import { opening, overcastOutdoors, uniformOutdoors } from './box-room';

// Cases in the manner of CIE 171:2006 5.12-5.14 (openings with external reflection), regenerated from closed forms, because
// the report's tables were not read: what lies outside is cut at a level line of the opening, so that each part is a
// smaller opening whose form factor is known. Opening 2 m wide and 1 m high in the wall x = 0, no glass.

const { PI, atan, asin, sin, cos, sqrt, tan } = Math;
const SILL = 0.2;
const TOP = 1.2;
const OPENING: Rect = { origin: [0, -1, SILL], u: [0, 2, 0], v: [0, 0, TOP - SILL], surface: -1 };
const DISTANCES = [0.5, 1, 1.5, 2, 3];

/** Form factor from a level point to an upright rectangle, its foot in the point's plane, one lower corner straight ahead. */
const upright = (d: number, w: number, h: number): number =>
  (atan(w / d) - (d / sqrt(d * d + h * h)) * atan(w / sqrt(d * d + h * h))) / (2 * PI);

/** The same from a point that faces a parallel rectangle, one corner straight ahead (Howell's catalogue of configuration factors). */
function parallel(d: number, w: number, h: number): number {
  const [x, y] = [w / d, h / d];
  const part = (p: number, q: number) => (p / sqrt(1 + p * p)) * atan(q / sqrt(1 + p * p));
  return (part(x, y) + part(y, x)) / (2 * PI);
}

/** Walsh: share of the horizontal illuminance of an overcast sky, for a level point and an upright opening as in `upright`. */
function walsh(d: number, w: number, h: number): number {
  const [a, c, b] = [atan(h / d), atan(w / d), atan(w / sqrt(d * d + h * h))];
  return (3 / (14 * PI)) * (c - b * cos(a)) + (2 / (7 * PI)) * (asin(sin(a) * sin(c)) - sin(a) * cos(a) * sin(b));
}

/** A part of the opening between two heights over the point, both halves. */
const between = (of: (d: number, w: number, h: number) => number, d: number, from: number, to: number): number =>
  to > from ? 2 * (of(d, 1, to) - of(d, 1, from)) : 0;

const open = buildRectBvh([]);

/** Lux by sky, ground and facing wall at a point. */
function partsAt(outdoors: Outdoors, facing_deg: number, point: Vec3, normal: Vec3): number[] {
  const window = { ...opening(OPENING), facing_deg, groups: { sky: 0, ground: 1, facing: 2, sun: 3 } };
  const out = new Float64Array(4);
  addDirect({ emitters: [], windows: prepareWindows([window], outdoors), bvh: open }, ...point, ...normal, out);
  return [...out.subarray(0, 3)];
}

it('the closed forms give their published corner values', () => {
  expect(upright(1, 1, 1)).toBeCloseTo(0.0557342, 7);
  expect(parallel(1, 1, 1)).toBeCloseTo(0.13853161, 7);
  expect(walsh(1, 1, 1)).toBeCloseTo(0.04525138, 7);
});

describe.each([
  ['uniform', uniformOutdoors(100), upright, 50],
  ['overcast', overcastOutdoors(100), walsh, 39.6177],
] as const)('a uniform wall across the way under a sky of 100 lx, %s', (_, outdoors, skyForm, uprightLx) => {
  // Seen in a plane along the wall it rises to a line of the glass: D tan(elevation) above the point.
  it.each([15, 30, 50])('up to %d degrees hides the sky behind it and lights by its own luminance', (facing_deg) => {
    const wall = { ...outdoors, facing_reflectance: 0.4 };
    for (const d of DISTANCES) {
      const cut = Math.min(TOP, Math.max(SILL, d * tan((facing_deg * PI) / 180)));
      const [sky, ground, facing] = partsAt(wall, facing_deg, [d, 0, 0], [0, 0, 1]);
      const whole = 100 * between(skyForm, d, SILL, TOP);
      // The wall is lit by half a sky and black ground, and sends back 0.4 of it.
      const wantedFacing = 0.4 * uprightLx * between(upright, d, SILL, cut);
      // 0.5 % of what the open view gives, as for an opening alone.
      expect(Math.abs(sky! - 100 * between(skyForm, d, cut, TOP))).toBeLessThan(0.005 * whole);
      expect(Math.abs(facing! - wantedFacing)).toBeLessThan(1e-4 * wantedFacing + 1e-9);
      expect(ground).toBe(0);
    }
  });

  it('changes nothing where it ends at the horizon, and leaves no sky where it stands above all of the opening', () => {
    for (const d of DISTANCES) {
      const [sky, , facing] = partsAt({ ...outdoors, facing_reflectance: 0.4 }, 0, [d, 0, 0], [0, 0, 1]);
      expect(facing).toBe(0);
      expect(Math.abs(sky! / (100 * between(skyForm, d, SILL, TOP)) - 1)).toBeLessThan(0.005);
    }
    const [sky, , facing] = partsAt({ ...outdoors, facing_reflectance: 0.4 }, 70, [0.5, 0, 0], [0, 0, 1]);
    expect(sky).toBe(0);
    expect(Math.abs(facing! / (0.4 * uprightLx * between(upright, 0.5, SILL, TOP)) - 1)).toBeLessThan(0.005);
  });
});

it('an upright point sees ground below its own height, then the wall, then the sky: each by its form factor', () => {
  const eye = 0.6;
  const outdoors = { ...uniformOutdoors(100, 20 / PI), facing_reflectance: 0.5 };
  for (const d of DISTANCES) {
    const cut = Math.min(TOP - eye, d * tan((20 * PI) / 180));
    const [sky, ground, facing] = partsAt(outdoors, 20, [d, 0, eye], [-1, 0, 0]);
    // The wall gets 50 lx from the sky and half of the ground's 20 lm/m2.
    const wanted = [
      100 * between(parallel, d, cut, TOP - eye),
      20 * 2 * parallel(d, 1, eye - SILL),
      0.5 * 60 * between(parallel, d, 0, cut),
    ];
    const whole = 100 * between(parallel, d, 0, TOP - eye);
    // One luminance each, and edges that cells follow: exact but for the table of the sky.
    expect(Math.abs(sky! - wanted[0]!)).toBeLessThan(1e-4 * whole);
    expect(Math.abs(ground! / wanted[1]! - 1)).toBeLessThan(1e-4);
    expect(Math.abs(facing! - wanted[2]!)).toBeLessThan(1e-4 * whole);
  }
});

it('a level face turned down sees nothing but the ground, whatever stands above it', () => {
  const outdoors = { ...uniformOutdoors(100, 20 / PI), facing_reflectance: 0.5 };
  const [sky, ground, facing] = partsAt(outdoors, 30, [1, 0, 2], [0, 0, -1]);
  expect([sky, facing]).toEqual([0, 0]);
  expect(Math.abs(ground! / (20 * between(upright, 1, 2 - TOP, 2 - SILL)) - 1)).toBeLessThan(1e-4);
});
