import type { Kitchen, Opening, RunWall } from '../kitchen';
import { NOSING, RAIL } from './measures';
import type { Span } from './types';

/** Heights of the wall units from the floor, mm. */
export function wallUnitHeights({ base, counter, wall_units }: Kitchen): readonly [bottom: number, top: number] {
  const bottom = base.plinth_height + base.carcass_height + counter.thickness + wall_units.gap_above_counter;
  return [bottom, bottom + wall_units.height];
}

/** Openings of a wall that take the place of wall units: what lies wholly below or above them does not. */
function partingOpenings(kitchen: Kitchen, wall: RunWall): readonly Opening[] {
  const [bottom, top] = wallUnitHeights(kitchen);
  return kitchen.openings.filter(
    ({ wall: on, kind, sill, height }) =>
      on === wall &&
      sill - (kind === 'window' ? NOSING.thickness + 3 : 0) < top &&
      sill + height > bottom - RAIL.height,
  );
}

/** A part of a wall over a counter, and what is at its ends. */
export interface FreeSpan extends Span {
  /** `bound`: what bounds the whole; `cut`: an opening; `cooktop`. */
  readonly low: 'bound' | 'cut' | 'cooktop';
  readonly high: 'bound' | 'cut' | 'cooktop';
}

/** What is left of a wall over a counter when openings and the place over the cooktop are taken out, low end first. */
export function freeSpans(
  kitchen: Kitchen,
  wall: RunWall,
  { from, to }: Span,
  cooktop: Span | null,
): readonly FreeSpan[] {
  const cuts = [
    ...partingOpenings(kitchen, wall).map(({ center, width }) => ({
      from: center - width / 2,
      to: center + width / 2,
      by: 'cut' as const,
    })),
    ...(cooktop ? [{ ...cooktop, by: 'cooktop' as const }] : []),
  ].sort((a, b) => a.from - b.from);
  const spans: FreeSpan[] = [];
  let at = from;
  let low: FreeSpan['low'] = 'bound';
  for (const cut of cuts) {
    if (cut.to <= at || cut.from >= to) continue;
    if (cut.from > at) spans.push({ from: at, to: cut.from, low, high: cut.by });
    at = cut.to;
    low = cut.by;
  }
  if (at < to) spans.push({ from: at, to, low, high: 'bound' });
  return spans;
}
