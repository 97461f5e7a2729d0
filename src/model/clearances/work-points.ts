import type { PlanPoint } from '../fixture';
import type { Kitchen, RunWall } from '../kitchen';
import type { Rows, RunRows, Span, TallBlock } from '../layout/types';
import { beforeWall } from '../layout/wall-box';

/** A fridge in its run, and the tall block it stands in. */
export interface FridgePlace {
  readonly run: RunRows;
  readonly block: TallBlock;
  readonly unit: Span;
  /** Nothing stands between it and the counter but the panel. */
  readonly isBesideCounter: boolean;
}

/** The first fridge of a kitchen; null where there is none among its tall units. */
export function fridgePlace(rows: Rows): FridgePlace | null {
  for (const run of rows.runs) {
    for (const block of run.tall) {
      const unit = block.units.find(({ kind }) => kind === 'fridge');
      if (!unit) continue;
      const inner = block.end === 'from' ? block.units.at(-1) : block.units[0];
      return { run, block, unit, isBesideCounter: inner === unit };
    }
  }
  return null;
}

/** The middle of the front of a module: where one stands before it, less a step. */
export function frontOf(kitchen: Kitchen, wall: RunWall, { from, to }: Span): PlanPoint {
  const middle = (from + to) / 2;
  const { x, y } = beforeWall(kitchen, wall, [middle, middle], [kitchen.counter.depth, kitchen.counter.depth]);
  return [x[0], y[0]];
}
