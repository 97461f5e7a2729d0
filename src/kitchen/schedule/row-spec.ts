import type { ScheduleRow } from './types';

/** A row before it is looked for in revisions. */
export type BareRow = Omit<ScheduleRow, 'revision' | 'spec'>;

/** What makes a row another one: what is ordered, where, how laid, how much; not dates, lots, samples, prices and approvals. */
export const rowSpec = (row: BareRow): string =>
  JSON.stringify([
    row.surfaces,
    row.finish,
    row.item,
    row.code,
    row.size_mm,
    row.thickness_mm,
    row.edge,
    row.layout,
    row.direction_deg,
    row.start,
    row.joint_mm,
    row.grout,
    row.written,
    row.quantity && orderedAs(row.quantity.order),
    row.state === 'fixed',
  ]);

const orderedAs = ({ pack, packs, quantity, measure }: NonNullable<BareRow['quantity']>['order']): string =>
  pack && packs !== null ? `${packs} x ${pack.quantity} ${pack.measure}` : `${quantity.toFixed(3)} ${measure}`;

/** FNV-1a, 32 bits (Fowler, Noll, Vo; IETF draft-eastlake-fnv): short enough to keep beside an approval. */
const FNV_OFFSET = 0x811c9dc5;
const FNV_PRIME = 0x01000193;

/**
 * A short mark of a row's spec, by which an approval knows what it was given for. Whatever is added to `rowSpec` asks for all approvals
 * anew.
 */
export function specMark(row: BareRow): string {
  let hash = FNV_OFFSET;
  for (const byte of new TextEncoder().encode(rowSpec(row))) hash = Math.imul(hash ^ byte, FNV_PRIME) >>> 0;
  return hash.toString(16).padStart(8, '0');
}
