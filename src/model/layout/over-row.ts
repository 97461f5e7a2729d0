import type { Kitchen, Run } from '../kitchen';
import type { BaseRow } from './base-row';
import { type FreeSpan, freeSpans } from './free-spans';
import { CORNER_FILLER, WALL_FILLER, WIDEST_FILLER } from './measures';
import { longestRow } from './module-widths';
import { formCorner, runOn, wallLength } from './run-ends';
import { WIDEST_DOOR } from './stand-units';
import type { Row, RunRows, Span, Unit } from './types';

/** A shelf shorter than this is none, mm. */
const LEAST_SHELF = 300;

/** What bounds the row over a run at one end: along the wall, and the least filler there; null where the row just ends. */
interface Bound {
  readonly at: number;
  readonly filler: number | null;
}

/**
 * Wall units or shelves over a run. Units stand over the base units; cooktop and openings part them, tall units, walls and
 * the run that owns a corner bound them.
 */
export function overRow(kitchen: Kitchen, run: Run, base: BaseRow): Pick<RunRows, 'over' | 'shelves'> {
  if (run.over === 'none') return { over: [], shelves: [] };
  const low = bound(kitchen, run, base, 'from');
  const high = bound(kitchen, run, base, 'to');
  const spans = freeSpans(kitchen, run.wall, { from: low.at, to: high.at }, base.cooktop);
  if (run.over === 'shelf') {
    const shelves = spans.filter(({ from, to }) => to - from >= LEAST_SHELF).map(({ from, to }) => ({ from, to }));
    return { over: [], shelves };
  }
  const middle = base.cooktop ? (base.cooktop.from + base.cooktop.to) / 2 : (low.at + high.at) / 2;
  return {
    over: spans.flatMap((span) => unitRow(kitchen, span, base.base.units, { low, high }, middle)),
    shelves: [],
  };
}

function bound(kitchen: Kitchen, run: Run, base: BaseRow, end: 'from' | 'to'): Bound {
  const { wall_units } = kitchen;
  const inward = end === 'from' ? 1 : -1;
  switch (base.ends[end]) {
    case 'tall':
      return { at: base.counter[end], filler: 0 };
    case 'free':
      return { at: end === 'from' ? base.base.units[0]!.from : base.base.units.at(-1)!.to, filler: null };
    case 'wall':
      return { at: run[end], filler: WALL_FILLER };
    case 'owns-corner': {
      const side = end === 'from' ? 'left' : 'right';
      const wall = end === 'from' ? 0 : wallLength(kitchen, 'back');
      return reachesCorner(kitchen, side)
        ? { at: wall + inward * wall_units.depth, filler: CORNER_FILLER }
        : { at: wall, filler: WALL_FILLER };
    }
    case 'meets': {
      if (end === 'from') return { at: base.base.units[0]!.from, filler: null };
      const depth = wallLength(kitchen, run.wall);
      return runOn(kitchen, 'back')?.over === 'none'
        ? { at: depth, filler: WALL_FILLER }
        : { at: depth - wall_units.depth, filler: CORNER_FILLER };
    }
  }
}

/** Whether what hangs over a side run comes up to the row over the back run. */
function reachesCorner(kitchen: Kitchen, side: 'left' | 'right'): boolean {
  const run = runOn(kitchen, side);
  if (!run || run.over === 'none' || !formCorner(kitchen, side)) return false;
  const corner = kitchen.room.depth - kitchen.wall_units.depth;
  const last = freeSpans(kitchen, side, { from: run.from, to: corner }, null).at(-1);
  return !!last && Math.abs(last.to - corner) < 1 && last.to - last.from >= LEAST_SHELF;
}

function unitRow(
  kitchen: Kitchen,
  span: FreeSpan,
  base: readonly Unit[],
  ends: { readonly low: Bound; readonly high: Bound },
  middle: number,
): readonly (Row & Span)[] {
  const low: Bound = span.low === 'bound' ? ends.low : { at: span.from, filler: null };
  const high: Bound = span.high === 'bound' ? ends.high : { at: span.to, filler: null };
  const within = base.filter(({ from, to }) => from >= low.at - 0.1 && to <= high.at + 0.1);
  const before = closeGap(kitchen, low, within, 1);
  const after = closeGap(kitchen, high, within.slice(before.dropped).reverse(), -1);
  const aligned = within.slice(before.dropped, within.length - after.dropped);
  const widths = [...before.widths, ...aligned.map(({ from, to }) => to - from), ...after.widths];
  if (aligned.length === 0) return freeRow(kitchen, low, high, middle);
  const start = aligned[0]!.from - sum(before.widths);
  const end = aligned.at(-1)!.to + sum(after.widths);
  return closedRow(start, widths, end, low, high, middle);
}

/** Modules between an end and the units over base units; some of these give way where a filler would be too wide. */
function closeGap(
  { region }: Kitchen,
  { at, filler }: Bound,
  units: readonly Unit[],
  inward: 1 | -1,
): { readonly dropped: number; readonly widths: readonly number[] } {
  let best: { dropped: number; widths: readonly number[]; rest: number } | null = null;
  for (const [dropped, { from, to }] of units.entries()) {
    const gap = Math.max(0, inward * ((inward === 1 ? from : to) - at));
    const widths = longestRow(region, gap - (filler ?? 0));
    const rest = gap - sum(widths);
    if (!best || rest < best.rest - 1e-6) best = { dropped, widths, rest };
    if (best.rest <= WIDEST_FILLER) break;
  }
  return best ?? { dropped: 0, widths: [] };
}

/** A row where no base unit lies wholly below it. */
function freeRow({ region }: Kitchen, low: Bound, high: Bound, middle: number): readonly (Row & Span)[] {
  const length = high.at - low.at - (low.filler ?? 0) - (high.filler ?? 0);
  const widths = longestRow(region, length);
  if (widths.length === 0) return [];
  const rest = length - sum(widths);
  // Towards a wall the filler takes the rest; between two openings the row stands in the middle.
  const share =
    low.filler !== null && high.filler !== null ? 0.5 : low.filler !== null ? 1 : high.filler !== null ? 0 : 0.5;
  const start = low.at + (low.filler ?? 0) + rest * share;
  return closedRow(start, widths, start + sum(widths), low, high, middle);
}

function closedRow(
  start: number,
  widths: readonly number[],
  end: number,
  low: Bound,
  high: Bound,
  middle: number,
): readonly (Row & Span)[] {
  let at = start;
  const units = widths.map((width): Unit => {
    const unit: Unit = {
      kind: width > WIDEST_DOOR ? 'pair' : 'door',
      from: at,
      to: at + width,
      handle: at + width / 2 < middle ? 'high' : 'low',
    };
    at += width;
    return unit;
  });
  const fillers: Span[] = [];
  const from = low.filler === null ? start : low.at;
  const to = high.filler === null ? end : high.at;
  if (start - from > 1e-6) fillers.push({ from, to: start });
  if (to - end > 1e-6) fillers.push({ from: end, to });
  return [{ from, to, units, fillers }];
}

const sum = (widths: readonly number[]): number => widths.reduce((total, width) => total + width, 0);
