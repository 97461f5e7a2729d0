import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkKitchen } from '../../src/model/check-kitchen';
import type { Kitchen, Opening, Region, Run } from '../../src/model/kitchen';
import { kitchenBlocks } from '../../src/model/layout/blocks';
import { planRows } from '../../src/model/layout/plan-rows';
import type { Row, RunRows, Span } from '../../src/model/layout/types';
import { kitchenFor } from '../../src/model/new-kitchen';
import { LAYOUTS } from '../../src/model/new-kitchen/layout-drafts';

/** Module widths, mm (trade table): Europe; North America in steps of 3 in. */
const METRIC = [150, 300, 400, 450, 500, 600, 800, 900, 1000, 1200];
const INCHES = Array.from({ length: 14 }, (_, i) => (9 + 3 * i) * 25.4);
const seriesOf = (region: Region): readonly number[] => (region === 'us' ? INCHES : METRIC);

const NEAR = 1e-6;
const isNear = (a: number, b: number): boolean => Math.abs(a - b) < NEAR;
const length = ({ from, to }: Span): number => to - from;

/** Kitchens of every layout with everything in them moved about; only those that pass the check. */
const kitchens: fc.Arbitrary<Kitchen> = fc
  .record({
    layout: fc.constantFrom(...LAYOUTS),
    region: fc.constantFrom<Region>('eu', 'uk', 'us'),
    width: fc.integer({ min: 3000, max: 7000 }),
    depth: fc.integer({ min: 2600, max: 6000 }),
    shift: fc.record({ sink: fc.integer({ min: -700, max: 700 }), cooktop: fc.integer({ min: -900, max: 900 }) }),
    bowls: fc.constantFrom<1 | 2>(1, 2),
    dishwasher: fc.constantFrom<Kitchen['dishwasher']>('hidden', 'free-standing', 'none'),
    cooktop: fc.constantFrom(560, 600, 760, 900),
    over: fc.constantFrom<Run['over']>('units', 'shelf', 'none'),
    shorten: fc.integer({ min: 0, max: 900 }),
    window: fc.option(
      fc.record({ center: fc.integer({ min: 300, max: 5000 }), width: fc.integer({ min: 500, max: 1400 }) }),
    ),
  })
  .map((one): Kitchen | null => {
    const kitchen = kitchenFor(one.layout, one.region, { width: one.width, depth: one.depth, height: 2500 });
    if (!kitchen) return null;
    const { sink, cooktop } = kitchen;
    const window: Opening[] = one.window
      ? [
          {
            id: 'w',
            kind: 'window',
            wall: 'back',
            sill: 1150,
            height: 900,
            reveal: 150,
            leaves: 1,
            panes: 2,
            facing_deg: 0,
            ...one.window,
          },
        ]
      : [];
    return {
      ...kitchen,
      runs: kitchen.runs.map((run, i) => ({
        ...run,
        over: i === 0 ? run.over : one.over,
        from: run.wall !== 'back' && run.from > 700 ? run.from - Math.min(one.shorten, run.from - 160) : run.from,
      })),
      sink: { ...sink, bowls: one.bowls, center: sink.center + one.shift.sink },
      cooktop: {
        ...cooktop,
        width: one.cooktop,
        center: cooktop.center + one.shift.cooktop,
        oven_below: false,
        hood: one.over === 'none' && cooktop.run !== kitchen.runs[0]!.wall ? 'none' : cooktop.hood,
      },
      dishwasher: one.dishwasher,
      openings: window,
      fixtures: [],
    };
  })
  .filter((kitchen) => kitchen !== null && checkKitchen(kitchen, '').length === 0) as fc.Arbitrary<Kitchen>;

/** Units and fillers side by side in order. */
const inOrder = ({ units, fillers }: Row): readonly Span[] => [...units, ...fillers].sort((a, b) => a.from - b.from);

function expectTiled(row: Row, { from, to }: Span): void {
  let at = from;
  for (const span of inOrder(row)) {
    expect(span.from).toBeCloseTo(at, 6);
    at = span.to;
  }
  expect(at).toBeCloseTo(to, 6);
}

/** From where modules begin: a corner the run owns holds none. */
function tiledPart({ base: { depth } }: Kitchen, { base, ends }: RunRows): Span {
  return {
    from: base.from + (ends.from === 'owns-corner' ? depth : 0),
    to: base.to - (ends.to === 'owns-corner' ? depth : 0),
  };
}

