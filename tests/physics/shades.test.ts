import { expect, it } from 'vitest';
import { directAt } from '../../src/engine/light/direct-map';
import { directTexels } from '../../src/engine/light/direct-texels';
import { buildNodes } from '../../src/engine/light/nodes';
import { propDirect } from '../../src/engine/light/prop-gather';
import { buildTransport } from '../../src/engine/light/transport';
import type { LightRoom, PropMesh, Solid, Vec3 } from '../../src/engine/light/types';
import { boxRects, ceilingLamp, roomOf } from './box-room';
import { cornerParallel } from './configuration-factors';

// Boxes that stand for props, against Howell's factor to a rectangle from below a corner (see configuration-factors.ts): what a box
// hides of a lamp is the lamp's part in the shadow of its lower face, a rectangle again.

const SIZE = [6, 6, 3] as const;
const LAMP_SIDE = 1.6;
const LUMENS = 1000;
const EXITANCE = LUMENS / LAMP_SIDE ** 2;
const MIDDLE = 3;

const shaded = (shades: readonly Solid[], props: readonly PropMesh[] = []): LightRoom => ({
  ...roomOf(boxRects(...SIZE), { lamps: [ceilingLamp(MIDDLE, MIDDLE, SIZE[2], LAMP_SIDE, LUMENS)] }),
  shades,
  props,
});

const COARSE = { raysPerPatch: 64, patchSize: 1 };
const lit = (room: LightRoom, point: Vec3, normal: Vec3 = [0, 0, 1]): number =>
  directAt(room, buildTransport(room, COARSE), point, normal)[0]!;

const boxAt = (center: Vec3, half: Vec3): Solid => ({
  min: center.map((x, k) => x - half[k]!) as unknown as Vec3,
  max: center.map((x, k) => x + half[k]!) as unknown as Vec3,
});

/** From a point on the floor to a level rectangle overhead at height h: x0..x1, y0..y1 counted from the point. */
function overhead(x0: number, x1: number, y0: number, y1: number, h: number): number {
  const corner = (x: number, y: number): number =>
    Math.sign(x) * Math.sign(y) * cornerParallel(Math.abs(x), Math.abs(y), h);
  return corner(x1, y1) - corner(x0, y1) - corner(x1, y0) + corner(x0, y0);
}

it.each([
  [0, 0],
  [0.1, 0.05],
  [0.19, -0.19],
])(
  'a box between a lamp and the floor leaves what is seen past it, at (%f, %f) from under its middle, to a fiftieth',
  (x, y) => {
    const low = 1;
    const room = shaded([{ min: [MIDDLE - 0.2, MIDDLE - 0.2, low], max: [MIDDLE + 0.2, MIDDLE + 0.2, 1.4] }]);
    const lamp = overhead(-0.8 - x, 0.8 - x, -0.8 - y, 0.8 - y, 3);
    // Projected from the point to the ceiling, the lower face is three times as large.
    const clip = (v: number, about: number) => Math.min(0.8, Math.max(-0.8, v)) - about;
    const hidden = overhead(
      clip(x + (-0.2 - x) * 3, x),
      clip(x + (0.2 - x) * 3, x),
      clip(y + (-0.2 - y) * 3, y),
      clip(y + (0.2 - y) * 3, y),
      3,
    );
    const expected = EXITANCE * (lamp - hidden);
    // 64 shadow rays: a cell of the lamp counts whole or not at all.
    expect(Math.abs(lit(room, [MIDDLE + x, MIDDLE + y, 0]) - expected)).toBeLessThan(0.02 * EXITANCE * lamp);
    expect(lit(shaded([]), [MIDDLE + x, MIDDLE + y, 0])).toBeCloseTo(EXITANCE * lamp, 6);
  },
);

it('a box that stands on the floor leaves half of a lamp to a point against its side, and nothing below it', () => {
  // Its face lies under the middle of the lamp: what is seen past it is the other half, but for a strip of 1 cm.
  const room = shaded([{ min: [MIDDLE - 0.5, 1, 0], max: [MIDDLE, 5, 0.3] }]);
  const whole = EXITANCE * overhead(-0.8, 0.8, -0.8, 0.8, 3);
  expect(Math.abs(lit(room, [MIDDLE + 0.001, MIDDLE, 0]) / whole - 0.5)).toBeLessThan(0.02);
  expect(lit(room, [MIDDLE - 0.1, MIDDLE, 0])).toBe(0);
  // On its skin a surface is in no shade of it.
  expect(lit(room, [MIDDLE - 0.25, MIDDLE, 0.3])).toBeGreaterThan(0.9 * whole);
});

