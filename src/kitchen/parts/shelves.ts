import { SHELF } from '../../model/layout/measures';
import type { Plan } from '../plan/types';
import type { Assembly } from './assembly';
import { grained } from './pattern-coordinates';
import { boxAt, type Extent, type Side, wallSide } from './side';

/** Two boards one over the other: how far they reach into the room, thickness, distance, clear of what is beside them, m. */
const BOARD = {
  depth: SHELF.depth / 1000,
  thickness: SHELF.thickness / 1000,
  apart: SHELF.apart / 1000,
  beside: SHELF.beside / 1000,
};

/** A board in its place along its wall. */
export interface Board {
  readonly side: Side;
  readonly extent: Extent;
}

/** Boards in place of wall units, the lower one at their underside. */
export const shelfBoards = (plan: Plan): readonly Board[] =>
  plan.runs.flatMap((run) =>
    run.shelves.flatMap(({ from, to }) =>
      [plan.wallUnits.bottom, plan.wallUnits.bottom + BOARD.apart]
        .filter((z) => z + BOARD.apart < plan.height)
        .map((z) => ({
          side: wallSide(plan, run.wall),
          extent: {
            a: [from + BOARD.beside, to - BOARD.beside],
            d: [0, BOARD.depth],
            z: [z, z + BOARD.thickness],
          },
        })),
    ),
  );

/** Open shelves, of the wall units' finish. */
export function addShelves(parts: Assembly, plan: Plan): void {
  for (const { side, extent } of shelfBoards(plan)) {
    const piece = parts.newPiece();
    const length = extent.a[1] - extent.a[0];
    parts.made.push({ kind: 'shelf', surface: 'wall-fronts', length, width: BOARD.depth });
    parts.box({ surface: 'wall-fronts', coordinates: grained(side.along, piece), piece }, ...boxAt(side, extent));
  }
}
