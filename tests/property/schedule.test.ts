import fc from 'fast-check';
import { afterEach, expect, it } from 'vitest';
import { SURFACES } from '../../src/engine/surface';
import { sizeOfOne } from '../../src/kitchen/schedule/item-quantity';
import { scheduleOf } from '../../src/kitchen/schedule/schedule-of';
import { scheduleTable } from '../../src/kitchen/schedule/schedule-table';
import type { Schedule, ScheduleRow } from '../../src/kitchen/schedule/types';
import { takeOff } from '../../src/kitchen/takeoff/take-off';
import { NO_FINISH } from '../../src/model/empty-surface';
import { candidatesFor } from '../../src/model/finish-candidates';
import { layingFor } from '../../src/model/laying';
import { layoutsFor } from '../../src/model/layouts';
import type { ItemRecord } from '../../src/model/order/records';
import { STAGES } from '../../src/model/order/stages';
import type { Finish, Laying, Placement, Project, Scheme } from '../../src/model/project';
import { assumptionsOf } from '../../src/model/quantity/assumptions';
import { type Measure, toMeasure } from '../../src/model/quantity/measures';
import { netText, orderText } from '../../src/ui/schedule/quantity-text';
import { setManner } from '../../src/ui/words/spoken';
import { demoProject } from '../io/demo';
import { randomKitchens } from '../kitchen/layouts';

const demo = demoProject();
const grouts = demo.library.filter((one) => one.class === 'grout').map(({ id }) => id);

afterEach(() => setManner({ words: 'us', unit: 'mm' }));

/** What price lists say; the last ones do not say how much is in a pack, or not in what the finish is measured in. */
const UNITS = ['box of 25', '5 gal pail', 'carton of 20 sq ft', 'm2', 'sq ft', 'slab', 'sheet', 'box', 'can of 2.5 L'];
const units = fc.dictionary(fc.constantFrom(...demo.library.map(({ id }) => id)), fc.constantFrom(...UNITS, ''), {
  maxKeys: 30,
});

const withUnits = (finish: Finish, unit: string | undefined): Finish => {
  if (unit === undefined) return finish;
  const { unit: _, pack: _pack, ...supply } = finish.supply ?? {};
  return { ...finish, supply: { ...supply, ...(unit !== '' && { unit }) } };
};

const placements = fc.record({
  /** Which of the finishes that go there; beyond them nothing is chosen. */
  finish: fc.double({ min: 0, max: 1.05, noNaN: true }),
  layout: fc.nat(5),
  joint_mm: fc.constantFrom(1.6, 2, 3, 5, 20),
  grout: fc.constantFrom(...grouts, null),
  start: fc.constantFrom(undefined, 'corner' as const),
  state: fc.constantFrom<Placement['state']>('open', 'open', 'decided', 'ordered', 'fixed'),
});

/** A scheme of any finishes that go where they lie, laid in any way they can be. */
const schemes = fc
  .tuple(...SURFACES.map(() => placements))
  .map(
    (all) =>
      Object.fromEntries(SURFACES.map((surface, i) => [surface, placementOf(surface, all[i]!)])) as unknown as Scheme,
  );

function placementOf(
  surface: (typeof SURFACES)[number],
  { finish: share, layout, joint_mm, grout, start, state }: typeof placements extends fc.Arbitrary<infer P> ? P : never,
): Placement {
  const offered = candidatesFor(demo.library, surface);
  const finish = offered[Math.floor(share * offered.length)];
  if (!finish) return { finish: NO_FINISH.id, state: 'open', laying: { layout: 'plain' } };
  const ways = layoutsFor(finish, surface);
  const usual = layingFor(finish, surface, demo.library);
  const { grout: _, ...bare } = usual;
  const laying: Laying =
    usual.joint_mm === undefined
      ? usual
      : {
          ...bare,
          layout: ways[layout % ways.length]!,
          joint_mm,
          ...(grout !== null && { grout }),
          ...(start && { start }),
        };
  return { finish: finish.id, state, laying };
}

const records = fc.array(
  fc.record(
    {
      item: fc.constantFrom('CT1', 'FL1', 'FL1G', 'FR1', 'BS1', 'WL1'),
      waste_percent: fc.double({ min: 0, max: 100, noNaN: true }),
      spare_packs: fc.integer({ min: 0, max: 20 }),
      lead_time_weeks: fc.double({ min: 0, max: 104, noNaN: true }),
    },
    { requiredKeys: ['item'] },
  ),
  { maxLength: 3 },
);

