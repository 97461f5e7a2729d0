import fc from 'fast-check';
import { expect, it } from 'vitest';
import scene from '../../scenes/l-island.json';
import type { Kitchen } from '../../src/model/kitchen';
import { kitchenMisfits } from '../../src/model/kitchen-misfits';
import { brokenInvariants } from './invariants';

const usual = scene as unknown as Kitchen;
const mm = (min: number, max: number): fc.Arbitrary<number> => fc.integer({ min, max });

/** Of trim: a third of kitchens have none of it, and some next to none. */
const upToNone = (max: number): fc.Arbitrary<number> =>
  fc.oneof(fc.constant(0), mm(1, max), fc.constantFrom(0.05, 0.3, 1));

/** Kitchens of very different measures; islands and windows placed by what the room leaves. */
const kitchens: fc.Arbitrary<Kitchen> = fc
  .record({
    width: mm(3900, 6400),
    depth: mm(3500, 5200),
    height: mm(2400, 3000),
    style: fc.constantFrom<Kitchen['fronts']['style']>('flat', 'five-piece'),
    leg: mm(900, 1500),
    base: fc.record({
      depth: mm(580, 650),
      carcass_height: mm(650, 800),
      plinth_height: mm(60, 200),
      plinth_recess: mm(40, 80),
    }),
    counter: fc.record({ front: mm(0, 50), thickness: mm(12, 60), overhang: mm(5, 40) }),
    wall_units: fc.record({ depth: mm(300, 380), height: mm(400, 800), gap_above_counter: mm(420, 620) }),
    tall: mm(0, 300),
    island: fc.record({ left: mm(900, 1200), front: mm(900, 1300), overhang: mm(0, 350) }),
    window: fc.record({ width: mm(600, 1400), height: mm(500, 1000), reveal: mm(80, 300), shift: mm(-150, 150) }),
    door: fc.record({ width: mm(800, 1000), from_right: mm(80, 700) }),
    upstand_height: upToNone(120),
    skirting_height: upToNone(150),
    lamps: fc.record({ count: mm(1, 12), size: mm(80, 250), strip: mm(10, 30) }),
  })
  .map(
    ({
      width,
      depth,
      height,
      style,
      leg,
      base,
      counter,
      wall_units,
      tall,
      island,
      window,
      door,
      upstand_height,
      skirting_height,
      lamps,
    }) => {
      const bottom = base.plinth_height + base.carcass_height;
      const sill = bottom + counter.thickness + upstand_height + 30;
      const counterDepth = base.depth + counter.front;
      return {
        ...usual,
        room: { width, depth, height },
        runs: usual.runs.map((run) =>
          run.wall === 'left' ? { ...run, from: leg, to: depth } : { ...run, from: 0, to: width },
        ),
        fronts: { ...usual.fronts, style },
        base,
        counter: { ...usual.counter, depth: counterDepth, thickness: counter.thickness, overhang: counter.overhang },
        wall_units,
        tall_height: Math.min(height, bottom + 595 + 400 + tall),
        island: {
          ...usual.island!,
          x: counterDepth + island.left,
          y: island.front,
          width: width - counterDepth - island.left - 900,
          depth: depth - counterDepth - island.front - 950,
          seat_overhang: island.overhang,
          stools: 2,
        },
        openings: [
          {
            ...usual.openings[0]!,
            center: Math.round(depth * 0.62) + window.shift,
            width: window.width,
            sill,
            height: Math.min(window.height, height - sill - 60),
            reveal: window.reveal,
          },
        ],
        sink: { ...usual.sink, center: Math.round(depth * 0.62) + window.shift },
        cooktop: { ...usual.cooktop, center: Math.round(width * 0.44), width: width < 4300 ? 580 : 860 },
        door: { ...usual.door, ...door },
        upstand_height,
        skirting_height,
        fixtures: usual.fixtures.map((fixture) => {
          if (fixture.kind === 'panel')
            return { ...fixture, count: lamps.count, width: lamps.size, length: lamps.size };
          return fixture.kind === 'under-cabinet' ? { ...fixture, width: lamps.strip } : fixture;
        }),
      };
    },
  )
  .filter((kitchen) => kitchenMisfits(kitchen).length === 0);

it('keeps every invariant over a wide range of measures', () => {
  fc.assert(
    fc.property(kitchens, (kitchen) => {
      expect(brokenInvariants(kitchen, 60)).toEqual([]);
    }),
    { numRuns: 30 },
  );
});
