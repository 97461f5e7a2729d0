import { expect, it } from 'vitest';
import scene from '../../scenes/l-island.json';
import { checkKitchen } from '../../src/model/check-kitchen';
import type { Kitchen } from '../../src/model/kitchen';
import { brokenInvariants } from '../kitchen/invariants';

// The close look on the corner had its eye at one height, which a high counter reached.

const usual = scene as unknown as Kitchen;

it('keeps the eye out of a high counter', () => {
  const kitchen = {
    ...usual,
    base: { ...usual.base, plinth_height: 300, carcass_height: 1000 },
    counter: { ...usual.counter, thickness: 120 },
    wall_units: { depth: 330, height: 200, gap_above_counter: 600 },
    openings: [],
    fixtures: [],
  };
  expect(checkKitchen(kitchen, 'kitchen')).toEqual([]);
  expect(brokenInvariants(kitchen, 10)).toEqual([]);
});