const projects = fc
  .record({ kitchen: randomKitchens, units, scheme: schemes, before: fc.array(schemes, { maxLength: 2 }), records })
  .map(({ kitchen, units, scheme, before, records }): Project => {
    const library = demo.library.map((finish) => withUnits(finish, units[finish.id]));
    const [option] = demo.options;
    const { log: _, revisions: _frozen, ...document } = demo;
    const drawn = (scheme: Scheme) => {
      // What is said of an item is said of the finish it has; here of whatever lies there.
      const items = records.flatMap((record): ItemRecord[] =>
        [...new Set(SURFACES.map((surface) => scheme[surface].finish))].map((finish) => ({ ...record, finish })),
      );
      return {
        ...document,
        kitchen,
        library,
        options: [{ ...option!, scheme, items }],
        job: { starts_on: '2026-06-01' },
      };
    };
    const revisions = before.map((then, i) => ({
      id: `R${i + 1}`,
      name: 'As it was',
      at: '2026-05-04T16:30:00Z',
      note: '',
      document: drawn(then),
    }));
    return { ...drawn(scheme), ...(revisions.length > 0 && { revisions }) } as Project;
  });

const scheduleIn = (project: Project): Schedule => scheduleOf(project, project.options[0]!, [], '2026-06-10');
const finishIn = ({ library }: Project, row: ScheduleRow): Finish => library.find(({ id }) => id === row.finish)!;

/** What floating point leaves, in parts of one. */
const DUST = 2e-6;

it('has a row for every surface of the kitchen, one each, under tags of their own, in the order of installing', () => {
  fc.assert(
    fc.property(projects, (project) => {
      const { rows } = scheduleIn(project);
      const inRows = rows.filter(({ kind }) => kind !== 'grout').flatMap(({ surfaces }) => surfaces);
      const present = [...takeOff(project.kitchen, assumptionsOf(undefined)).keys()];
      expect([...inRows].sort()).toEqual([...present].sort());
      expect(new Set(rows.map(({ id }) => id)).size).toBe(rows.length);
      const stages = rows.map(({ stage }) => STAGES.indexOf(stage));
      expect(stages).toEqual([...stages].sort((a, b) => a - b));
    }),
    { numRuns: 20 },
  );
});

it('orders no less than is needed, in whole packs, and not a pack too many', () => {
  fc.assert(
    fc.property(projects, (project) => {
      for (const row of scheduleIn(project).rows) {
        if (!row.quantity) continue;
        const { net, net_measure, order, waste_percent } = row.quantity;
        const { quantity, measure, pack, packs, spares, bought } = order;
        const needed = toMeasure(net, net_measure, measure, sizeOfOne(finishIn(project, row)));
        expect(needed, row.id).not.toBeNull();
        expect(waste_percent, row.id).toBeGreaterThanOrEqual(0);
        expect(quantity, row.id).toBeGreaterThanOrEqual(needed! * (1 - DUST));
        expect(quantity, row.id).toBeGreaterThan(0);
        if (packs === null || !pack) continue;
        expect(pack.measure, row.id).toBe(measure);
        expect(Number.isInteger(packs), row.id).toBe(true);
        expect((packs - spares) * pack.quantity, row.id).toBeGreaterThanOrEqual(quantity * (1 - DUST));
        expect((packs - spares - 1) * pack.quantity, row.id).toBeLessThan(quantity);
        expect(bought, row.id).toBeCloseTo(packs * pack.quantity, 9);
      }
    }),
    { numRuns: 30 },
  );
});

