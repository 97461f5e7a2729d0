import type { ScheduleRow, SupersededRow } from './types';

type Bare = Omit<ScheduleRow, 'revision'>;

/** A frozen revision's rows. */
export interface FrozenRows {
  readonly id: string;
  readonly rows: readonly Bare[];
}

/** What makes a row another one: what is ordered, where, how laid, how much; not dates, samples and approvals. */
const specOf = ({
  surfaces,
  finish,
  item,
  layout,
  direction_deg,
  start,
  joint_mm,
  grout,
  quantity,
  state,
}: Bare): string =>
  JSON.stringify([
    surfaces,
    finish,
    item,
    layout,
    direction_deg,
    start,
    joint_mm,
    grout,
    quantity && (quantity.order.packs ?? quantity.order.quantity.toFixed(3)),
    state === 'fixed',
  ]);

/** Since which of the revisions, oldest first, each row stands as it does now: the first of the unbroken line that ends with the latest. */
export function withRevisions(rows: readonly Bare[], frozen: readonly FrozenRows[]): readonly ScheduleRow[] {
  return rows.map((row) => {
    const spec = specOf(row);
    let revision: string | null = null;
    for (const { id, rows: then } of [...frozen].reverse()) {
      if (!then.some((one) => one.id === row.id && specOf(one) === spec)) break;
      revision = id;
    }
    return { ...row, revision };
  });
}

/** Rows of revisions that stand so no longer, each once, under the last revision that had it; in the order of their tags, newest first. */
export function supersededRows(rows: readonly Bare[], frozen: readonly FrozenRows[]): readonly SupersededRow[] {
  const present = new Set(rows.map((row) => `${row.id} ${specOf(row)}`));
  const gone = new Map<string, SupersededRow>();
  for (const { id: revision, rows: then } of [...frozen].reverse()) {
    for (const row of then) {
      const key = `${row.id} ${specOf(row)}`;
      if (present.has(key) || gone.has(key) || row.finish === null) continue;
      const { id, surfaces, element, item, approved, quantity } = row;
      gone.set(key, { id, revision, surfaces, element, item, order: quantity?.order ?? null, approved });
    }
  }
  return [...gone.values()].sort((a, b) => a.id.localeCompare(b.id, 'en', { numeric: true }));
}
