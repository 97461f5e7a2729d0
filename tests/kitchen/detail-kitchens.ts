import scene from '../../scenes/l-island.json';
import type { Kitchen } from '../../src/model/kitchen';

export const demo = scene as unknown as Kitchen;

const withIsland = (island: Partial<NonNullable<Kitchen['island']>>): Kitchen['island'] => ({
  ...demo.island!,
  ...island,
});

/** Lamps of kitchens without wall units. */
const withoutUnits = demo.fixtures.filter(({ kind }) => kind !== 'under-cabinet');

/** The demo with other details, so that every kind of each occurs. */
export const variants: { readonly [name: string]: Kitchen } = {
  demo: { ...demo, objects: true },
  'inset, knobs, pencil, gas': {
    ...demo,
    objects: true,
    fronts: { style: 'five-piece', mounting: 'inset', handle: 'knob' },
    counter: { ...demo.counter, edge: 'pencil' },
    sink: { ...demo.sink, bowls: 2, fit: 'undermount', tap: 'straight' },
    cooktop: { ...demo.cooktop, kind: 'gas', hood: 'built-in', oven_below: true },
  },
  'flat, no handles, mitred, waterfall': {
    ...demo,
    objects: true,
    fronts: { style: 'flat', mounting: 'overlay', handle: 'none' },
    counter: { ...demo.counter, thickness: 20, edge: 'mitred' },
    island: withIsland({ waterfall: 'both' }),
    sink: { ...demo.sink, fit: 'undermount' },
    cooktop: { ...demo.cooktop, hood: 'none' },
    dishwasher: 'free-standing',
    fridge: 'free-standing',
    openings: demo.openings.map((opening) => ({ ...opening, blind: 'roller' as const })),
  },
  'flat, edge handles, bullnose, apron': {
    ...demo,
    objects: true,
    fronts: { style: 'flat', mounting: 'overlay', handle: 'edge' },
    counter: { ...demo.counter, edge: 'full-bullnose' },
    sink: { ...demo.sink, fit: 'apron' },
    fixtures: withoutUnits,
    runs: demo.runs.map((run) => ({ ...run, over: 'shelf' as const })),
    cooktop: { ...demo.cooktop, hood: 'canopy' },
    openings: demo.openings.map((opening) => ({ ...opening, reveal: 100, blind: 'roller' as const })),
  },
  'two bowls with an apron, half bullnose, waterfall on one side': {
    ...demo,
    objects: true,
    fronts: { style: 'five-piece', mounting: 'inset', handle: 'bar' },
    counter: { ...demo.counter, edge: 'half-bullnose' },
    island: withIsland({ waterfall: 'left' }),
    sink: { ...demo.sink, bowls: 2, fit: 'apron' },
    cooktop: { ...demo.cooktop, oven_below: true },
  },
  'one wall without island, bevel': {
    ...demo,
    objects: true,
    runs: demo.runs.filter(({ wall }) => wall === 'back').map((run) => ({ ...run, from: 0 })),
    island: null,
    sink: { ...demo.sink, run: 'back', center: 900 },
    cooktop: { ...demo.cooktop, center: 2300 },
    counter: { ...demo.counter, edge: 'bevel' },
    fronts: { style: 'flat', mounting: 'inset', handle: 'none' },
  },
  'U with sink at the back and cooktop on the right, half bullnose': {
    ...demo,
    objects: true,
    runs: [
      { wall: 'left', from: 900, to: 4000, tall_from: [], tall_to: [], over: 'none', splash: 'upstand' },
      { wall: 'back', from: 0, to: 4600, tall_from: [], tall_to: [], over: 'none', splash: 'backsplash' },
      {
        wall: 'right',
        from: 1000,
        to: 4000,
        tall_from: ['fridge'],
        tall_to: [],
        over: 'shelf',
        splash: 'backsplash-to-ceiling',
      },
    ],
    island: null,
    fronts: { style: 'five-piece', mounting: 'overlay', handle: 'edge' },
    counter: { ...demo.counter, edge: 'half-bullnose' },
    sink: { ...demo.sink, run: 'back', center: 2300, bowls: 2, tap: 'straight' },
    cooktop: { ...demo.cooktop, run: 'right', center: 2600, width: 600, kind: 'gas', hood: 'canopy' },
    fridge: 'free-standing',
    door: { ...demo.door, from_right: 1400 },
    fixtures: withoutUnits,
  },
  'L with a peninsula, mitred': {
    ...demo,
    objects: true,
    runs: [
      { wall: 'left', from: 1600, to: 4000, tall_from: [], tall_to: [], over: 'none', splash: 'upstand' },
      { wall: 'back', from: 0, to: 4600, tall_from: [], tall_to: [], over: 'units', splash: 'backsplash' },
    ],
    island: withIsland({ x: 0, y: 700, width: 2200, depth: 900, joined: 'left', waterfall: 'right', stools: 2 }),
    counter: { ...demo.counter, edge: 'mitred' },
    fronts: { style: 'flat', mounting: 'inset', handle: 'bar' },
    openings: [],
    sink: { ...demo.sink, run: 'left', center: 2700 },
  },
};
