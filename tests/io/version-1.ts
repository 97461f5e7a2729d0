import { demoText } from './demo';

export type Loose = Record<string, unknown>;

/** A document as version 1 wrote it: one window on the left wall, lamps by where they hang, the sky as a group. */
export function version1(change: (project: Loose) => void = () => {}): string {
  const { library, options } = JSON.parse(demoText()) as Loose;
  const group = (level: number, light: string) => ({ level, light });
  const project: Loose = {
    type: 'upstand-project',
    version: 1,
    id: 'old-house',
    name: 'Old house',
    note: 'Invented for this test.',
    kitchen: {
      layout: 'l-island',
      name: 'L kitchen with island',
      room: { width: 4600, depth: 4000, height: 2500 },
      fronts: 'five-piece',
      base: { depth: 600, carcass_height: 720, plinth_height: 150, plinth_recess: 50 },
      counter: { depth: 620, thickness: 30, overhang: 20 },
      wall_units: { depth: 330, height: 720, gap_above_counter: 500 },
      tall_height: 2300,
      island: { x: 1750, y: 1350, width: 1800, depth: 900, seat_overhang: 250 },
      window: { wall: 'left', center: 2350, width: 1800, sill: 1050, height: 1200, reveal: 160 },
      door: { width: 900, height: 2050, from_right: 200 },
      skirting_height: 90,
      upstand_height: 100,
      lamps: {
        ceiling: { count: 6, size: 200, lumens_each: 1300 },
        under_cabinet: { width: 20, lumens_per_m: 350 },
      },
      sky_lx: 12000,
    },
    settings: [
      {
        id: 'day',
        name: 'Day',
        groups: { sky: group(0.5, 'D75'), ceiling: group(0, 'LED-B2'), 'under-cabinet': group(0.2, 'LED-B4') },
      },
      {
        id: 'plain',
        name: 'Plain day',
        groups: { sky: group(1, 'D65'), ceiling: group(0, 'LED-B2'), 'under-cabinet': group(0, 'LED-B2') },
      },
      {
        id: 'evening',
        name: 'Evening',
        groups: { sky: group(0, 'D65'), ceiling: group(0.8, 'LED-B3'), 'under-cabinet': group(1, 'A') },
      },
    ],
    library,
    options,
  };
  change(project);
  return JSON.stringify(project, null, 2);
}
