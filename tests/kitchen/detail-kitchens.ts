import scene from '../../scenes/l-island.json';
import type { Kitchen } from '../../src/model/kitchen';

export const demo = scene as unknown as Kitchen;

const withIsland = (island: Partial<NonNullable<Kitchen['island']>>): Kitchen['island'] => ({
  ...demo.island!,
  ...island,
});

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
};
