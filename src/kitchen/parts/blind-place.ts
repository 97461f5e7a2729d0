import { SASH } from '../../model/layout/measures';
import type { Plan, PlannedOpening } from '../plan/types';
import { type Extent, type Side, wallSide } from './side';

/** Height and depth of a blind's cassette, and what it keeps clear of the reveal's sides, m. Common practice, no source. */
export const CASSETTE = 0.062;
export const CLEAR = 0.004;

/** Where a blind hangs: distances from the wall and heights, m. */
export interface BlindPlace {
  readonly side: Side;
  /** The front of its cassette. */
  readonly front: number;
  readonly top: number;
  /** Of cloth and bar. */
  readonly a: Extent['a'];
}

/** Null without a blind, and where there is no room for one. */
export function blindPlace(plan: Plan, { blind, wall, from, to, head, reveal }: PlannedOpening): BlindPlace | null {
  if (blind !== 'roller') return null;
  const isInside = reveal - SASH.depth / 1000 >= CASSETTE + 2 * CLEAR;
  const above = head + CASSETTE + CLEAR;
  if (!isInside && above > plan.height) return null;
  return {
    side: wallSide(plan, wall),
    front: isInside ? -CLEAR : CASSETTE,
    top: isInside ? head : above,
    a: [from + 3 * CLEAR, to - 3 * CLEAR],
  };
}
