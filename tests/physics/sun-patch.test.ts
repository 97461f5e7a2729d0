import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Outdoors } from '../../src/engine/daylight/types';
import { withDaylight } from '../../src/engine/light/daylight';
import { directAt } from '../../src/engine/light/direct-map';
import { paneTransmittance } from '../../src/engine/light/glass';
import { buildNodes } from '../../src/engine/light/nodes';
import { buildRectBvh } from '../../src/engine/light/rect-bvh';
import { sunIrradiance } from '../../src/engine/light/sun-irradiance';
import { surfaceLights } from '../../src/engine/light/surface-light';
import { buildTransport } from '../../src/engine/light/transport';
import type { Rect, Vec3, WindowAperture } from '../../src/engine/light/types';
import { prepareWindows } from '../../src/engine/light/window-light';
import { boxRects, opening, overcastOutdoors, roomOf } from './box-room';

// Sun through a window: the beam is known in closed form, so is the place where it falls.

const BEAM_LX = 80_000;
const RADIANS = Math.PI / 180;
/** Diameter of the sun's disc seen from 1 au is 32 arc minutes: shadows blur by 9.3 mm for each metre of the beam. */
const BLUR = 0.0093;

/** Towards a sun before the wall x = 0: degrees aside of straight out (towards +y), and above the horizon. */
const towards = (aside_deg: number, elevation_deg: number): Vec3 => [
  -Math.cos(aside_deg * RADIANS) * Math.cos(elevation_deg * RADIANS),
  Math.sin(aside_deg * RADIANS) * Math.cos(elevation_deg * RADIANS),
  Math.sin(elevation_deg * RADIANS),
];
const inSun = (direction: Vec3): Outdoors => ({
  ...overcastOutdoors(0),
  sun: { towards: direction, normal_lx: BEAM_LX },
});

/** 1.4 m wide, 1 m high, sill 0.9 m, in the wall x = 0. */
const GLASS: Rect = { origin: [0, 1, 0.9], u: [0, 1.4, 0], v: [0, 0, 1], surface: -1 };
const window: WindowAperture = { ...opening(GLASS), panes: 2 };
const open = buildRectBvh([]);
const sunAt = (aperture: WindowAperture, sun: Vec3, point: Vec3, normal: Vec3 = [0, 0, 1], occluders: Rect[] = []) =>
  sunIrradiance(
    prepareWindows([aperture], inSun(sun))[0]!,
    occluders.length > 0 ? buildRectBvh(occluders) : open,
    ...point,
    ...normal,
    true,
  );

it.each([
  // Clear glass of index 1.52 by Fresnel's equations: 0.9160, 0.9025 and 0.8435 at 30, 45 and 60 degrees. Two panes with all
  // reflections between them and for either polarization: 0.9 %, 2.1 % and 6.9 % more than the square.
  [30, 0.916, 1.00886],
  [45, 0.9025, 1.02129],
  [60, 0.8435, 1.06862],
])('straight before a window with the sun %d degrees up: E cos(theta) T(theta)', (elevation, pane, between) => {
  const sun = towards(0, elevation);
  // Where the beam through the middle of the glass meets the floor.
  const x = 1.4 / Math.tan(elevation * RADIANS);
  const floor = BEAM_LX * Math.sin(elevation * RADIANS);
  for (const [panes, through] of [
    [0, 1],
    [1, pane],
    [2, pane ** 2 * between],
  ] as const) {
    const lx = sunAt({ ...window, panes }, sun, [x, 1.7, 0]);
    // Four digits of the table, and the engine's own table of angles.
    expect(Math.abs(lx / (floor * through) - 1)).toBeLessThan(4e-4);
  }
  expect(
    Math.abs(
      sunAt({ ...window, panes: 0 }, sun, [x, 1.7, 0], [-1, 0, 0]) / (floor / Math.tan(elevation * RADIANS)) - 1,
    ),
  ).toBeLessThan(1e-9);
  expect(sunAt(window, sun, [x, 1.7, 0], [0, 0, -1])).toBe(0);
});

