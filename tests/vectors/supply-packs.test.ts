import { expect, it } from 'vitest';
import { packOf } from '../../src/model/quantity/supply-pack';
import { demoProject } from '../io/demo';

// What packs are called in price lists: common practice, no source.
it.each([
  ['can of 2.5 L', 2.5, 'can', 2.5, 'L'],
  ['750 ml tin', undefined, 'tin', 0.75, 'L'],
  ['Gebinde 2,5 l', undefined, 'gebinde', 2.5, 'L'],
  ['L', 2.5, null, 2.5, 'L'],
  ['gallon', undefined, null, 1, 'gal'],
  ['quart', 1, 'quart', 0.25, 'gal'],
  ['5-gallon bucket', undefined, 'bucket', 5, 'gal'],
  ['1/2 gal can', undefined, 'can', 0.5, 'gal'],
  ['case of 4 x 1 gal', undefined, 'case', 4, 'gal'],
  ['bag of 5 kg', 5, 'bag', 5, 'kg'],
  ['50 lb bag', undefined, 'bag', 50, 'lb'],
  ['lb', 25, null, 25, 'lb'],
  ['m2', 1, null, 1, 'm2'],
  ['per m\u00b2', undefined, null, 1, 'm2'],
  ['carton of 2.2 m2', 2.2, 'carton', 2.2, 'm2'],
  ['carton of 2.2 m2', 1, 'carton', 2.2, 'm2'],
  ['Karton \u00e0 1,44 m\u00b2', undefined, 'karton', 1.44, 'm2'],
  ['box of 10.5 sq ft', 10.5, 'box', 10.5, 'ft2'],
  ['sq. ft.', 10.5, null, 10.5, 'ft2'],
  ['box of 1.44 m2 (15.5 sq ft)', undefined, 'box', 1.44, 'm2'],
  ['box of 6 tiles (1.44 m2)', undefined, 'box', 1.44, 'm2'],
  ['box of 6 tiles (1.44 m2)', 6, 'box', 6, 'piece'],
  ['box of 25', 25, 'box', 25, 'piece'],
  ['box of 12 tiles 300 x 600 mm', undefined, 'box', 12, 'piece'],
  ['box of 6 tiles, 10 mm thick', undefined, 'box', 6, 'piece'],
  ['12 pcs', undefined, 'pack', 12, 'piece'],
  ['set of 4', undefined, 'set', 4, 'piece'],
  ['each', undefined, null, 1, 'piece'],
  ['piece', 1, null, 1, 'piece'],
  ['slab', 1, null, 1, 'slab'],
  ['slab 3050 x 1400 mm', 1, null, 1, 'slab'],
  ['slab of 5.12 m2', undefined, null, 1, 'slab'],
  ['sheet', 1, null, 1, 'sheet'],
  ['sheet of 3.97 m2', undefined, 'sheet', 3.97, 'm2'],
  ['length of 2400 mm', undefined, 'length', 2.4, 'm'],
  ['roll of 10 m', undefined, 'roll', 10, 'm'],
  ['linear foot', undefined, null, 1, 'ft'],
] as const)('%s, pack %s', (unit, pack, container, quantity, measure) => {
  expect(packOf({ unit, ...(pack !== undefined && { pack }) })).toEqual({
    container,
    quantity: expect.closeTo(quantity, 12),
    measure,
  });
});

it.each([
  [undefined, undefined],
  [undefined, 12],
  ['', 1],
  ['box', 25],
  ['can', 2.5],
  ['can of 5', 5],
  ['box of 1.2', 1.2],
  ['box of 0 m2', undefined],
  ['can of 2.5 L', 0],
  ['can of 2.5 L', 5],
  ['box of 1 m2', 12],
  ['pallet of 40 boxes of 1.2 m2', undefined],
  ['half a slab', 1],
  ['on request', 1],
])('cannot tell what a pack holds: %s, pack %s', (unit, pack) => {
  expect(packOf({ ...(unit !== undefined && { unit }), ...(pack !== undefined && { pack }) })).toBeNull();
});

it('reads every pack of the demo project', () => {
  for (const { id, supply } of demoProject().library) {
    if (supply?.unit !== undefined) expect(packOf(supply), id).not.toBeNull();
  }
});
