import { describe, expect, it } from 'vitest';
import type { Outdoors } from '../../src/engine/daylight/types';
import { withDaylight } from '../../src/engine/light/daylight';
import { directAt } from '../../src/engine/light/direct-map';
import { irradianceSpectrum } from '../../src/engine/light/reading';
import { solveGroup } from '../../src/engine/light/solve';
import { buildTransport, type Transport } from '../../src/engine/light/transport';
import type { LightRoom, Rect, Vec3, WindowAperture } from '../../src/engine/light/types';
import { settingLight } from '../../src/kitchen/study/setting-light';
import { demoProject } from '../io/demo';
import { boxRects, ceilingLamp, opening, overcastOutdoors, roomOf } from './box-room';

// Daylight in a room as a whole: what windows on several walls let in is found again, and depends on nothing else.

const [A, B, H] = [4, 3.4, 2.5];
const SKY_LX = 10_000;
const GROUND = 400;
const BEAM_LX = 60_000;
/** Over the corner of the walls x = 0 and y = B: it shines through windows in both. */
const SUN: Vec3 = [-0.6, 0.48, 0.64];
const outdoors: Outdoors = {
  ...overcastOutdoors(SKY_LX, GROUND),
  sun: { towards: SUN, normal_lx: BEAM_LX },
};

const byPart = { sky: 0, sun: 1, ground: 2, facing: 3 };
const open = (rect: Rect): WindowAperture => ({ ...opening(rect), groups: byPart });
const left = open({ origin: [0, 1, 0.9], u: [0, 1.4, 0], v: [0, 0, 1], surface: -1 });
const back = open({ origin: [1, B, 1.1], u: [1.2, 0, 0], v: [0, 0, 0.8], surface: -1 });
const right = open({ origin: [A, 0.8, 0.2], u: [0, 0, 2], v: [0, 0.9, 0], surface: -1 });
const areas = [1.4, 1.2 * 0.8, 2 * 0.9];

const roomWith = (windows: readonly WindowAperture[]): LightRoom =>
  roomOf(boxRects(A, B, H), { windows, lamps: [ceilingLamp(2, 1.5, H, 0.5, 2000, 4)] });
const room = roomWith([left, back, right]);
const byNight = buildTransport(room);
const t = withDaylight(room, byNight, outdoors);

const flux = (of: Transport, group: number): number =>
  of.direct[group]!.reduce((sum, lx, p) => sum + lx * of.patches.area[p]!, 0);

describe('energy', () => {
  // Lumens through openings without glass. Overcast sky on an upright plane: 0.396177 of the horizontal (closed form); level
  // ground of luminance L: pi L / 2; sun: its beam by the cosine, none on the wall it stands behind.
  const whole = areas.reduce((sum, area) => sum + area, 0);
  const sent = [
    0.396177 * SKY_LX * whole,
    BEAM_LX * (areas[0]! * -SUN[0] + areas[1]! * SUN[1]),
    (Math.PI / 2) * GROUND * whole,
    0,
  ];

  it('all patches together catch what comes through the windows, before any correction within 1.5 %', () => {
    for (const caught of t.daylightCaught) for (const ratio of caught) expect(Math.abs(ratio - 1)).toBeLessThan(0.015);
    // After it to what the closed forms and the engine's sums over directions differ by.
    for (const group of [0, 1, 2]) expect(Math.abs(flux(t, group) / sent[group]! - 1)).toBeLessThan(1e-3);
    expect(flux(t, 3)).toBe(0);
  });

  it.each([0, 1, 2])('what the room absorbs of group %d is what came in, in every band (0.15 %)', (group) => {
    const bands = 3;
    const reflectance = Float32Array.from({ length: 6 * bands }, (_, i) => 0.1 + 0.045 * i);
    const b = solveGroup(t, reflectance, t.direct[group]!, { bands });
    const { start, column, value } = t.factors;
    for (let k = 0; k < bands; k++) {
      let absorbed = 0;
      for (let i = 0; i < t.patches.count; i++) {
        let lx = t.direct[group]![i]!;
        for (let e = start[i]!; e < start[i + 1]!; e++) lx += value[e]! * b[column[e]! * bands + k]!;
        absorbed += t.patches.area[i]! * (1 - reflectance[t.patches.surface[i]! * bands + k]!) * lx;
      }
      expect(Math.abs(absorbed / sent[group]! - 1)).toBeLessThan(1.5e-3);
    }
  });

  it('lamps stay as they are, the same numbers, under any sky', () => {
    expect(t.direct[4]).toBe(byNight.direct[4]);
    expect(flux(byNight, 0) + flux(byNight, 1) + flux(byNight, 2)).toBe(0);
    expect(Math.abs(flux(t, 4) / 2000 - 1)).toBeLessThan(1e-3);
  });
});