it('lights the floor where the parallel projection of the glass falls, and nothing else, but for the soft edge', () => {
  let [full, dark, soft] = [0, 0, 0];
  fc.assert(
    fc.property(
      fc.integer({ min: -70, max: 70 }),
      fc.integer({ min: 5, max: 75 }),
      fc.integer({ min: -100, max: 1100 }).map((k) => k / 1000),
      fc.integer({ min: -100, max: 1100 }).map((k) => k / 1000),
      (aside, elevation, s, t) => {
        const sun = towards(aside, elevation);
        // A ray from this place of the glass plane, down the beam to the floor.
        const height = 0.9 + t;
        const along = height / sun[2];
        const point: Vec3 = [-sun[0] * along, 1 + 1.4 * s - sun[1] * along, 0];
        const lx = sunAt(window, sun, point);
        const cosine = -sun[0];
        const whole = BEAM_LX * sun[2] * paneTransmittance(cosine, 2);
        // The sun's disc over the glass plane: a spot this wide at most.
        const blur = ((BLUR / 2) * along) / cosine;
        const inside = Math.min(1.4 * s, 1.4 - 1.4 * s, t, 1 - t);
        if (inside > blur) {
          full++;
          expect(Math.abs(lx / whole - 1)).toBeLessThan(1e-3);
        } else if (inside < -blur) {
          dark++;
          expect(lx).toBe(0);
        } else {
          soft++;
          expect(lx).toBeGreaterThanOrEqual(0);
          expect(lx).toBeLessThanOrEqual(whole * 1.001);
        }
      },
    ),
    { numRuns: 400 },
  );
  // The outline is what is tested: most places are clear of its edge, on both sides.
  expect(Math.min(full, dark)).toBeGreaterThan(20);
  expect(soft).toBeLessThan(full + dark);
});

it('blurs the edge by 9.3 mm for each metre of the beam: 28 mm on a floor 3 m below a roof light', () => {
  const roof: Rect = { origin: [0, 0, 3], u: [0, 1, 0], v: [1, 0, 0], surface: -1 };
  const across = Array.from({ length: 81 }, (_, i) => -0.02 + 0.0005 * i);
  const shares = across.map((x) => sunAt(opening(roof), [0, 0, 1], [x, 0.5, 0]) / BEAM_LX);
  for (let i = 1; i < shares.length; i++) expect(shares[i]!).toBeGreaterThanOrEqual(shares[i - 1]! - 1e-9);
  const first = across[shares.findIndex((share) => share > 0)]!;
  const last = across[shares.findIndex((share) => share > 1 - 1e-9)]!;
  // 24 points of the disc see its rim to a few per cent of its width.
  expect(last - first).toBeGreaterThan(0.85 * 3 * BLUR);
  expect(last - first).toBeLessThan(1.02 * 3 * BLUR);
  // On the outline itself half of the disc is seen; half of a disc of 24 points, to one point.
  expect(Math.abs(shares[40]! - 0.5)).toBeLessThan(1.01 / 24);
});

it('is stopped by what stands in the beam, and sharp close behind it', () => {
  const sun = towards(0, 45);
  // A board 5 cm above the floor, its edge across the beam.
  const board: Rect[] = [{ origin: [1.5, 0, 0.05], u: [1, 0, 0], v: [0, 3, 0], surface: 0 }];
  const at = (x: number) => sunAt(window, sun, [x, 1.7, 0], [0, 0, 1], board);
  const whole = sunAt(window, sun, [1.4, 1.7, 0]);
  // Its shadow begins 5 cm behind the edge, blurred by less than a millimetre.
  expect(at(1.549)).toBe(whole);
  expect(at(1.551)).toBe(0);
});