describe('the rows of any kitchen that fits', () => {
  it('tile each run exactly, with modules of the region and without slivers', () => {
    fc.assert(
      fc.property(kitchens, (kitchen) => {
        const rows = planRows(kitchen);
        const series = seriesOf(kitchen.region);
        for (const run of rows.runs) {
          expectTiled(run.base, tiledPart(kitchen, run));
          for (const unit of run.base.units) {
            expect(
              series.some((width) => isNear(width, length(unit))),
              String(length(unit)),
            ).toBe(true);
          }
          for (const filler of run.base.fillers) {
            expect(length(filler)).toBeGreaterThanOrEqual(20 - NEAR);
            expect(length(filler)).toBeLessThanOrEqual(170);
          }
          const panels = [...run.panels, ...run.tall.flatMap((block) => block.panels)];
          for (const panel of panels) {
            expect(length(panel)).toBeGreaterThanOrEqual(20 - NEAR);
            expect(length(panel)).toBeLessThanOrEqual(50 + NEAR);
          }
          for (const block of run.tall) {
            expectTiled({ units: [], fillers: [...block.units, ...block.panels, ...block.fillers] }, block);
          }
        }
      }),
      { numRuns: 80 },
    );
  });

  it('hold sink and cooktop in modules of their own, near where they are wanted, the dishwasher beside the sink', () => {
    fc.assert(
      fc.property(kitchens, (kitchen) => {
        const { runs } = planRows(kitchen);
        for (const name of ['sink', 'cooktop'] as const) {
          const [run, ...others] = runs.filter((one) => one[name]);
          expect(others).toEqual([]);
          expect(run!.wall).toBe(kitchen[name].run);
          const module = run![name]!;
          const unit = run!.base.units.find(({ kind }) => kind.startsWith(name))!;
          expect(module).toEqual({ from: unit.from, to: unit.to });
          const off = Math.abs((module.from + module.to) / 2 - kitchen[name].center);
          expect(off).toBeLessThanOrEqual(length(module) / 2 + NEAR);
        }
        const washers = runs.flatMap(({ base, sink }) =>
          base.units.filter(({ kind }) => kind === 'dishwasher').map((unit) => ({ unit, sink })),
        );
        expect(washers).toHaveLength(kitchen.dishwasher === 'none' ? 0 : 1);
        for (const { unit, sink } of washers) {
          expect(isNear(unit.to, sink!.from) || isNear(unit.from, sink!.to)).toBe(true);
        }
      }),
      { numRuns: 80 },
    );
  });

  it('hang wall units in whole rows, clear of windows, cooktop and tall units', () => {
    fc.assert(
      fc.property(kitchens, (kitchen) => {
        const { runs } = planRows(kitchen);
        const series = seriesOf(kitchen.region);
        for (const run of runs) {
          for (const row of run.over) {
            expectTiled(row, row);
            for (const unit of row.units) expect(series.some((width) => isNear(width, length(unit)))).toBe(true);
          }
          const taken: Span[] = [
            ...(run.cooktop ? [run.cooktop] : []),
            ...run.tall,
            ...kitchen.openings
              .filter(({ wall }) => wall === run.wall)
              .map(({ center, width }) => ({ from: center - width / 2, to: center + width / 2 })),
          ];
          for (const over of [...run.over, ...run.shelves]) {
            for (const { from, to } of taken)
              expect(Math.min(to, over.to) - Math.max(from, over.from)).toBeLessThan(0.1);
          }
        }
      }),
      { numRuns: 60 },
    );
  });

  it('let nothing stand in anything else', () => {
    fc.assert(
      fc.property(kitchens, (kitchen) => {
        const blocks = kitchenBlocks(kitchen, planRows(kitchen));
        const overlap = (a: readonly [number, number], b: readonly [number, number]) =>
          Math.min(a[1], b[1]) - Math.max(a[0], b[0]);
        blocks.forEach((a, i) => {
          for (const b of blocks.slice(0, i)) {
            const depth = Math.min(overlap(a.x, b.x), overlap(a.y, b.y), overlap(a.z, b.z));
            expect(depth, `${a.kind} in ${b.kind}`).toBeLessThan(0.1);
          }
        });
      }),
      { numRuns: 60 },
    );
  });
});