it('says nothing that is no number', () => {
  fc.assert(
    fc.property(projects, (project) => {
      const schedule = scheduleIn(project);
      for (const cell of scheduleTable(schedule).flat()) {
        if (typeof cell === 'number') expect(Number.isFinite(cell)).toBe(true);
        else if (cell !== null) expect(cell).not.toMatch(/NaN|Infinity|undefined|null|\[object/);
      }
      expect(JSON.stringify(schedule)).not.toContain('NaN');
    }),
    { numRuns: 20 },
  );
});

/** What makes two rows the same order; told by the rows alone. */
const orderedAs = ({
  id,
  surfaces,
  finish,
  layout,
  start,
  direction_deg,
  joint_mm,
  grout,
  quantity,
  state,
}: ScheduleRow) =>
  JSON.stringify([
    [id, surfaces, finish, layout, start, direction_deg, joint_mm, grout, state === 'fixed'],
    quantity && (quantity.order.packs ?? quantity.order.quantity.toFixed(3)),
  ]);

it('tells of every row since which revision it stands so, and of every row of a revision that is gone', () => {
  fc.assert(
    fc.property(projects, (project) => {
      const { rows, superseded } = scheduleIn(project);
      const frozen = (project.revisions ?? []).map(({ id, document }) => {
        const then = { ...document, revisions: [] } as unknown as Project;
        return { id, rows: scheduleIn(then).rows };
      });
      const stands = new Set(rows.map(orderedAs));
      for (const row of rows) {
        const since = row.revision === null ? frozen.length : frozen.findIndex(({ id }) => id === row.revision);
        const has = frozen.map(({ rows: then }) => then.some((one) => orderedAs(one) === orderedAs(row)));
        expect(has.slice(since).every(Boolean), row.id).toBe(true);
        if (since > 0) expect(has[since - 1], row.id).toBe(false);
      }
      const gone = new Map<string, string>();
      for (const { id, rows: then } of frozen) {
        for (const row of then) {
          if (row.finish !== null && !stands.has(orderedAs(row)))
            gone.set(orderedAs(row), `${row.id} ${id} ${row.item}`);
        }
      }
      const told = superseded.map(({ id, revision, item }) => `${id} ${revision} ${item}`);
      expect([...told].sort()).toEqual([...gone.values()].sort());
      // As soon as it is frozen, all stands as frozen.
      const { log: _, revisions: _all, ...document } = project;
      const now = { id: 'R9', name: 'Now', at: '2026-05-05T16:30:00Z', note: '', document };
      const after = scheduleIn({ ...project, revisions: [...(project.revisions ?? []), now] });
      expect(after.rows.filter(({ revision }) => revision === null)).toEqual([]);
    }),
    { numRuns: 15 },
  );
});

const WORD: { readonly [word: string]: Measure } = {
  'm²': 'm2',
  'sq ft': 'ft2',
  L: 'L',
  gal: 'gal',
  kg: 'kg',
  lb: 'lb',
  m: 'm',
  ft: 'ft',
  piece: 'piece',
  pieces: 'piece',
  slab: 'slab',
  slabs: 'slab',
  sheet: 'sheet',
  sheets: 'sheet',
};

/** Every number of a text with its unit, in the metric measure of its kind, and by how much rounding may have moved it. */
function amountsIn(text: string): readonly { readonly value: number; readonly within: number; readonly in: Measure }[] {
  return [...text.matchAll(/([\d,]+(?:\.(\d+))?) (m²|sq ft|gal|kg|lb|L|pieces?|slabs?|sheets?|ft|m)(?![a-z])/g)].map(
    ([, number, decimals = '', word]) => {
      const measure = WORD[word!]!;
      const metric = ({ ft2: 'm2', gal: 'L', lb: 'kg', ft: 'm' } as const)[measure as 'ft2'] ?? measure;
      const value = Number(number!.replaceAll(',', ''));
      return {
        value: toMeasure(value, measure, metric)!,
        within: toMeasure(10 ** -decimals.length, measure, metric)!,
        in: metric,
      };
    },
  );
}

it('is told the same in metric and in US units, and what is bought by the pack as it is sold', () => {
  fc.assert(
    fc.property(projects, (project) => {
      for (const { id, quantity } of scheduleIn(project).rows) {
        if (!quantity) continue;
        setManner({ words: 'us', unit: 'mm' });
        const metric = [netText(quantity), orderText(quantity)] as const;
        setManner({ words: 'us', unit: 'in' });
        const us = [netText(quantity), orderText(quantity)] as const;
        if (quantity.order.packs !== null) expect(us[1], id).toBe(metric[1]);
        [0, 1].forEach((i) => {
          const here = amountsIn(metric[i]!);
          const there = amountsIn(us[i]!);
          expect(here.length, `${id}: ${metric[i]}`).toBeGreaterThan(0);
          expect(there.length, `${id}: ${us[i]}`).toBe(here.length);
          here.forEach((one, k) => {
            const other = there[k]!;
            expect(other.in, `${id}: ${metric[i]}, ${us[i]}`).toBe(one.in);
            expect(Math.abs(other.value - one.value), `${id}: ${metric[i]}, ${us[i]}`).toBeLessThanOrEqual(
              one.within + other.within,
            );
          });
        });
        // What is bought without packs is never told as less than it is.
        const { packs, quantity: needed, measure } = quantity.order;
        if (packs === null) {
          for (const text of [metric[1], us[1]]) {
            const [told] = amountsIn(text);
            expect(told!.value, `${id}: ${text}`).toBeGreaterThanOrEqual(
              toMeasure(needed, measure, told!.in)! * (1 - DUST),
            );
          }
        }
      }
    }),
    { numRuns: 20 },
  );
});
