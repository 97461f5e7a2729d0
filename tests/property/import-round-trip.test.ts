import fc from 'fast-check';
import { expect, it } from 'vitest';
import '../seed';
import { FINISH_CLASSES } from '../../src/engine/finish/types';
import { writeCsv } from '../../src/io/sheet/write-csv';
import { checkFinish } from '../../src/model/check-finish';
import { PRICE_UNITS } from '../../src/model/price';
import type { Finish } from '../../src/model/project';
import { demoProject } from '../io/demo';
import { importOf } from '../io/sheet/sample-files';

// What a table can carry comes back from it: a finish of one plain color with all that one orders it by.

/** Words with what tables stumble over, without spaces at their ends, as texts are kept. */
const words = fc
  .array(
    fc.constantFrom(
      'Oat',
      'Grün',
      '"quoted"',
      'a,b',
      ';',
      '=SUM(1)',
      '-x',
      '+1',
      '@home',
      "'",
      '日本',
      '|',
      '2"',
      '100%',
      'é',
    ),
    {
      minLength: 1,
      maxLength: 4,
    },
  )
  .map((parts) => parts.join(' '));

const number = (min: number, max: number) =>
  fc.double({ min, max, noNaN: true }).map((value) => Number(value.toFixed(3)) + 0);

const conditions = fc.record({
  illuminant: fc.constantFrom('D65', 'D50', 'A', 'FL11'),
  observer_deg: fc.constantFrom(2, 10),
});
const specular = fc.constantFrom({}, { specular: 'included' }, { specular: 'excluded' });

const color = fc.oneof(
  fc.tuple(number(20, 90), number(-8, 8), number(-8, 8), conditions, specular).map(([l, a, b, under, beside]) => {
    return { kind: 'lab', lab: [l, a, b], ...under, ...beside };
  }),
  fc.tuple(number(20, 90), number(0, 8), number(0, 360), conditions).map(([l, c, h, under]) => {
    return { kind: 'lch', lch: [l, c, h], ...under };
  }),
  number(10, 80).map((y) => ({ kind: 'xyz', xyz: [y, y, y], illuminant: 'D50', observer_deg: 2 })),
  fc.integer({ min: 0, max: 0xffffff }).map((rgb) => ({ kind: 'hex', hex: `#${rgb.toString(16).padStart(6, '0')}` })),
  fc.constantFrom('5Y 8/2', 'N 6/', '2.5YR 5/6').map((munsell) => ({ kind: 'munsell', munsell })),
  fc
    .tuple(
      fc.constantFrom([400, 10, 31], [380, 5, 81], [360, 20, 20]),
      fc.array(number(0, 1), { minLength: 81, maxLength: 81 }),
    )
    .map(([[start_nm, step_nm, count], values]) => {
      return { kind: 'spectrum', start_nm, step_nm, reflectance: values.slice(0, count) };
    }),
);

const optional = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: undefined });

const supply = fc
  .record({
    supplier: optional(words),
    unit: optional(words),
    pack: optional(number(0.1, 100)),
    lead_time_weeks: optional(fc.integer({ min: 0, max: 50 })),
    price: optional(
      fc
        .record({
          amount: number(0, 1_000_000),
          currency: optional(fc.constantFrom('EUR', 'USD', 'XPF')),
          per: optional(fc.constantFrom(...PRICE_UNITS)),
        })
        .map(present),
    ),
    price_band: optional(fc.constantFrom('$', '$$', '$$$')),
    availability: optional(fc.oneof(words, fc.constantFrom('yes', 'In stock', 'auf Lager', '12'))),
  })
  .map(present);

function present<T extends object>(record: T): Partial<T> | undefined {
  const entries = Object.entries(record).filter(([, value]) => value !== undefined);
  return entries.length > 0 ? (Object.fromEntries(entries) as Partial<T>) : undefined;
}

const finish = fc
  .record({
    name: words,
    kind: fc.constantFrom(...FINISH_CLASSES),
    gloss_gu: number(0, 100),
    color,
    lrv: optional(number(0, 100)),
    variation: fc.constantFrom('V0', 'V1', 'V2', 'V3', 'V4'),
    piece_mm: optional(fc.tuple(number(5, 5000), number(5, 5000))),
    thickness_mm: optional(number(0.1, 200)),
    slab_mm: optional(fc.tuple(number(500, 4000), number(500, 4000))),
    provenance: fc.constantFrom('measured', 'declared', 'photo', 'by-eye', 'photo-with-card'),
    uncertainty_de00: optional(number(0, 30)),
    tags: optional(fc.uniqueArray(fc.constantFrom('warm', 'new', 'Küche', 'a b'), { minLength: 1 })),
    note: optional(words),
    source: optional(words),
    supply,
  })
  .map(({ name, kind, color: one, lrv, provenance, note, source, ...rest }) => {
    const whole = [note, source && `Source: ${source}`].filter(Boolean).join(' ');
    return (id: string) =>
      present({
        id,
        label: `${name}, ${id}`,
        class: kind,
        components: [present({ role: 'base', share: 1, color: one, lrv })],
        pattern: { kind: 'plain' },
        provenance: one.kind === 'hex' ? 'screen' : provenance,
        note: whole || undefined,
        ...rest,
      }) as unknown as Finish;
  });

const finishes = fc
  .array(finish, { minLength: 1, maxLength: 6 })
  .map((makers) => makers.map((make, i) => make(`EX-${i}`)))
  .filter((all) => all.every((one) => checkFinish(one, 'finish').length === 0));

it('gives finishes of one plain color back as they were', () => {
  fc.assert(
    fc.property(finishes, fc.boolean(), (given, mark) => {
      const { text, notices } = writeCsv(given, { mark });
      expect(notices).toEqual([]);
      const { kept, refused } = importOf(text, {});
      // What no surface can have is refused on the way in; the table itself holds it.
      expect(kept.length + refused.length).toBe(given.length);
      expect(
        refused.map(({ problem }) => problem.code).filter((code) => code !== 'outside-object-color-solid'),
      ).toEqual([]);
      const back = new Map(kept.map((one) => [one.finish.id, one.finish]));
      for (const one of given) if (back.has(one.id)) expect(back.get(one.id)).toEqual(one);
    }),
    { numRuns: 150 },
  );
});

it('writes the library of the demo, with what a table cannot hold told', () => {
  const { library } = demoProject();
  const { text, notices } = writeCsv(library);
  const { kept, refused } = importOf(text, {});
  expect(refused).toEqual([]);
  expect(kept.map(({ finish: one }) => one.id)).toEqual(library.map(({ id }) => id));
  const several = library.filter(({ components }) => components.length > 1).length;
  expect(notices[0]).toMatchObject({ code: 'several-colors', text: expect.stringContaining(`${several} finishes`) });
  for (const [i, one] of library.entries()) {
    const back = kept[i]!.finish;
    expect([back.label, back.class, back.gloss_gu, back.supply, back.piece_mm]).toEqual([
      one.label,
      one.class,
      one.gloss_gu,
      one.supply,
      one.piece_mm,
    ]);
  }
});
