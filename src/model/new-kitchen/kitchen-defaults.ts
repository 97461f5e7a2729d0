import type { Kitchen, Region } from '../kitchen';

/** What a region's usual kitchen is made of; what stands where is left to the layout. */
export type KitchenDefaults = Pick<
  Kitchen,
  | 'region'
  | 'fronts'
  | 'base'
  | 'counter'
  | 'wall_units'
  | 'tall_height'
  | 'dishwasher'
  | 'fridge'
  | 'skirting_height'
  | 'upstand_height'
> & {
  readonly room_height: number;
  readonly cooktop: Pick<Kitchen['cooktop'], 'width' | 'kind' | 'hood'>;
  readonly sink: Pick<Kitchen['sink'], 'bowls' | 'fit' | 'tap'>;
  readonly door: Pick<Kitchen['door'], 'width' | 'height'>;
};

const IN = 25.4;

/** Usual sizes of a region, mm. Trade table: public trade guidance unless marked; all may be edited. */
export const kitchenDefaults = (region: Region): KitchenDefaults => ({
  region,
  ...(region === 'us' ? US : EU),
  ...(region === 'uk' ? UK : {}),
});

const EU: Omit<KitchenDefaults, 'region'> = {
  // Ceiling 2400, older houses 2300-3000: from memory, unverified.
  room_height: 2500,
  fronts: { style: 'flat', mounting: 'overlay', handle: 'bar' },
  // Carcass 720 on a plinth of 150 set back 40-80; depth with door 580-600.
  base: { depth: 600, carcass_height: 720, plinth_height: 150, plinth_recess: 50 },
  // Depth 600-650, 20, 30 or 38-40 thick, 20-40 over the carcass.
  counter: { depth: 620, thickness: 30, overhang: 20, edge: 'eased' },
  // Depth 300-350, 575, 720 or 900 high, tops with the tall units at 2120; 450-500 above the counter.
  wall_units: { depth: 330, height: 720, gap_above_counter: 500 },
  tall_height: 2120,
  // Cooktop, dishwasher 600; sink base 600-1000: common practice, no source.
  cooktop: { width: 600, kind: 'induction', hood: 'canopy' },
  sink: { bowls: 1, fit: 'undermount', tap: 'arch' },
  dishwasher: 'hidden',
  fridge: 'hidden',
  // Upstand 80-150: common practice. Door and baseboard: common practice, no source.
  door: { width: 800, height: 2010 },
  skirting_height: 90,
  upstand_height: 100,
};

/** As in Europe but for the counter of 38 mm laminate or stone and framed doors with knobs: common practice, no source. */
const UK: Partial<KitchenDefaults> = {
  room_height: 2400,
  fronts: { style: 'five-piece', mounting: 'overlay', handle: 'knob' },
  counter: { depth: 620, thickness: 38, overhang: 20, edge: 'eased' },
  wall_units: { depth: 330, height: 720, gap_above_counter: 490 },
  sink: { bowls: 1, fit: 'apron', tap: 'arch' },
  door: { width: 762, height: 1981 },
};

const US: Omit<KitchenDefaults, 'region'> = {
  // 96 in; from memory, unverified.
  room_height: 96 * IN,
  fronts: { style: 'five-piece', mounting: 'overlay', handle: 'bar' },
  // Carcass 30 in on a toe kick of 4 1/2 in, 3 in deep; box 24 in, with door about 24 3/4 in.
  base: { depth: 24.75 * IN, carcass_height: 30 * IN, plinth_height: 4.5 * IN, plinth_recess: 3 * IN },
  // Depth usually 25 1/2 in, 1 1/2 in thick: finished height 36 in.
  counter: { depth: 25.5 * IN, thickness: 1.5 * IN, overhang: 0.75 * IN, edge: 'eased' },
  // 12 in box with its door, 30 in high, 18 in above the counter: tops at 84 in.
  wall_units: { depth: 12.75 * IN, height: 30 * IN, gap_above_counter: 18 * IN },
  tall_height: 84 * IN,
  // Cooktop 30 or 36 in, dishwasher 24 in, fridge 30-36 in: common practice, no source.
  cooktop: { width: 30 * IN, kind: 'gas', hood: 'canopy' },
  sink: { bowls: 1, fit: 'undermount', tap: 'arch' },
  dishwasher: 'free-standing',
  fridge: 'free-standing',
  // Upstand 4 in: common practice. Door 32 by 80 in: common practice, no source.
  door: { width: 32 * IN, height: 80 * IN },
  skirting_height: 4 * IN,
  upstand_height: 4 * IN,
};