/** A square of two triangles looking up at height z, as a prop. */
const plate = (name: string, [x, y, z]: Vec3, half: number): PropMesh => ({
  name,
  surface: 0,
  positions: new Float32Array([
    x - half,
    y - half,
    z,
    x + half,
    y - half,
    z,
    x + half,
    y + half,
    z,
    x - half,
    y + half,
    z,
  ]),
  normals: new Float32Array([0, 0, 1, 0, 0, 1, 0, 0, 1, 0, 0, 1]),
  indices: new Uint32Array([0, 1, 2, 0, 2, 3]),
});

it.each([
  ['inside its own box', 0.05],
  ['on the skin of it', 0],
  ['a little outside of it, as round things are', -0.001],
])('a prop that lies %s is lit as if there were no box', (_, depth) => {
  const center: Vec3 = [MIDDLE, MIDDLE, 1];
  const own = boxAt([MIDDLE, MIDDLE, 1 + depth - 0.1], [0.1, 0.1, 0.1]);
  const mesh = plate('plate', center, 0.1);
  const bare = shaded([], [mesh]);
  const boxed = shaded([own], [mesh]);
  const [free] = propDirect(bare, buildTransport(bare, COARSE));
  const [inBox] = propDirect(boxed, buildTransport(boxed, COARSE));
  expect(Array.from(inBox!)).toEqual(Array.from(free!));
});

it('a prop under the box of another is in its shade', () => {
  const room = shaded([boxAt([MIDDLE, MIDDLE, 1.5], [1.5, 1.5, 0.02])], [plate('plate', [MIDDLE, MIDDLE, 1], 0.05)]);
  expect(propDirect(room, buildTransport(room, COARSE))[0]!.every((lx) => lx === 0)).toBe(true);
});

it('a box round a lamp face does not put it out', () => {
  const around = boxAt([MIDDLE, MIDDLE, 3], [1, 1, 0.1]);
  expect(lit(shaded([around]), [MIDDLE, MIDDLE, 0])).toBe(lit(shaded([]), [MIDDLE, MIDDLE, 0]));
});

it('finds the dark spot below a small thing that stands between the samples of the lattice', () => {
  const room = shaded([{ min: [1.05, 1.05, 0], max: [1.1, 1.1, 0.3] }]);
  const steps = directTexels(room, buildTransport(room, COARSE));
  let step = steps.next();
  while (!step.done) step = steps.next();
  const { atlas, data } = step.value;
  const [x, y, across] = atlas.blocks as unknown as [number, number, number];
  // Below its middle, and half a meter off.
  const at = (place: number) => Math.round((place / SIZE[0]) * (across - 1));
  const lx = (px: number, py: number) => data[4 * ((y + at(py)) * atlas.width + x + at(px))]!;
  expect(lx(1.08, 1.08)).toBe(0);
  expect(lx(1.58, 1.08)).toBeGreaterThan(10);
});

it('gathers all light of a furnace past boxes, and past small ones the very same rows', () => {
  const rowSums = (room: LightRoom): { sums: number[]; values: number[] } => {
    const { rows } = buildNodes(room, buildTransport(room, COARSE), { spacing: 1.5, rays: 256 });
    const sums = Array.from({ length: rows.count }, (_, i) =>
      rows.value.subarray(rows.start[i]!, rows.start[i + 1]!).reduce((a, b) => a + b, 0),
    );
    return { sums, values: Array.from(rows.value) };
  };
  const bare = rowSums(shaded([]));
  const wide = rowSums(shaded([boxAt([2, 2, 0.65], [0.2, 0.2, 0.02])]));
  const small = rowSums(shaded([boxAt([2, 2, 0.65], [0.2, 0.02, 0.02])]));
  // Every surface as bright as every other: a place receives 1 wherever its rays end.
  for (const { sums } of [bare, wide]) for (const sum of sums) expect(Math.abs(sum - 1)).toBeLessThan(1e-5);
  expect(wide.values).not.toEqual(bare.values);
  expect(small.values).toEqual(bare.values);
});
