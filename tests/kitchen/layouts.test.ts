import fc from 'fast-check';
import { expect, it } from 'vitest';
import { kitchenMisfits } from '../../src/model/kitchen-misfits';
import { brokenInvariants } from './invariants';
import { LAYOUTS, randomKitchens } from './layouts';

it.each(Object.entries(LAYOUTS))('builds the kitchen "%s" closed and whole', (_, kitchen) => {
  expect(kitchenMisfits(kitchen).map(({ at, text }) => `${at?.path}: ${text}`)).toEqual([]);
  expect(brokenInvariants(kitchen, 300)).toEqual([]);
});

it('keeps every invariant in kitchens of all layouts', () => {
  fc.assert(
    fc.property(randomKitchens, (kitchen) => {
      expect(brokenInvariants(kitchen, 60)).toEqual([]);
    }),
    { numRuns: 40 },
  );
});
