import { expect, it } from 'vitest';
import { SURFACES } from '../../src/engine/surface';
import { DECISION_STEPS, decisionOrder, nextOpen } from '../../src/model/decision-order';
import { candidatesFor, canGoOn } from '../../src/model/finish-candidates';
import { layingFor } from '../../src/model/laying';
import type { Finish, Option } from '../../src/model/project';
import { demoProject } from '../io/demo';

const demo = demoProject();
const finish = (id: string): Finish => demo.library.find((one) => one.id === id)!;

it('lays tiles with joint and grout, boards as planks, slabs and paint plain (common practice, no source)', () => {
  const { library } = demo;
  expect(layingFor(finish('TL-04'), 'backsplash', library)).toEqual({
    layout: 'running-bond',
    joint_mm: 2,
    grout: 'GR-01',
  });
  expect(layingFor(finish('ST-01'), 'floor', library)).toEqual({ layout: 'stack', joint_mm: 3, grout: 'GR-01' });
  expect(layingFor(finish('WD-01'), 'floor', library)).toEqual({ layout: 'planks' });
  expect(layingFor(finish('EN-01'), 'counter', library)).toEqual({ layout: 'plain' });
  expect(layingFor(finish('EN-06'), 'counter', library)).toEqual({ layout: 'plain' });
  expect(layingFor(finish('EN-06'), 'upstand', library)).toEqual({ layout: 'plain' });
  expect(layingFor(finish('TL-01'), 'upstand', library).layout).toBe('running-bond');
  expect(layingFor(finish('PT-02'), 'wall', library)).toEqual({ layout: 'plain' });
  expect(layingFor(finish('WD-07'), 'base-fronts', library)).toEqual({ layout: 'plain' });
  expect(layingFor(finish('WD-03'), 'base-fronts', library)).toEqual({ layout: 'plain' });
});

it('never makes a joint narrower than 1.6 mm, nor under 3 mm for long tiles (ANSI A108.02)', () => {
  for (const one of demo.library) {
    for (const surface of SURFACES) {
      const { joint_mm } = layingFor(one, surface, demo.library);
      if (joint_mm === undefined) continue;
      expect(joint_mm).toBeGreaterThanOrEqual(1.6);
      if (Math.max(...one.piece_mm!) > 381) expect(joint_mm).toBeGreaterThanOrEqual(3);
    }
  }
});

it('keeps joint and grout when tiles follow tiles', () => {
  const before = { layout: 'running-bond', joint_mm: 4, grout: 'GR-03' } as const;
  expect(layingFor(finish('TL-05'), 'backsplash', demo.library, before)).toEqual({
    layout: 'stack',
    joint_mm: 4,
    grout: 'GR-03',
  });
});

it('offers what is usually put on a surface (common practice, no source)', () => {
  expect(canGoOn(finish('PT-02'), 'wall')).toBe(true);
  expect(canGoOn(finish('ST-03'), 'wall')).toBe(false);
  expect(canGoOn(finish('WD-01'), 'floor')).toBe(true);
  expect(canGoOn(finish('WD-01'), 'base-fronts')).toBe(false);
  expect(canGoOn(finish('WD-07'), 'base-fronts')).toBe(true);
  expect(canGoOn(finish('WD-07'), 'floor')).toBe(false);
  expect(canGoOn(finish('TL-07'), 'counter')).toBe(false);
  expect(canGoOn(finish('TL-04'), 'backsplash')).toBe(true);
  for (const surface of SURFACES) {
    expect(candidatesFor(demo.library, surface).length).toBeGreaterThan(0);
    expect(candidatesFor(demo.library, surface).some((one) => one.class === 'grout')).toBe(false);
  }
});

it('offers on each surface of the demo what lies there', () => {
  for (const option of demo.options) {
    for (const surface of SURFACES) {
      const laid = finish(option.scheme[surface].finish);
      expect([surface, laid.id, canGoOn(laid, surface)]).toEqual([surface, laid.id, true]);
    }
  }
});

it('decides what is fixed first, then counter, floor, fronts, backsplash, wall, hardware (common practice, no source)', () => {
  expect(DECISION_STEPS.map((step) => step.id)).toEqual([
    'counter',
    'floor',
    'fronts',
    'backsplash',
    'wall',
    'hardware',
  ]);
  expect(DECISION_STEPS.flatMap((step) => step.surfaces).toSorted()).toEqual(SURFACES.toSorted());
  const ours = demo.options.find((option) => option.id === 'our-floor')!;
  expect(decisionOrder(ours).slice(0, 3)).toEqual(['floor', 'counter', 'island-counter']);
  expect(nextOpen(ours)).toBe('base-fronts');
  const all = Object.entries(ours.scheme).map(([surface, placement]) => [surface, { ...placement, state: 'decided' }]);
  expect(nextOpen({ ...ours, scheme: Object.fromEntries(all) } as Option)).toBeNull();
});
