import type { HandoverItem } from './handover-items';
import { inTiers } from './room-order';

/** Tiers seen less than this share the row of the next one below, while it has room for so many pieces. */
const LEAST_SHARE = 0.08;
const MOST_PIECES = 5;

/** Rows of pieces as they stand in the room, from the ceiling down; the floor has its own. */
export function boardRows(
  items: readonly HandoverItem[],
  shareOf: (item: HandoverItem) => number,
): readonly (readonly HandoverItem[])[] {
  const tiers = inTiers(items);
  const rows: HandoverItem[][] = [];
  let waiting: readonly HandoverItem[] = [];
  tiers.forEach((tier, i) => {
    const row = [...waiting, ...tier];
    const share = row.reduce((sum, item) => sum + shareOf(item), 0);
    const below = tiers[i + 1];
    const goesOn = share < LEAST_SHARE && below && i + 2 < tiers.length && row.length + below.length <= MOST_PIECES;
    if (goesOn) {
      waiting = row;
      return;
    }
    waiting = [];
    rows.push(row);
  });
  return rows;
}
