import { expect, it } from 'vitest';
import { mapFineToCoarse, patchForFine } from '../../src/engine/light/fine-to-coarse';
import { layoutPatches } from '../../src/engine/light/patches';
import type { Rect } from '../../src/engine/light/types';

// A wall glowed above its skirting: the skirting's top shares finish and facing with the window sill across the room, and
// rays that met it brought the sill's light.
const WALL = 0;
const TRIM = 1;
const coarse: Rect[] = [
  { origin: [0, 0, 0], u: [0, 4, 0], v: [0, 0, 2.5], surface: WALL },
  { origin: [3.8, 2, 1], u: [0.2, 0, 0], v: [0, 1, 0], surface: TRIM },
];
const skirtingTop: Rect = { origin: [0, 0, 0.09], u: [0.015, 0, 0], v: [0, 4, 0], surface: TRIM };

it('lets a strip of trim speak for the wall it stands at, not for the sill across the room', () => {
  const patches = layoutPatches(coarse, 0.3);
  const map = mapFineToCoarse([skirtingTop], coarse, patches);
  const patch = patchForFine(map, 0, 0.01, 2, 0.09);
  expect(patches.rect[patch]).toBe(0);
});

it('lets the underside of the sill speak for the wall below it, not for its own sunlit top', () => {
  const wallBelow: Rect = { origin: [4, 0, 0], u: [0, 0, 1], v: [0, 4, 0], surface: WALL };
  const patches = layoutPatches([...coarse, wallBelow], 0.3);
  const underside: Rect = { origin: [3.8, 2, 0.97], u: [0, 1, 0], v: [0.2, 0, 0], surface: TRIM };
  const map = mapFineToCoarse([underside], [...coarse, wallBelow], patches);
  expect(patches.rect[patchForFine(map, 0, 3.9, 2.5, 0.97)]).toBe(2);
});
