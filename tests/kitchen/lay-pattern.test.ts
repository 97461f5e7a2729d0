import fc from 'fast-check';
import { expect, it } from 'vitest';
import scene from '../../scenes/l-island.json';
import type { PatternSpec } from '../../src/engine/pattern/types';
import type { SurfaceId } from '../../src/engine/surface';
import { buildRoom } from '../../src/kitchen/build-room';
import { centred, pieceShifts, placeOnPattern } from '../../src/kitchen/study/lay-pattern';
import type { Kitchen } from '../../src/model/kitchen';
import type { Laying } from '../../src/model/project';

const { light } = buildRoom(scene as unknown as Kitchen);

const TILE: PatternSpec = {
  pattern: { kind: 'plain' },
  layout: 'stack',
  piece_mm: [200, 100],
  joint_mm: 2,
  variation: 'V0',
  shares: [0.97, 0.03],
  seed: 1,
};
const SLAB: PatternSpec = {
  pattern: { kind: 'veined', spacing_mm: 200, direction_deg: 20 },
  layout: 'plain',
  variation: 'V1',
  shares: [0.9, 0.1],
  seed: 1,
  slab: { size_mm: [3050, 1400], match: 'bookmatch' },
};

/** Where each piece of a surface lies on the pattern: s from, to, t from, to, m. Edges of tiles are left out. */
function extents(surface: SurfaceId, shifts: Float32Array | null): ReadonlyMap<number, number[]> {
  const index = light.surfaces.indexOf(surface);
  const found = new Map<number, number[]>();
  for (const rect of light.fine.filter((one) => one.surface === index)) {
    if (Math.min(Math.hypot(...rect.u), Math.hypot(...rect.v)) < 0.03) continue;
    const box = found.get(rect.piece) ?? [Infinity, -Infinity, Infinity, -Infinity];
    for (const [u, v] of [
      [0, 0],
      [1, 0],
      [0, 1],
      [1, 1],
    ] as const) {
      const [s, t] = placeOnPattern(rect, u, v, shifts);
      box.splice(0, 4, Math.min(box[0]!, s), Math.max(box[1]!, s), Math.min(box[2]!, t), Math.max(box[3]!, t));
    }
    found.set(rect.piece, box);
  }
  return found;
}

const cutAt = (place: number, module: number): number => {
  const rest = ((place % module) + module) % module;
  return Math.min(rest, module) < 1e-5 || rest > module - 1e-5 ? module : rest;
};

// ANSI A108.02: center the layout, no cuts under half a tile where it can be avoided.
it('cuts tiles equally at both edges, and never under half a tile', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.3, max: 6, noNaN: true }),
      fc.double({ min: 0.02, max: 0.9, noNaN: true }),
      (run, module) => {
        fc.pre(run > module);
        const shift = centred(0, run, module);
        const [left, right] = [cutAt(-shift, module), cutAt(run + shift, module)];
        expect(left).toBeCloseTo(right, 4);
        expect(right).toBeGreaterThanOrEqual(module / 2 - 1e-4);
      },
    ),
  );
});

it.each<readonly [SurfaceId, boolean]>([
  ['floor', false],
  ['backsplash', true],
])('centers tiles on the %s', (surface, upright) => {
  const [[s0, s1, t0, t1]] = [...extents(surface, pieceShifts(light, surface, TILE, { layout: 'stack' })).values()] as [
    number[],
  ];
  const rest = (place: number, module: number) => ((place % module) + module) % module;
  expect(Math.sin((Math.PI * (s0! + s1!)) / 0.202)).toBeCloseTo(0, 3);
  if (upright) expect(rest(t0! + 1e-5, 0.102)).toBeLessThan(1e-4);
  else expect(Math.sin((Math.PI * (t0! + t1!)) / 0.102)).toBeCloseTo(0, 3);
});

it('starts in the corner when told to', () => {
  const laying: Laying = { layout: 'stack', start: 'corner' };
  const [[s0, , t0]] = [...extents('floor', pieceShifts(light, 'floor', TILE, laying)).values()] as [number[]];
  expect([s0, t0]).toEqual([expect.closeTo(0, 5), expect.closeTo(0, 5)]);
});

it('cuts each piece of a counter from a strip of the slab of its own, without a seam where the slab is long enough', () => {
  const pieces = [...extents('counter', pieceShifts(light, 'counter', SLAB, { layout: 'plain' })).values()];
  expect(pieces.length).toBeGreaterThan(1);
  for (const [s0, s1, t0, t1] of pieces) {
    expect(s0).toBeGreaterThanOrEqual(0);
    if (s1! - s0! < 3) expect(s1).toBeLessThanOrEqual(3.05);
    expect(t0).toBeGreaterThanOrEqual(0);
    expect(t1).toBeLessThanOrEqual(1.4);
  }
  // Strips of one slab do not overlap.
  const [a, b] = pieces.map((box) => box.slice(2));
  expect(a![1]! <= b![0]! || b![1]! <= a![0]!).toBe(true);
});

it('keeps the strips of a turned slab on the slab', () => {
  const turned: PatternSpec = { ...SLAB, turn_deg: 90, slab: { size_mm: [3050, 2400], match: 'slip' } };
  for (const [s0, s1, t0, t1] of extents(
    'island-counter',
    pieceShifts(light, 'island-counter', turned, { layout: 'plain' }),
  ).values()) {
    // Turned by a quarter counter-clockwise, the slab's length is along t and its width against s.
    expect([-s1! >= 0, -s0! <= 2.4, t0! >= 0, t1! <= 3.05]).toEqual([true, true, true, true]);
  }
});

it('moves the figure along the slab by what is asked', () => {
  const at = (shift_mm: number) =>
    [
      ...extents(
        'island-counter',
        pieceShifts(light, 'island-counter', SLAB, { layout: 'plain', slab: { match: 'slip', shift_mm } }),
      ).values(),
    ][0]!;
  expect(at(250)[0]! - at(0)[0]!).toBeCloseTo(0.25, 5);
});

it('leaves boards, veneers and paint where they are', () => {
  const boards: PatternSpec = { ...TILE, pattern: { kind: 'grain', board_mm: [120, 1200] }, layout: 'planks' };
  expect(pieceShifts(light, 'floor', boards, { layout: 'planks' })).toBeNull();
  expect(pieceShifts(light, 'base-fronts', { ...SLAB, slab: undefined }, { layout: 'plain' })).toBeNull();
});
