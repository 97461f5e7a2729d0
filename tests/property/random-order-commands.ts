import fc from 'fast-check';
import type { OrderCommand } from '../../src/model/commands';

const day = fc.constantFrom('2026-05-04', '2026-05-04', '2026-06-01', '2027-01-31', '2026-02-30', '');
const words = fc.constantFrom('Client', 'Client', ' a b ', '');
const number = fc.constantFrom(1, 2, 5, 10, 101, Number.NaN);
const some = { requiredKeys: [] as never[] };
const option = fc.constantFrom('copied-look', 'our-floor', 'our-floor', 'nowhere');
const finish = fc.constantFrom('ST-03', 'PT-01', 'XX-99', '');
const lot = fc.record({ batch: words, shade: words }, some);

/** What one may say of what is ordered, right or wrong. */
export const orderCommand: fc.Arbitrary<OrderCommand> = fc.oneof(
  fc.record({
    kind: fc.constant('set-job' as const),
    job: fc.record(
      { prepared_for: words, starts_on: day, margin_days: number, stage_days: fc.record({ paint: number }, some) },
      some,
    ),
  }),
  fc.record({
    kind: fc.constant('set-assumptions' as const),
    assumptions: fc.record({ wall_coats: number, kerf_mm: number, paint_behind_units: fc.boolean() }, some),
  }),
  fc.record({
    kind: fc.constant('set-item' as const),
    option,
    record: fc.record(
      {
        item: fc.constantFrom('CT1', 'FL1G', 'XX1'),
        finish,
        waste_percent: number,
        needed_on: day,
        note: words,
        lot,
        approved: fc.record({ by: words, on: day }),
        delivery: fc.record({ on: day, outcome: fc.constantFrom('accepted' as const, 'rejected' as const) }),
      },
      { requiredKeys: ['item', 'finish'] },
    ),
  }),
  fc.record({
    kind: fc.constant('set-extra' as const),
    option,
    extra: fc.record(
      {
        id: fc.constantFrom('X1', 'X2', 'Y1'),
        what: words,
        quantity: number,
        stage: fc.constantFrom('floor' as const, 'paint' as const),
      },
      { requiredKeys: ['id', 'what', 'stage'] },
    ),
  }),
  fc.record({ kind: fc.constant('remove-extra' as const), option, id: fc.constantFrom('X1', 'X2') }),
  fc.record({
    kind: fc.constant('set-sample' as const),
    sample: fc.record(
      {
        finish,
        status: fc.constantFrom('wanted' as const, 'approved' as const),
        on: day,
        verdicts: fc.array(
          fc.record({ light: words, by: words, on: day, verdict: fc.constantFrom('holds' as const, 'fails' as const) }),
          { maxLength: 2 },
        ),
      },
      { requiredKeys: ['finish', 'status', 'verdicts'] },
    ),
  }),
  fc.record({ kind: fc.constant('remove-sample' as const), finish }),
);
