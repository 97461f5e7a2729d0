import { expect, it } from 'vitest';
import type { Outdoors } from '../../src/engine/daylight/types';
import { addDirect, type DirectScene } from '../../src/engine/light/direct-scene';
import { lampEmitter } from '../../src/engine/light/emitters';
import { glassTable, paneTransmittance, readGlass } from '../../src/engine/light/glass';
import { buildRectBvh } from '../../src/engine/light/rect-bvh';
import { buildTransport } from '../../src/engine/light/transport';
import type { LampFace, Rect, Vec3 } from '../../src/engine/light/types';
import { prepareWindows, SKY } from '../../src/engine/light/window-light';
import { boxRects, ceilingLamp, opening, overcastOutdoors, roomOf, uniformOutdoors } from './box-room';

// Cases after CIE 171:2006 (5.3 area source, 5.4 flux, 5.5 glass, 5.7 obstruction, 5.9 and 5.11 openings); the values are
// regenerated from their analytical definitions, because the report's own tables have known errata (I. Ashdown, 2016).

const open = buildRectBvh([]);

function at(scene: DirectScene, point: Vec3, normal: Vec3 = [0, 0, 1]): number {
  const out = new Float64Array(1);
  addDirect(scene, ...point, ...normal, out);
  return out[0]!;
}

const lampScene = (lamp: LampFace, occluders: readonly Rect[] = []): DirectScene => ({
  emitters: [lampEmitter(lamp)],
  windows: [],
  bvh: occluders.length > 0 ? buildRectBvh(occluders) : open,
});

/** An opening without glass under a sky of 100 lx, dark ground: illuminance is the sky component in percent. */
const windowScene = (rect: Rect, outdoors: Outdoors = overcastOutdoors(100), facing_deg = 0): DirectScene => ({
  emitters: [],
  windows: prepareWindows([{ ...opening(rect), facing_deg }], outdoors),
  bvh: open,
});

const SKIES = [
  ['overcast', overcastOutdoors(100)],
  ['uniform', uniformOutdoors(100)],
] as const;

it('5.3 area source: E = M C below a panel in the ceiling, 3 m up (1e-6)', () => {
  const cases: [number, number[]][] = [
    [1, [0.034107, 0.032408, 0.027989, 0.022362, 0.016911]],
    [2, [0.064816, 0.062096, 0.05477, 0.0449, 0.034737]],
  ];
  for (const [long, factors] of cases) {
    const rect: Rect = { origin: [-long / 2, -0.5, 3], u: [0, 1, 0], v: [long, 0, 0], surface: -1 };
    const scene = lampScene({ group: 0, lumens: 1000 * long, rect });
    factors.forEach((c, i) => {
      expect(Math.abs(at(scene, [i / 2, 0, 0]) / 1000 - c)).toBeLessThan(1e-6);
    });
  }
});

it('a lamp gives nothing behind itself and nothing to a face turned away', () => {
  const scene = lampScene(ceilingLamp(0, 0, 3, 1, 1000));
  expect(at(scene, [0, 0, 3.1])).toBe(0);
  expect(at(scene, [0, 0, 0], [0, 0, -1])).toBe(0);
});

it("5.4 flux: before any correction the patches of a closed room catch a lamp's lumens within 1 %, after it exactly", () => {
  const t = buildTransport(roomOf(boxRects(4, 3, 2.5), { lamps: [ceilingLamp(1, 1, 2.5, 0.6, 5000)] }));
  expect(Math.abs(t.caught[0]! - 1)).toBeLessThan(0.01);
  let flux = 0;
  for (let i = 0; i < t.patches.count; i++) flux += t.patches.area[i]! * t.direct[0]![i]!;
  expect(flux).toBeCloseTo(5000, 1);
});

it('5.5 clear glass, refractive index 1.52: transmittance by angle', () => {
  const table = glassTable(1);
  for (const [deg, t] of [
    [0, 0.9183],
    [30, 0.916],
    [45, 0.9025],
    [60, 0.8435],
    [70, 0.7247],
    [80, 0.456],
  ] as const) {
    const cosine = Math.cos((deg * Math.PI) / 180);
    expect(paneTransmittance(cosine)).toBeCloseTo(t, 4);
    expect(readGlass(table, cosine)).toBeCloseTo(t, 3);
  }
  // A pile of two plates at normal incidence: (1 - R) / (1 + 3 R), R = (0.52 / 2.52)^2 (Stokes, 1862).
  const r = (0.52 / 2.52) ** 2;
  expect(readGlass(glassTable(2), 1)).toBeCloseTo((1 - r) / (1 + 3 * r), 6);
});

