import type { Region } from '../kitchen';
import { type BestRow, bestRow, moduleStep } from './module-widths';

/** A module whose place is asked for: widths in mm, best first, and where its middle should be. */
export interface Wished {
  readonly widths: readonly number[];
  readonly center: number;
  /** A module that goes beside it, on the side that has more room: widths in mm, best first. */
  readonly beside: readonly number[];
}

/** A length along a wall to be filled with modules, and how much each end can take of what they leave. */
export interface ToFill {
  readonly region: Region;
  readonly from: number;
  readonly to: number;
  readonly low: { readonly room: number; readonly rank: number };
  readonly high: { readonly room: number; readonly rank: number };
  readonly wished: readonly Wished[];
}

/** A module with a place: which of the wished it is, and on which side what goes beside it stands. */
interface Placed {
  readonly wish: number;
  readonly width: number;
  readonly beside: { readonly width: number; readonly side: 'low' | 'high' } | null;
}

/** A run filled: modules (mm) before, between and after the placed ones, and what the ends take. */
export interface Filled {
  readonly start: number;
  readonly segments: readonly (readonly number[])[];
  readonly placed: readonly Placed[];
  readonly low: number;
  readonly high: number;
  /** What it costs in looks and in distance from the wanted places. */
  readonly cost: number;
}

/** What one millimetre beside the wanted place costs, against the looks of a row; what a step left over costs. */
const PER_MM_OFF = 0.04;
const PER_STEP_LEFT = 2.2;
/** Nothing beside a sink or a cooktop to put things down on. */
const NOTHING_BESIDE = 1;
/** How much better the other side must be for what goes beside a sink. */
const ON_FREER_SIDE = 0.5;

/**
 * Fills a length with standard modules without slivers; wished modules stand as near to their places as modules allow, off by
 * half their own width at most. Null when they do not fit.
 */
export function fillRun(fill: ToFill): Filled | null {
  const wished = fill.wished.map((wish, index) => ({ ...wish, index })).sort((a, b) => a.center - b.center);
  for (const narrow of [false, true]) {
    for (const widths of choices(wished.map((wish) => wish.widths))) {
      for (const beside of choices(wished.map((wish) => (wish.beside.length > 0 ? wish.beside : [0])))) {
        const found = sideChoices(fill, wished, widths, beside).flatMap((sides) => {
          const placed = wished.map(
            ({ index }, i): Placed => ({
              wish: index,
              width: widths[i]!,
              beside: beside[i] ? { width: beside[i], side: sides[i]! } : null,
            }),
          );
          return fillWith(fill, placed, narrow) ?? [];
        });
        // The first of equals stands on the freer side.
        const [first, ...others] = found;
        if (first) return others.reduce((best, one) => (one.cost < best.cost - ON_FREER_SIDE ? one : best), first);
      }
    }
  }
  return null;
}

/** Every choice of one from each list; the first of each first. */
function choices<T>(lists: readonly (readonly T[])[]): T[][] {
  return lists.reduce<T[][]>((all, list) => all.flatMap((one) => list.map((item) => [...one, item])), [[]]);
}

/** Sides for what goes beside, the freer one first. */
function sideChoices(
  { from, to }: ToFill,
  wished: readonly Wished[],
  widths: readonly number[],
  beside: readonly number[],
): ('low' | 'high')[][] {
  const low = (i: number): number => wished[i]!.center - widths[i]! / 2;
  const high = (i: number): number => wished[i]!.center + widths[i]! / 2;
  return choices(
    wished.map((_, i): readonly ('low' | 'high')[] => {
      if (!beside[i]) return ['low'];
      const before = low(i) - (i > 0 ? high(i - 1) : from);
      const after = (i + 1 < wished.length ? low(i + 1) : to) - high(i);
      return before >= after ? ['low', 'high'] : ['high', 'low'];
    }),
  );
}

interface Block {
  /** Whole width, and from its low end to the middle that has a wanted place, in steps. */
  readonly width: number;
  readonly middle: number;
  readonly center: number;
  readonly most: number;
}

function fillWith(fill: ToFill, placed: readonly Placed[], narrow: boolean): Filled | null {
  const { region, from, to, low, high, wished } = fill;
  const step = moduleStep(region);
  const blocks = placed.map(({ wish, width, beside }): Block => {
    const own = Math.round(width / step);
    const more = Math.round((beside?.width ?? 0) / step);
    return {
      width: own + more,
      middle: (beside?.side === 'low' ? more : 0) + own / 2,
      center: wished[wish]!.center,
      most: width / 2,
    };
  });
  const whole = to - from;
  let best: { cost: number; rows: readonly BestRow[]; left: number } | null = null;
  for (let steps = Math.floor(whole / step + 1e-6); steps >= 0; steps--) {
    const left = Math.max(0, whole - steps * step);
    if (left > low.room + high.room + 1e-6) break;
    const [before] = share(left, low, high);
    const found = bestSegments(region, steps, blocks, from + before, narrow);
    if (!found) continue;
    const cost = found.cost + (PER_STEP_LEFT * left) / step;
    if (!best || cost < best.cost - 1e-9) best = { cost, rows: found.rows, left };
  }
  if (!best) return null;
  const [before, after] = share(best.left, low, high);
  return {
    start: from + before,
    segments: best.rows.map((row) => row.steps.map((width) => width * step)),
    placed,
    low: before,
    high: after,
    cost: best.cost,
  };
}

/** What modules leave, shared between the ends: the higher rank first, evenly between equals. */
function share(left: number, low: ToFill['low'], high: ToFill['high']): readonly [low: number, high: number] {
  if (low.rank === high.rank) return [left / 2, left / 2];
  const taken = Math.min(left, (low.rank > high.rank ? low : high).room);
  return low.rank > high.rank ? [taken, left - taken] : [left - taken, taken];
}

/** The best rows before, between and after the blocks of a row that is `steps` long and starts at `start` (mm). */
function bestSegments(
  region: Region,
  steps: number,
  blocks: readonly Block[],
  start: number,
  narrow: boolean,
): { readonly cost: number; readonly rows: readonly BestRow[] } | null {
  const step = moduleStep(region);
  let best: { cost: number; rows: readonly BestRow[] } | null = null;
  const place = (i: number, at: number, cost: number, rows: readonly BestRow[]): void => {
    const block = blocks[i];
    if (!block) {
      const row = bestRow(region, steps - at, narrow);
      const total = row ? cost + costOf(row, i > 0) : 0;
      if (row && (!best || total < best.cost - 1e-9)) best = { cost: total, rows: [...rows, row] };
      return;
    }
    const wanted = (block.center - start) / step - block.middle;
    const reach = block.most / step;
    const first = Math.max(at, Math.ceil(wanted - reach - 1e-6));
    const last = Math.min(steps - block.width, Math.floor(wanted + reach + 1e-6));
    for (let position = first; position <= last; position++) {
      const row = bestRow(region, position - at, narrow);
      if (!row) continue;
      const off = Math.abs(position - wanted) * step * PER_MM_OFF;
      place(i + 1, position + block.width, cost + costOf(row, true) + off, [...rows, row]);
    }
  };
  place(0, 0, 0, []);
  return best;
}

const costOf = (row: BestRow, isBeside: boolean): number =>
  isBeside && row.steps.length === 0 ? NOTHING_BESIDE : row.cost;
