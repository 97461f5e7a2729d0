import type { ItemRecord } from '../../model/order/records';
import { type BareRow, rowSpec, specMark } from './row-spec';
import type { RowProblem, ScheduleRow, SupersededRow } from './types';

/** A frozen revision's rows. */
export interface FrozenRows {
  readonly id: string;
  readonly rows: readonly BareRow[];
}

const OFFERED: RowProblem = {
  code: 'changed-since-offered',
  text: 'Its price was named for all of it as it was before: it has changed since.',
};

/** Since which of the revisions, oldest first, each row stands as it does now: the first of the unbroken line that ends with the latest. */
export function withRevisions(rows: readonly BareRow[], frozen: readonly FrozenRows[]): readonly ScheduleRow[] {
  return rows.map((row) => {
    const spec = rowSpec(row);
    let revision: string | null = null;
    for (const { id, rows: then } of [...frozen].reverse()) {
      if (!then.some((one) => one.id === row.id && rowSpec(one) === spec)) break;
      revision = id;
    }
    return { ...withApproval(row), revision };
  });
}

/** An approval counts for what it was given for, as does a price for all of it; of anything else it is said that it has to be given again. */
function withApproval(given: BareRow): Omit<ScheduleRow, 'revision'> {
  const spec = specMark(given);
  const row =
    given.priced_for === null || given.priced_for === spec
      ? given
      : { ...given, problems: [...given.problems, OFFERED] };
  const { approved } = row;
  if (!approved || approved.of === undefined || approved.of === spec) return { ...row, spec };
  const text = `Approved by ${approved.by} on ${approved.on} as it was before: it has changed since.`;
  return { ...row, spec, approved: null, problems: [...row.problems, { code: 'changed-since-approved', text }] };
}

/**
 * Rows of revisions that stand so no longer, each once, under the last revision that had it, with the approval that was given for it; in the
 * order of their tags, newest first.
 */
export function supersededRows(
  rows: readonly BareRow[],
  frozen: readonly FrozenRows[],
  records: readonly ItemRecord[] = [],
): readonly SupersededRow[] {
  const present = new Set(rows.map((row) => `${row.id} ${rowSpec(row)}`));
  const gone = new Map<string, SupersededRow>();
  for (const { id: revision, rows: then } of [...frozen].reverse()) {
    for (const row of then) {
      const key = `${row.id} ${rowSpec(row)}`;
      const isNothing = row.finish === null && row.kind !== 'extra';
      if (present.has(key) || gone.has(key) || isNothing) continue;
      const { id, surfaces, element, item, quantity } = row;
      const mark = specMark(row);
      const approved =
        records.find((record) => record.item === id && record.approved?.of === mark)?.approved ?? row.approved;
      gone.set(key, { id, revision, surfaces, element, item, order: quantity?.order ?? null, approved });
    }
  }
  return [...gone.values()].sort((a, b) => a.id.localeCompare(b.id, 'en', { numeric: true }));
}