const points: readonly (readonly [Vec3, Vec3])[] = [
  [
    [1.5, 1.3, 0],
    [0, 0, 1],
  ],
  [
    [2.4, 2.2, 0.9],
    [0, 0, 1],
  ],
  [
    [3, 0, 1.4],
    [0, 1, 0],
  ],
  [
    [1.1, 2.9, H],
    [0, 0, -1],
  ],
  [
    [0.8, B, 0.5],
    [0, -1, 0],
  ],
];

it('a second window adds its own light and changes nothing else, at points and on patches', () => {
  const under = (windows: readonly WindowAperture[]) => {
    const one = roomWith(windows);
    // Patches as in the room of all windows: what lies near a window is cut finer.
    return { room: one, transport: withDaylight({ ...one, coarse: room.coarse }, byNight, outdoors) };
  };
  const [both, first, second] = [[left, back], [left], [back]].map(under);
  const at = ({ room: of, transport }: ReturnType<typeof under>, [point, normal]: (typeof points)[number]) =>
    directAt(of, transport, point, normal);
  const gained: number[] = [];
  for (const place of points) {
    const [sum, one, other] = [both!, first!, second!].map((of) => at(of, place));
    // The lamp shines in either room: it is counted once.
    for (let g = 0; g < 4; g++) expect(Math.abs(sum![g]! - one![g]! - other![g]!)).toBeLessThan(1e-9 * (1 + sum![g]!));
    expect(sum![4]).toBe(one![4]);
    gained.push(Math.min(one![2]!, other![2]!));
  }
  // There are points that both windows light.
  expect(Math.max(...gained)).toBeGreaterThan(10);
  for (const group of [0, 1, 2]) {
    both!.transport.direct[group]!.forEach((lx, p) => {
      const apart = first!.transport.direct[group]![p]! + second!.transport.direct[group]![p]!;
      // Rounding of float32.
      expect(Math.abs(lx - apart)).toBeLessThan(1e-6 * (1 + apart));
    });
  }
});

it('a mirrored room under mirrored outdoors has mirrored daylight', () => {
  const mirrored = (rect: Rect): Rect => ({
    ...rect,
    origin: [rect.origin[0], B - rect.origin[1], rect.origin[2]],
    // The edges change places, so that the front stays the front.
    u: [rect.v[0], -rect.v[1], rect.v[2]],
    v: [rect.u[0], -rect.u[1], rect.u[2]],
  });
  const walls: WindowAperture[] = [left, back, { ...right, facing_deg: 25 }];
  const sky: Outdoors = { ...outdoors, facing_reflectance: 0.5 };
  const here = withDaylight(roomWith(walls), byNight, sky);
  const there = withDaylight(
    roomWith(walls.map((window) => ({ ...window, rect: mirrored(window.rect) }))),
    buildTransport(roomWith(walls.map((window) => ({ ...window, rect: mirrored(window.rect) })))),
    { ...sky, sun: { towards: [SUN[0], -SUN[1], SUN[2]], normal_lx: BEAM_LX } },
  );
  for (const [[x, y, z], [nx, ny, nz]] of points) {
    const one = directAt(room, here, [x, y, z], [nx, ny, nz]);
    const other = directAt(room, there, [x, B - y, z], [nx, -ny, nz]);
    for (let g = 0; g < 4; g++) expect(Math.abs(one[g]! - other[g]!)).toBeLessThan(1e-6 * (1 + one[g]!));
  }
  for (let g = 0; g < 4; g++) expect(Math.abs(flux(here, g) / flux(there, g) - 1)).toBeLessThan(1e-3);
});

it('a blind lets its share of all daylight through, and leaves its color and the lamps alone', () => {
  const project = demoProject();
  const daylight = { sky: 'clear', month: 6, day: 21, hour: 15 } as const;
  const under = (blind: number) => {
    const light = settingLight(project, { ...project.settings[1]!, daylight: { ...daylight, blind } });
    if (!light.ok) throw new Error(light.problem.text);
    return light.value;
  };
  const lit = (blind: number, lamps: boolean) => {
    const { spectra, levels } = under(blind);
    const direct = levels.map((_, group) => (group < 4 || lamps ? 100 + 10 * group : 0));
    return irradianceSpectrum(
      spectra,
      levels,
      direct,
      levels.map(() => null),
    );
  };
  const [dark, half, full] = [lit(0, true), lit(0.5, true), lit(1, true)];
  const alone = lit(1, false);
  full.forEach((power, i) => {
    expect(half[i]! - dark[i]!).toBeCloseTo(alone[i]! / 2, 9);
    expect(power - dark[i]!).toBeCloseTo(alone[i]!, 9);
  });
  expect(under(0.5).daylight).toBe(under(1).daylight);
});
