import type { Kitchen, RunWall } from '../kitchen';
import type { RunRows, Span } from '../layout/types';
import { beforeWall } from '../layout/wall-box';
import type { Stretch } from './types';

/** Counter that goes on without a break from an edge of something in its run. */
export interface Beside {
  readonly length_mm: number;
  readonly at: Stretch;
}

/** The counter to the low and to the high side of a module, up to the next sink, cooktop, tall unit or end; round a corner its depth counts. */
export function counterBeside(kitchen: Kitchen, run: RunRows, module: Span): readonly [low: Beside, high: Beside] {
  const others = [run.sink, run.cooktop].filter(
    (span): span is Span => span !== null && Math.abs(span.from - module.from) > 1,
  );
  const corner = kitchen.counter.depth;
  const low = Math.max(
    run.counter.from - (run.ends.from === 'meets' ? corner : 0),
    ...others.filter(({ to }) => to <= module.from + 1).map(({ to }) => to),
  );
  const high = Math.min(
    run.counter.to + (run.ends.to === 'meets' ? corner : 0),
    ...others.filter(({ from }) => from >= module.to - 1).map(({ from }) => from),
  );
  return [
    { length_mm: module.from - low, at: onCounter(kitchen, run.wall, low, module.from) },
    { length_mm: high - module.to, at: onCounter(kitchen, run.wall, module.to, high) },
  ];
}

/** A line along the middle of a counter. */
export function onCounter(kitchen: Kitchen, wall: RunWall, from: number, to: number): Stretch {
  const half = kitchen.counter.depth / 2;
  const { x, y } = beforeWall(kitchen, wall, [from, to], [half, half]);
  return { from: [x[0], y[0]], to: [x[1], y[1]] };
}
