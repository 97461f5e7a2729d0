import type { Kitchen, RunWall } from '../kitchen';
import { wallUnitHeights } from './free-spans';
import { HOOD } from './measures';
import type { Rows, Span } from './types';

/** Where a hood hangs: along the wall of its run, away from it, heights of its body; mm. */
export interface HoodPlace extends Span {
  readonly run: RunWall;
  readonly kind: 'canopy' | 'built-in';
  readonly depth: number;
  readonly bottom: number;
  readonly top: number;
}

/** Height of the counter, mm. */
export const counterTop = ({ base, counter }: Pick<Kitchen, 'base' | 'counter'>): number =>
  base.plinth_height + base.carcass_height + counter.thickness;

/** The hood over the cooktop, if there is one: a canopy with a chimney, or hidden in a cabinet that ends with the wall units. */
export function hoodPlace(kitchen: Kitchen, rows: Rows): HoodPlace | null {
  const { hood: kind, run } = kitchen.cooktop;
  const over = rows.runs.find(({ wall }) => wall === run)?.cooktop;
  if (kind === 'none' || !over) return null;
  const bottom = counterTop(kitchen) + HOOD.clearance;
  const [, unitsTop] = wallUnitHeights(kitchen);
  return kind === 'canopy'
    ? { ...over, run, kind, depth: HOOD.canopy.depth, bottom, top: bottom + HOOD.canopy.height }
    : { ...over, run, kind, depth: kitchen.wall_units.depth, bottom, top: unitsTop };
}
