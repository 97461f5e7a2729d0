import { skyLuminance } from '../../src/engine/daylight/sky-kinds';
import type { Outdoors } from '../../src/engine/daylight/types';
import type { FineRect, LampFace, LightRoom, Rect, WindowAperture } from '../../src/engine/light/types';

/** Surfaces of a box: floor, ceiling, walls at x = 0, x = a, y = 0, y = b; fronts inwards. */
export function boxRects(a: number, b: number, h: number, surfaces: readonly number[] = [0, 1, 2, 3, 4, 5]): Rect[] {
  const x = [a, 0, 0] as const;
  const y = [0, b, 0] as const;
  const z = [0, 0, h] as const;
  const s = (i: number): number => surfaces[i]!;
  return [
    { origin: [0, 0, 0], u: x, v: y, surface: s(0) },
    { origin: [0, 0, h], u: y, v: x, surface: s(1) },
    { origin: [0, 0, 0], u: y, v: z, surface: s(2) },
    { origin: [a, 0, 0], u: z, v: y, surface: s(3) },
    { origin: [0, 0, 0], u: z, v: x, surface: s(4) },
    { origin: [0, b, 0], u: x, v: z, surface: s(5) },
  ];
}

export const withPattern = (rect: Rect): FineRect => ({
  ...rect,
  pattern: { s0: 0, t0: 0, su: 1, tu: 0, sv: 0, tv: 1 },
  piece: 0,
});

/** A light room whose fine rectangles are its coarse ones. */
export function roomOf(
  coarse: readonly Rect[],
  lights: { readonly lamps?: readonly LampFace[]; readonly windows?: readonly WindowAperture[] } = {},
  surfaces: readonly string[] = ['floor', 'ceiling', 'wall', 'wall', 'wall', 'wall'],
): LightRoom {
  const { lamps = [], windows = [] } = lights;
  const used = [...lamps.map(({ group }) => group), ...windows.flatMap((window) => Object.values(window.groups))];
  const groups = Math.max(0, ...used) + 1;
  return {
    surfaces,
    groups: Array.from({ length: groups }, (_, g) => `group ${g}`),
    coarse,
    fine: coarse.map(withPattern),
    lamps,
    windows,
    props: [],
    worktop: [0],
  };
}

/** A square lamp of side `side` m under the ceiling of a box, over the point x, y. */
export function ceilingLamp(x: number, y: number, h: number, side: number, lumens: number, group = 0): LampFace {
  return {
    group,
    lumens,
    rect: { origin: [x - side / 2, y - side / 2, h], u: [0, side, 0], v: [side, 0, 0], surface: -1 },
  };
}

/** A window without glass to an open view, all its light in one group. */
export const opening = (rect: Rect, group = 0): WindowAperture => ({
  rect,
  panes: 0,
  facing_deg: 0,
  groups: { sky: group, sun: group, ground: group, facing: group },
});

/** The traditional overcast sky of so many lx on the open horizontal, E = 7 pi Lz / 9 (Moon and Spencer, 1942), over dark ground. */
export const overcastOutdoors = (sky_lx: number, ground_cdm2 = 0): Outdoors => ({
  sky: skyLuminance('traditional', [0, 0, 1], (9 * sky_lx) / (7 * Math.PI)),
  sun: null,
  ground_cdm2,
  facing_reflectance: 0,
});

/** A sky of uniform luminance (ISO 15469 type 5), E = pi L, over dark ground. */
export const uniformOutdoors = (sky_lx: number, ground_cdm2 = 0): Outdoors => ({
  ...overcastOutdoors(sky_lx, ground_cdm2),
  sky: skyLuminance('uniform', [0, 0, 1], sky_lx / Math.PI),
});
