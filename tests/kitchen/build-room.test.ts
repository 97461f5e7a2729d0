import { expect, it } from 'vitest';
import scene from '../../scenes/l-island.json';
import { SURFACES } from '../../src/engine/surface';
import { buildRoom } from '../../src/kitchen/build-room';
import type { Kitchen } from '../../src/model/kitchen';
import { GROUPS } from '../../src/model/project';
import { area, facing, pictureShares } from './geometry';
import { brokenInvariants } from './invariants';

const kitchen = scene as unknown as Kitchen;
const room = buildRoom(kitchen);
const { light } = room;
const index = (surface: (typeof SURFACES)[number]): number => SURFACES.indexOf(surface);

it('is closed, without overlaps, hidden or outward faces, and filled exactly by its modules', () => {
  expect(brokenInvariants(kitchen, 2500)).toEqual([]);
});

it('has the shell the record gives', () => {
  expect(room.size).toEqual([4.6, 4, 2.5]);
  const total = (surface: (typeof SURFACES)[number]): number =>
    light.coarse.filter((r) => r.surface === index(surface)).reduce((sum, r) => sum + area(r), 0);
  // Closed form: floor less what the runs cover (back run, short leg from the end of its counter, island's body).
  const runs = 0.62 * 4.6 + 0.62 * (4 - 0.62 - 0.91) + 1.8 * (2.25 - 1.6);
  expect(total('floor')).toBeCloseTo(4.6 * 4 - runs, 9);
  // Ceiling less six lamps and the chimney of the hood.
  expect(total('ceiling')).toBeCloseTo(4.6 * 4 - 6 * 0.2 * 0.2 - 0.3 * 0.27, 9);
});

it('keeps within its budget of rectangles', () => {
  expect(light.fine.length).toBeLessThanOrEqual(950);
  expect(light.coarse.length).toBeLessThanOrEqual(180);
});

it('lists every surface in order, and uses every one of them', () => {
  expect(room.surfaces).toEqual(SURFACES);
  expect(light.surfaces).toEqual(SURFACES);
  const used = new Set([...light.fine, ...light.props].map((part) => part.surface));
  expect(SURFACES.filter((_, i) => !used.has(i))).toEqual([]);
});

it('has a coarse field for every finish of a flat part', () => {
  const coarse = new Set(light.coarse.map((rect) => rect.surface));
  expect(SURFACES.filter((_, i) => !coarse.has(i))).toEqual(['hardware', 'tap']);
});

it('works on the counter tops of the walls only', () => {
  const top = (0.15 + 0.72 + 0.03).toFixed(6);
  let total = 0;
  for (const i of light.worktop) {
    const rect = light.fine[i]!;
    expect(rect.surface).toBe(index('counter'));
    expect(facing(rect)).toEqual({ axis: 2, sign: 1 });
    expect(rect.origin[2].toFixed(6)).toBe(top);
    total += area(rect);
  }
  // Two legs less the cooktop, the sink with its rim, the backsplash and the upstand standing on them.
  const legs = 3.36 * 0.62 + (4 - 0.62 - 0.91) * 0.62;
  const covered = 0.86 * 0.51 + (0.56 + 0.036) * (0.4 + 0.036) + 3.36 * 0.008 + (4 - 0.008 - 0.91) * 0.015;
  expect(total).toBeCloseTo(legs - covered, 6);
});

it('puts a black face at every lamp and every glass, in both levels', () => {
  const black = (rects: readonly (typeof light.coarse)[number][]): number =>
    rects.filter((r) => r.surface === -1).reduce((sum, r) => sum + area(r), 0);
  const lamps = light.lamps.reduce((sum, lamp) => sum + area(lamp.rect), 0);
  const glass = light.windows.reduce((sum, window) => sum + area(window.rect), 0);
  expect(black(light.coarse)).toBeCloseTo(lamps + glass, 9);
  expect(black(light.fine)).toBeCloseTo(lamps + glass, 9);
  // Two casements: 45 mm fixed frame and mullion, 50 mm all round each light.
  expect(glass).toBeCloseTo((1.8 - 3 * 0.045 - 4 * 0.05) * (1.2 - 2 * 0.045 - 2 * 0.05), 9);
  for (const window of light.windows) {
    expect(facing(window.rect)).toEqual({ axis: 0, sign: 1 });
    expect(window.rect.origin[0]).toBe(-0.16);
    expect(window).toMatchObject({ panes: 2, facing_deg: 0, groups: { sky: 0, sun: 1, ground: 2, facing: 3 } });
  }
});

it('hangs the lamps the record asks for, facing down', () => {
  expect(light.groups).toEqual(GROUPS);
  for (const lamp of light.lamps) expect(facing(lamp.rect)).toEqual({ axis: 2, sign: -1 });
  const ceiling = light.lamps.filter((lamp) => lamp.group === GROUPS.indexOf('ceiling'));
  expect(ceiling).toHaveLength(6);
  for (const lamp of ceiling) {
    expect(lamp.lumens).toBe(1300);
    expect(area(lamp.rect)).toBeCloseTo(0.04, 9);
  }
  for (const strip of light.lamps.filter((lamp) => lamp.group === GROUPS.indexOf('under-cabinet'))) {
    expect(strip.lumens).toBeCloseTo((area(strip.rect) / 0.02) * 350, 6);
    expect(strip.rect.origin[2]).toBeCloseTo(1.4, 9);
  }
});

it('looks from the five places, with floor, fronts and walls in the overview', () => {
  expect(room.viewpoints.map((v) => v.id)).toEqual(['doorway', 'at-counter', 'looking-down', 'seated', 'corner']);
  expect(room.viewpoints.filter((v) => v.overview).map((v) => v.id)).toEqual(['doorway', 'seated']);
  const shares = pictureShares(light.fine, room.viewpoints[0]!, 1.5, 90);
  const share = (...surfaces: (typeof SURFACES)[number][]): number =>
    surfaces.reduce((sum, s) => sum + (shares.get(index(s)) ?? 0), 0);
  expect(share('floor')).toBeGreaterThan(0.08);
  expect(share('floor')).toBeLessThan(0.2);
  const fronts = share('base-fronts', 'wall-fronts', 'tall-fronts', 'island-fronts');
  expect(fronts).toBeGreaterThan(0.3);
  expect(fronts).toBeLessThan(0.45);
  for (const surface of ['wall', 'backsplash', 'counter', 'island-counter', 'ceiling'] as const) {
    expect(share(surface)).toBeGreaterThan(0.01);
  }
});

it('knows which finishes meet along an edge', () => {
  const pairs = room.edges.map((pair) => pair.join(' | '));
  for (const pair of [
    'counter | backsplash',
    'counter | upstand',
    'counter | base-fronts',
    'counter | sink',
    'counter | appliance',
    'island-counter | island-fronts',
    'floor | plinth',
    'floor | base-fronts',
    'wall | ceiling',
    'wall-fronts | backsplash',
    'upstand | wall',
    'backsplash | upstand',
    'wall | frame',
  ]) {
    expect(pairs).toContain(pair);
  }
  for (const pair of ['counter | floor', 'counter | island-counter', 'counter | ceiling', 'floor | backsplash']) {
    expect(pairs).not.toContain(pair);
  }
});
