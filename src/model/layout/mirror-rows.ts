import { ACROSS } from './mirror-kitchen';
import type { IslandRows, Row, RunRows, Span, Unit } from './types';

/** The rows of a run in a room so wide, mm, with left and right exchanged: a run on a side wall stands on the other as it is. */
export function mirrorRun(width: number, run: RunRows): RunRows {
  if (run.wall !== 'back') return { ...run, wall: ACROSS[run.wall] };
  const span = mirrorSpan(width);
  const row = mirrorRow(width);
  return {
    wall: 'back',
    ends: { from: run.ends.to, to: run.ends.from },
    counter: span(run.counter),
    base: { ...span(run.base), ...row(run.base) },
    panels: all(run.panels, span),
    tall: all(run.tall, (block) => ({
      ...span(block),
      end: block.end === 'from' ? 'to' : 'from',
      panels: all(block.panels, span),
      units: all(block.units, (unit) => ({ ...span(unit), kind: unit.kind })),
      fillers: all(block.fillers, span),
    })),
    over: all(run.over, (over) => ({ ...span(over), ...row(over) })),
    shelves: all(run.shelves, span),
    splash: { ...span(run.splash), kind: run.splash.kind },
    sink: run.sink && span(run.sink),
    cooktop: run.cooktop && span(run.cooktop),
  };
}

export const mirrorIsland = (width: number, { row, panel }: IslandRows): IslandRows => ({
  row: mirrorRow(width)(row),
  panel,
});

const mirrorSpan =
  (width: number) =>
  ({ from, to }: Span): Span => ({ from: width - to, to: width - from });

const mirrorRow =
  (width: number) =>
  ({ units, fillers }: Row): Row => ({
    units: all(
      units,
      (unit): Unit => ({
        ...mirrorSpan(width)(unit),
        kind: unit.kind,
        handle: unit.handle === 'low' ? 'high' : 'low',
      }),
    ),
    fillers: all(fillers, mirrorSpan(width)),
  });

/** What stands from low to high, in the new order. */
const all = <T, U>(list: readonly T[], mirror: (one: T) => U): readonly U[] => list.map(mirror).reverse();
