import fc from 'fast-check';
import { afterAll, expect, it } from 'vitest';
import { scheduleOf } from '../../src/kitchen/schedule/schedule-of';
import type { ScheduleRow } from '../../src/kitchen/schedule/types';
import { takeOff } from '../../src/kitchen/takeoff/take-off';
import type { SurfaceTakeoff, Takeoff } from '../../src/kitchen/takeoff/types';
import type { Kitchen } from '../../src/model/kitchen';
import type { Finish, Placement, Project, Scheme } from '../../src/model/project';
import { USUAL_ASSUMPTIONS } from '../../src/model/quantity/assumptions';
import type { PurchaseKind } from '../../src/model/quantity/usual-waste';
import { demoProject } from '../io/demo';
import { randomKitchens } from '../kitchen/layouts';

// Every kind of thing that is bought is held to what it has to cover, reckoned here from the areas by other ways than the product's.

const demo = demoProject();
/** NIST SP 811, appendix B: exact. */
const M2_PER_FT2 = 0.3048 ** 2;
const L_PER_GAL = 3.785411784;
const KG_PER_LB = 0.45359237;
/** What rounding packs up may leave out, in parts of one pack. */
const DUST = 2e-6;

interface Packs {
  readonly floor_m2: number;
  readonly can_l: number;
  readonly bag_kg: number;
  readonly tiles: number;
  readonly fronts_m2: number;
  readonly tiles_m2: number;
}

const packs: fc.Arbitrary<Packs> = fc.record({
  floor_m2: fc.double({ min: 0.5, max: 4, noNaN: true }),
  can_l: fc.double({ min: 0.5, max: 10, noNaN: true }),
  bag_kg: fc.double({ min: 1, max: 25, noNaN: true }),
  tiles: fc.integer({ min: 1, max: 60 }),
  fronts_m2: fc.double({ min: 0.2, max: 3, noNaN: true }),
  tiles_m2: fc.double({ min: 0.4, max: 2, noNaN: true }),
});

const JOINT_MM = 3;

const laid = (finish: string, more: object = {}): Placement =>
  ({ finish, state: 'decided', laying: { layout: 'plain', ...more } }) as Placement;

/** One finish of each kind where it belongs; packs said in metric or in US units. */
function projectOf(kitchen: Kitchen, packs: Packs, units: 'metric' | 'us', isTileByArea: boolean): Project {
  const area = (m2: number) => (units === 'us' ? `box of ${m2 / M2_PER_FT2} sq ft` : `box of ${m2} m2`);
  const can = units === 'us' ? `can of ${packs.can_l / L_PER_GAL} gal` : `can of ${packs.can_l} L`;
  const bag = units === 'us' ? `bag of ${packs.bag_kg / KG_PER_LB} lb` : `bag of ${packs.bag_kg} kg`;
  const sold: Readonly<Record<string, string>> = {
    'WD-01': area(packs.floor_m2),
    'PT-02': can,
    'GR-01': bag,
    'TL-01': isTileByArea ? area(packs.tiles_m2) : `box of ${packs.tiles}`,
    'LM-01': area(packs.fronts_m2),
    'EN-01': 'slab',
  };
  const library = demo.library.map((finish): Finish => {
    const unit = sold[finish.id];
    return unit === undefined ? finish : { ...finish, supply: { unit } };
  });
  const scheme: Scheme = {
    ...demo.options[0]!.scheme,
    floor: laid('WD-01', { layout: 'planks' }),
    backsplash: laid('TL-01', { layout: 'running-bond', joint_mm: JOINT_MM, grout: 'GR-01' }),
    wall: laid('PT-02'),
    ceiling: laid('PT-02'),
    'base-fronts': laid('LM-01'),
    'wall-fronts': laid('LM-01'),
    'tall-fronts': laid('LM-01'),
    'island-fronts': laid('LM-01'),
    counter: laid('EN-01'),
    'island-counter': laid('EN-01'),
    upstand: laid('EN-01'),
  };
  return { ...demo, kitchen, library, options: [{ ...demo.options[0]!, scheme, items: [] }], revisions: [] } as Project;
}

const rowsOf = (project: Project): readonly ScheduleRow[] => scheduleOf(project, project.options[0]!, []).rows;

const surfacesOf = (row: ScheduleRow, takeoff: Takeoff): readonly SurfaceTakeoff[] =>
  row.surfaces.map((surface) => takeoff.get(surface)!);
const areaOf = (row: ScheduleRow, takeoff: Takeoff): number =>
  surfacesOf(row, takeoff).reduce((sum, one) => sum + one.area_m2, 0);