it('shines through no window it does not stand before, nor over a wall across the way', () => {
  const point: Vec3 = [1.4, 1.7, 0];
  expect(prepareWindows([window], inSun([0.6, 0, 0.8]))[0]!.sun).toBeNull();
  expect(sunAt({ ...window, facing_deg: 46 }, towards(0, 45), point)).toBe(0);
  expect(sunAt({ ...window, facing_deg: 44 }, towards(0, 45), point)).toBeGreaterThan(0);
  // Aside, a long wall sinks with the cosine of the azimuth: 40 degrees straight on is 30.8 degrees at 45 degrees aside.
  expect(prepareWindows([{ ...window, facing_deg: 40 }], inSun(towards(45, 30)))[0]!.sun).toBeNull();
  expect(prepareWindows([{ ...window, facing_deg: 40 }], inSun(towards(45, 31.5)))[0]!.sun).not.toBeNull();
});

it.each([
  [0, 30],
  [35, 20],
  [-50, 55],
])(
  'all surfaces of a room together catch area x cos x T x beam (0.5 %): %d degrees aside, %d up',
  (aside, elevation) => {
    const sun = towards(aside, elevation);
    const room = roomOf(boxRects(4, 3.4, 2.5), {
      windows: [{ ...window, groups: { sky: 0, ground: 0, facing: 0, sun: 1 } }],
    });
    const t = withDaylight(room, buildTransport(room), inSun(sun));
    expect(Math.abs(t.daylightCaught[0]![3]! - 1)).toBeLessThan(0.005);
    const flux = t.direct[1]!.reduce((sum, lx, p) => sum + lx * t.patches.area[p]!, 0);
    const sent = 1.4 * 1 * -sun[0] * paneTransmittance(-sun[0], 2) * BEAM_LX;
    // What the quadrature missed is scaled away; the rest is the table of the glass.
    expect(Math.abs(flux / sent - 1)).toBeLessThan(1e-3);
    expect(t.direct[0]!.every((lx) => lx === 0)).toBe(true);
    // Linear in the beam: half the sun, half the light, at a point as on the patches.
    const half = withDaylight(room, t, { ...inSun(sun), sun: { towards: sun, normal_lx: BEAM_LX / 2 } });
    t.direct[1]!.forEach((lx, p) => {
      expect(Math.abs(half.direct[1]![p]! - lx / 2)).toBeLessThan(1e-4 * BEAM_LX);
    });
    const point: Vec3 = [2, 1.2, 0];
    expect(directAt(room, half, point, [0, 0, 1])[1]!).toBeCloseTo(directAt(room, t, point, [0, 0, 1])[1]! / 2, 6);
  },
);

it.each([0.02, 0.06, 0.15])(
  'the mean of a floor holds all the sun of a slit %d m wide, wherever it lies (2 %)',
  (width) => {
    const sun = towards(0, 45);
    for (let k = 0; k < 5; k++) {
      const slit: Rect = { origin: [0, 1 + 0.037 * k, 0.9], u: [0, width, 0], v: [0, 0, 1], surface: -1 };
      const room = roomOf(boxRects(4, 3.4, 2.5), { windows: [{ ...opening(slit), panes: 0 }] });
      const t = withDaylight(room, buildTransport(room, { raysPerPatch: 4, patchSize: 1 }), inSun(sun));
      const nodes = buildNodes(room, t, { rays: 8, spacing: 2 });
      const floor = surfaceLights(room, t, nodes).find(({ facing }) => facing === 'up')!;
      // Sun alone: the sky is dark here. Conservation of flux: area of the slit x cos x beam, all of it on the floor.
      expect(floor.direct[0]! * floor.area_m2).toBeGreaterThan(0.98 * width * Math.SQRT1_2 * BEAM_LX);
      expect(floor.direct[0]! * floor.area_m2).toBeLessThan(1.02 * width * Math.SQRT1_2 * BEAM_LX);
    }
  },
);
