import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { migrateProject } from '../../src/io/migrate-project';
import { parseProject } from '../../src/io/project-file';
import { rowsOfVersion2 } from '../../src/io/rows-of-version-2';
import { checkKitchen } from '../../src/model/check-kitchen';
import type { Kitchen } from '../../src/model/kitchen';
import { planRows } from '../../src/model/layout/plan-rows';
import { version1 } from './version-1';

// Whatever version 1 allowed, in its whole range, has to open: its rules as they stood then.

const mm = (min: number, max: number): fc.Arbitrary<number> => fc.integer({ min, max });
/** Within bounds, and at their ends more often. */
const upTo = (min: number, max: number): fc.Arbitrary<number> =>
  fc.oneof({ weight: 3, arbitrary: mm(min, Math.max(min, max)) }, fc.constantFrom(min, Math.max(min, max)));

const measures = fc.record({
  room: fc.record({ width: upTo(3060, 12000), depth: upTo(2600, 12000), height: upTo(2000, 4500) }),
  fronts: fc.constantFrom('flat', 'five-piece'),
  base: fc.record({
    depth: upTo(570, 900),
    carcass_height: upTo(500, 1000),
    plinth_height: upTo(40, 300),
    plinth_recess: upTo(20, 150),
  }),
  counter: fc.record({ depth: upTo(570, 1200), thickness: upTo(6, 120), overhang: upTo(0, 100) }),
  wall_units: fc.record({ depth: upTo(250, 600), height: upTo(200, 900), gap_above_counter: upTo(250, 900) }),
  tall_height: upTo(1200, 3000),
  door: fc.record({ width: upTo(500, 1500), height: upTo(1700, 2400), from_right: upTo(70, 1500) }),
  skirting_height: upTo(0, 400),
  upstand_height: upTo(0, 400),
  seat_overhang: upTo(0, 600),
  sky_lx: upTo(0, 100_000),
});
type Measures = typeof measures extends fc.Arbitrary<infer T> ? T : never;

const counterTop = ({ base, counter }: Pick<Measures, 'base' | 'counter'>): number =>
  base.plinth_height + base.carcass_height + counter.thickness;

/** What version 1 asked of the measures besides their bounds; of window, island and lamps below. */
const fitted = (k: Measures): boolean =>
  k.room.width - k.base.depth >= 2490 &&
  k.counter.depth >= k.base.depth &&
  counterTop(k) + k.wall_units.gap_above_counter + k.wall_units.height <= k.room.height &&
  k.tall_height <= k.room.height &&
  k.tall_height >= counterTop(k) - k.counter.thickness + 895 &&
  k.door.from_right + k.door.width + 70 <= k.room.width &&
  k.door.height + 70 <= k.room.height &&
  counterTop(k) + k.upstand_height + 25 + 400 <= k.room.height &&
  k.room.width - 1200 - k.counter.depth >= 400 + 2 * k.counter.overhang &&
  k.room.depth - 1200 - k.counter.depth >= k.seat_overhang + k.counter.overhang + 400 &&
  k.room.depth - Math.max(k.base.depth, k.wall_units.depth) - 400 >= 1000;

/** From 600 mm beside whatever stands before it, a length of at least `least`. */
const between = (from: number, to: number, least: number, most: number) =>
  upTo(least, Math.min(most, to - from)).chain((length) =>
    upTo(from, to - length).map((start) => [start, length] as const),
  );

const kitchens = measures.filter(fitted).chain((k) => {
  const { room, base, counter, wall_units, upstand_height, seat_overhang, ...rest } = k;
  const lowest = counterTop(k) + upstand_height + 25;
  const sill = upTo(lowest, Math.min(2500, room.height - 400));
  // The sink stood under the window's middle.
  const center = upTo(1000, Math.min(room.depth - base.depth - 400, room.depth - wall_units.depth - 250));
  const most = ({ middle }: { middle: number }) =>
    Math.min(6000, 2 * (middle - 50), 2 * (room.depth - wall_units.depth - middle));
  const short = Math.min(room.width, room.depth);
  return fc
    .record({
      window: fc.tuple(sill, center).chain(([z, middle]) =>
        fc.record({
          wall: fc.constant('left'),
          center: fc.constant(middle),
          sill: fc.constant(z),
          width: upTo(500, most({ middle })),
          height: upTo(400, Math.min(3500, room.height - z)),
          reveal: upTo(65, 800),
        }),
      ),
      across: between(counter.depth + 600, room.width - 600, 400 + 2 * counter.overhang, 5000),
      deep: between(600, room.depth - counter.depth - 600, seat_overhang + counter.overhang + 400, 2500),
      ceiling: upTo(50, 1500).chain((size) =>
        fc.record({
          size: fc.constant(Math.min(size, short)),
          count: upTo(1, Math.min(24, Math.floor(short / size))),
          lumens_each: upTo(0, 20_000),
        }),
      ),
      under_cabinet: fc.record({ width: upTo(5, 100), lumens_per_m: upTo(0, 5000) }),
    })
    .map(({ window, across: [x, width], deep: [y, depth], ceiling, under_cabinet }) => ({
      layout: 'l-island',
      name: 'L kitchen with island',
      ...rest,
      room,
      base,
      counter,
      wall_units,
      upstand_height,
      island: { x, y, width, depth, seat_overhang },
      window,
      lamps: { ceiling, under_cabinet },
    }));
});