it('5.7 obstruction: half a lamp hidden gives half its light, also where rays must find the edge (1 %)', () => {
  const lamp = ceilingLamp(0, 0, 3, 1, 1000);
  const whole = at(lampScene(lamp), [0, 0, 0]);
  for (const edge of [0, 0.1, -0.17]) {
    // A screen just under the lamp hides all of it beyond x = edge: what is left is a smaller lamp.
    const screen: Rect = { origin: [edge, -2, 2.99], u: [4, 0, 0], v: [0, 4, 0], surface: 0 };
    const rest: Rect = { origin: [-0.5, -0.5, 3], u: [0, 1, 0], v: [0.5 + edge, 0, 0], surface: -1 };
    const expected = at(lampScene({ group: 0, lumens: 1000 * (0.5 + edge), rect: rest }), [0, 0, 0]);
    expect(Math.abs(at(lampScene(lamp, [screen]), [0, 0, 0]) - expected)).toBeLessThan(0.01 * whole);
  }
});

it('an upright opening to the whole sky gets 0.396 of the horizontal under an overcast sky, half under a uniform; a roof gets all', () => {
  const upright: Rect = { origin: [0, 0, 0], u: [0, 1, 0], v: [0, 0, 1], surface: -1 };
  const roof: Rect = { origin: [0, 0, 1], u: [0, 1, 0], v: [1, 0, 0], surface: -1 };
  const skyPart = (rect: Rect, outdoors: Outdoors) => prepareWindows([opening(rect)], outdoors)[0]!.exitance[SKY];
  expect(skyPart(upright, overcastOutdoors(100))).toBeCloseTo(39.6177, 1);
  expect(skyPart(roof, overcastOutdoors(100))).toBeCloseTo(100, 1);
  // Under a uniform sky an upright plane sees half of it.
  expect(skyPart(upright, uniformOutdoors(100))).toBeCloseTo(50, 1);
  expect(skyPart(roof, uniformOutdoors(100))).toBeCloseTo(100, 1);
});

it.each(SKIES)(
  '5.9 roof opening, no glass, 3 m above: sky component of the %s sky, % (0.5 % of each value)',
  (sky, outdoors) => {
    const cases = {
      overcast: [
        [1, [4.359, 4.108, 3.467, 2.674, 1.936]],
        [4, [42.996, 41.96, 38.927, 34.185, 28.329]],
      ],
      uniform: [
        [1, [3.411, 3.241, 2.799, 2.236, 1.691]],
        [4, [35.768, 34.965, 32.622, 28.975, 24.472]],
      ],
    } as const;
    for (const [side, values] of cases[sky]) {
      const rect: Rect = { origin: [-side / 2, -side / 2, 3], u: [0, side, 0], v: [side, 0, 0], surface: -1 };
      values.forEach((percent, i) => {
        expect(Math.abs(at(windowScene(rect, outdoors), [i / 2, 0, 0]) / percent - 1)).toBeLessThan(0.005);
      });
    }
  },
);

it.each(SKIES)(
  '5.11 facade opening 2 x 1 m, no glass: %s sky component at 0.5 to 3 m, % (0.5 % of each value)',
  (sky, outdoors) => {
    const cases = {
      overcast: [
        [0, [22.668, 9.05, 3.89, 1.886, 0.602]],
        [0.2, [23.292, 10.943, 5.102, 2.582, 0.854]],
      ],
      uniform: [
        [0, [24.854, 11.147, 5.304, 2.786, 0.993]],
        [0.2, [23.797, 12.605, 6.494, 3.567, 1.327]],
      ],
    } as const;
    for (const [sill, values] of cases[sky]) {
      const rect: Rect = { origin: [0, -1, sill], u: [0, 2, 0], v: [0, 0, 1], surface: -1 };
      [0.5, 1, 1.5, 2, 3].forEach((distance, i) => {
        const percent = at(windowScene(rect, outdoors), [distance, 0, 0]);
        expect(Math.abs(percent / values[i]! - 1)).toBeLessThan(0.005);
      });
    }
  },
);

it('overcast sky component at a corner, closed forms (Walsh): upright 0.04525138, roof 0.15949725 (0.3 %)', () => {
  const upright: Rect = { origin: [0, 0, 0], u: [0, 1, 0], v: [0, 0, 1], surface: -1 };
  expect(Math.abs(at(windowScene(upright), [1, 0, 0]) / 4.525138 - 1)).toBeLessThan(0.003);
  const roof: Rect = { origin: [0, 0, 1], u: [0, 1, 0], v: [1, 0, 0], surface: -1 };
  expect(Math.abs(at(windowScene(roof), [0, 0, 0]) / 15.949725 - 1)).toBeLessThan(0.003);
});

it('ground light through a window: a ceiling sees ground only, E = reflectance x sky x form factor', () => {
  const rect: Rect = { origin: [0, -1, 0.9], u: [0, 2, 0], v: [0, 0, 1.2], surface: -1 };
  const bright = at(windowScene(rect, overcastOutdoors(100, (0.4 * 100) / Math.PI)), [1.2, 0.3, 2.5], [0, 0, -1]);
  const lamp = lampScene({ group: 0, rect, lumens: 0.4 * 100 * 2.4 });
  expect(bright).toBeCloseTo(at(lamp, [1.2, 0.3, 2.5], [0, 0, -1]), 3);
});