/** How much of what a row has to cover its order covers, m2 (of grout: kg); null for kinds that are counted. */
function coverOf(row: ScheduleRow, takeoff: Takeoff): { readonly needed: number; readonly covered: number } | null {
  const { order } = row.quantity!;
  // Spares cover nothing.
  const bought = order.packs === null ? order.quantity : (order.packs - order.spares) * order.pack!.quantity;
  const metric = { m2: 1, ft2: M2_PER_FT2, L: 1, gal: L_PER_GAL, kg: 1, lb: KG_PER_LB } as Record<string, number>;
  const needed = areaOf(row, takeoff);
  switch (row.kind) {
    case 'tiles': {
      const tile = demo.library.find(({ id }) => id === row.finish)!.piece_mm!;
      const each = ((tile[0] + JOINT_MM) * (tile[1] + JOINT_MM)) / 1e6;
      return { needed, covered: order.measure === 'piece' ? bought * each : bought * metric[order.measure]! };
    }
    case 'boards':
      return { needed, covered: bought * metric[order.measure]! };
    case 'coat':
      // Two coats at 10 m2 a liter.
      return { needed, covered: (bought * metric[order.measure]! * 10) / 2 };
    case 'grout': {
      const [a, b] = demo.library.find(({ id }) => id === 'TL-01')!.piece_mm!;
      const joints = 1 - (a * b) / ((a + JOINT_MM) * (b + JOINT_MM));
      const depth = demo.library.find(({ id }) => id === 'TL-01')!.thickness_mm ?? 8;
      return { needed: needed * joints * depth * 1.6, covered: bought * metric[order.measure]! };
    }
    case 'fronts': {
      const made = surfacesOf(row, takeoff).flatMap(({ parts }) => parts);
      const sum = made.reduce((all, one) => all + (one.length_mm * one.width_mm * one.count) / 1e6, 0);
      // Sizes are told to a tenth of a millimeter.
      return { needed: sum - 3e-4 * made.length, covered: bought * metric[order.measure]! };
    }
    case 'slab': {
      const { slab_mm, slabs } = row.quantity!.slabs!;
      const cut = slabs.flatMap(({ parts }) => parts);
      const placed = cut.reduce((all, one) => all + (one.length_mm * one.width_mm) / 1e6, 0);
      expect(placed, row.id).toBeCloseTo(needed, 3);
      return { needed, covered: (bought * slab_mm[0] * slab_mm[1]) / 1e6 };
    }
    default:
      return null;
  }
}

const KINDS: readonly PurchaseKind[] = ['tiles', 'boards', 'coat', 'grout', 'fronts', 'slab'];
const seen = { covered: new Map<string, number>(), agreed: new Map<string, number>() };
const note = (of: Map<string, number>, kind: string): void => {
  of.set(kind, (of.get(kind) ?? 0) + 1);
};

afterAll(() => {
  // Each kind was looked at, not only some.
  for (const of of Object.values(seen)) {
    for (const kind of KINDS) expect(of.get(kind) ?? 0, kind).toBeGreaterThan(5);
  }
});

it('of no kind less is ordered than covers what is there, in whole packs, of which one less would hold less than is ordered', () => {
  fc.assert(
    fc.property(
      randomKitchens,
      packs,
      fc.constantFrom('metric', 'us'),
      fc.boolean(),
      (kitchen, packs, units, byArea) => {
        const takeoff = takeOff(kitchen, USUAL_ASSUMPTIONS);
        for (const row of rowsOf(projectOf(kitchen, packs, units, byArea))) {
          if (!row.quantity || !KINDS.includes(row.kind as PurchaseKind)) continue;
          const cover = coverOf(row, takeoff)!;
          expect(cover.covered, `${row.id} ${row.kind}`).toBeGreaterThanOrEqual(cover.needed * (1 - DUST));
          const { order } = row.quantity;
          expect(order.packs, `${row.id} ${row.kind}`).not.toBeNull();
          expect(Number.isInteger(order.packs)).toBe(true);
          const whole = (order.packs! - order.spares) * order.pack!.quantity;
          expect(whole).toBeGreaterThanOrEqual(order.quantity - DUST * order.pack!.quantity);
          expect(whole - order.pack!.quantity).toBeLessThan(order.quantity);
          note(seen.covered, row.kind);
        }
      },
    ),
    { numRuns: 25 },
  );
});

it('of every kind as many packs are ordered where they are told in US units', () => {
  fc.assert(
    fc.property(randomKitchens, packs, fc.boolean(), (kitchen, packs, byArea) => {
      const metric = rowsOf(projectOf(kitchen, packs, 'metric', byArea));
      const us = rowsOf(projectOf(kitchen, packs, 'us', byArea));
      expect(us.map(({ id }) => id)).toEqual(metric.map(({ id }) => id));
      for (const [i, row] of metric.entries()) {
        if (!row.quantity || !KINDS.includes(row.kind as PurchaseKind)) continue;
        expect(us[i]!.quantity!.order.packs, row.id).toBe(row.quantity.order.packs);
        expect(us[i]!.quantity!.area_m2, row.id).toBe(row.quantity.area_m2);
        note(seen.agreed, row.kind);
      }
    }),
    { numRuns: 20 },
  );
});