const migrated = (kitchen: unknown): Kitchen =>
  (migrateProject({ version: 1, kitchen, settings: [] }) as { kitchen: Kitchen }).kitchen;

describe('a kitchen that version 1 allowed', () => {
  it('fits after it was migrated', () => {
    fc.assert(
      fc.property(kitchens, (kitchen) => {
        expect(checkKitchen(migrated(kitchen), 'kitchen').map(({ text }) => text)).toEqual([]);
      }),
      { numRuns: 2000 },
    );
  });

  it('opens as a document', () => {
    fc.assert(
      fc.property(kitchens, (kitchen) => {
        const parsed = parseProject(version1((project) => Object.assign(project, { kitchen })));
        expect(parsed.ok ? [] : [parsed.problem, ...(parsed.more ?? [])]).toEqual([]);
      }),
      { numRuns: 10 },
    );
  });
});

/** Version 2 let the sink stand anywhere on the left wall, and lamps of every kind hang. */
const kitchens2 = kitchens.chain((one) => {
  const { window: _, lamps: _lamps, sky_lx: _sky, ...kitchen } = one;
  const { room, base, island, wall_units } = kitchen;
  const top = counterTop(kitchen);
  const lowest = Math.max(1200, top + 300);
  const highest = Math.min(4000, room.height - 50 - 0.6 * 250);
  const wide = { kind: 'wide' };
  const free = (has: boolean, fixture: object): fc.Arbitrary<object[]> => fc.constantFrom(has ? [fixture] : [], []);
  return fc
    .record({
      sink: upTo(1000, room.depth - base.depth - 400),
      height: upTo(lowest, Math.max(lowest, highest)),
      width: upTo(5, 24),
    })
    .chain(({ sink, height, width }) => {
      const hasPendants = highest >= lowest && Math.min(island.width, island.depth) >= 300;
      const above = room.height - top - wall_units.gap_above_counter - wall_units.height >= 60;
      const strip = { beam: wide, width, lumens_per_m: 500 };
      const lamp = { beam: wide, count: 1, lumens_each: 500 };
      return fc
        .tuple(
          free(hasPendants, { kind: 'pendant', id: 'hung', group: 'pendant', ...lamp, diameter: 250, height }),
          free(true, { kind: 'hood', id: 'hood', group: 'hood', ...lamp, diameter: 60 }),
          free(true, { kind: 'under-cabinet', id: 'under', group: 'under-cabinet', ...strip, run: 'middle' }),
          free(above, { kind: 'strip', id: 'over', group: 'ceiling', ...strip, run: 'above-wall-units' }),
          free(base.plinth_recess - 24 >= width, {
            kind: 'strip',
            id: 'toe',
            group: 'ceiling',
            ...strip,
            run: 'toe-kick',
          }),
        )
        .map((fixtures) => ({
          ...kitchen,
          sink: { center: sink },
          site: {
            latitude_deg: 50,
            longitude_deg: 0,
            utc_offset_h: 0,
            bearing_deg: 0,
            ground: 'unknown',
            facing: 'unknown',
          },
          openings: [],
          fixtures: fixtures.flat(),
        }));
    });
});

/** Fillers are no longer as wide as some of version 2: what stood beside one may move by a module's step, mm. */
const LEAST_MODULE_STEP = 50;
const off = ({ from, to }: { from: number; to: number }, center: number): number => Math.abs((from + to) / 2 - center);

const migrated2 = (kitchen: unknown): Kitchen =>
  (migrateProject({ version: 2, kitchen, settings: [] }) as { kitchen: Kitchen }).kitchen;

describe('a kitchen that version 2 allowed', () => {
  it('fits after it was migrated, with sink and cooktop where they were', () => {
    fc.assert(
      fc.property(kitchens2, (kitchen) => {
        const after = migrated2(kitchen);
        expect(checkKitchen(after, 'kitchen').map(({ text }) => text)).toEqual([]);
        const { room, base, counter, sink } = kitchen;
        const measures = { width: room.width, depth: room.depth, base: base.depth, overhang: counter.overhang };
        const before = rowsOfVersion2({ ...measures, sink: sink.center });
        const [left, back] = planRows(after).runs;
        expect(off(left!.sink!, before.sink)).toBeLessThanOrEqual(LEAST_MODULE_STEP);
        expect(off(back!.cooktop!, before.cooktop!.center)).toBeLessThanOrEqual(LEAST_MODULE_STEP);
        expect(left!.counter.from).toBe(before.end);
      }),
      { numRuns: 1000 },
    );
  });
});
