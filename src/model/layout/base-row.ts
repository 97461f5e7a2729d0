import type { Kitchen, Run } from '../kitchen';
import { type Filled, fillRun, type Wished } from './fill-run';
import { cooktopModule, dishwasherModules, sinkModules } from './fixed-modules';
import { PANEL, WIDEST_PANEL } from './measures';
import { type EndPlan, runEnds } from './run-ends';
import { standUnits } from './stand-units';
import { tallBlock } from './tall-block';
import type { RunRows, Span } from './types';

/** A run without what hangs over it. */
export type BaseRow = Omit<RunRows, 'over' | 'shelves'>;

/** Fits modules into a run; null where sink, dishwasher and cooktop do not go into it. */
export function baseRow(kitchen: Kitchen, run: Run): BaseRow | null {
  const { from, to } = runEnds(kitchen, run);
  const wished = wishesOf(kitchen, run);
  const tile = { from: from.at + from.tile + from.filler, to: to.at - to.tile - to.filler };
  if (!wished || tile.to < tile.from) return null;
  const filled = fillRun({
    region: kitchen.region,
    ...tile,
    low: from,
    high: to,
    wished: wished.map(({ wish }) => wish),
  });
  if (!filled) return null;
  const names = wished.map(({ name }) => name);
  const { units, places } = standUnits(filled, names, {
    low: isOpenEnd(from),
    high: isOpenEnd(to),
    cooktop: kitchen.cooktop.oven_below ? 'cooktop-oven' : 'cooktop',
  });
  if (units.length === 0) return null;
  return assemble(kitchen, run, { from, to }, filled, { units, places });
}

/** Ends at which one comes close to the last unit: drawers are best there. */
const isOpenEnd = ({ kind }: EndPlan): boolean => kind === 'free' || kind === 'tall';

/** What has a place of its own in this run; null for a cooktop no module holds. */
function wishesOf(
  { region, sink, cooktop, dishwasher }: Kitchen,
  { wall }: Run,
): { readonly name: 'sink' | 'cooktop'; readonly wish: Wished }[] | null {
  const wishes: { name: 'sink' | 'cooktop'; wish: Wished }[] = [];
  if (sink.run === wall) {
    const beside = dishwasher === 'none' ? [] : dishwasherModules(region);
    wishes.push({ name: 'sink', wish: { widths: sinkModules(region, sink.bowls), center: sink.center, beside } });
  }
  if (cooktop.run === wall) {
    const width = cooktopModule(region, cooktop);
    if (width === null) return null;
    wishes.push({ name: 'cooktop', wish: { widths: [width], center: cooktop.center, beside: [] } });
  }
  return wishes;
}

function assemble(
  kitchen: Kitchen,
  run: Run,
  { from, to }: { readonly from: EndPlan; readonly to: EndPlan },
  filled: Filled,
  { units, places }: ReturnType<typeof standUnits>,
): BaseRow {
  const last = units.at(-1)!.to;
  const low = closeEnd(kitchen, run, from, filled.low, filled.start);
  const high = closeEnd(kitchen, run, to, filled.high, last);
  const counter = { from: low.counter, to: high.counter };
  return {
    wall: run.wall,
    ends: { from: from.kind, to: to.kind },
    counter,
    base: {
      from: low.base,
      to: high.base,
      units,
      fillers: [...low.fillers, ...high.fillers],
    },
    panels: [...low.panels, ...high.panels],
    tall: [...low.tall, ...high.tall],
    splash: { ...splashSpan(kitchen, { from, to }, counter), kind: run.splash },
    sink: places.sink ?? null,
    cooktop: places.cooktop ?? null,
  };
}

/** The wall behind the counter: it goes on behind the counter of the leg that owns the corner. */
function splashSpan(
  { island }: Kitchen,
  { from, to }: { readonly from: EndPlan; readonly to: EndPlan },
  counter: Span,
): Span {
  return {
    from: from.kind === 'meets' && island ? island.y : counter.from,
    to: to.kind === 'meets' ? to.at : counter.to,
  };
}

interface ClosedEnd extends Pick<BaseRow, 'panels' | 'tall'> {
  readonly counter: number;
  readonly base: number;
  readonly fillers: readonly Span[];
}

/** An end with what it takes (`more`, mm) of the length that modules leave; the first or last module ends at `row`. */
function closeEnd(kitchen: Kitchen, run: Run, end: EndPlan, more: number, row: number): ClosedEnd {
  const { at, inward } = end;
  const isLow = inward === 1;
  // Small rests pack out a panel, larger ones are a filler of their own.
  const packs = end.outer === 'free' && more <= WIDEST_PANEL - PANEL + 1e-6;
  const panel = PANEL + (packs ? more : 0);
  const between = (a: number, b: number): Span => (isLow ? { from: a, to: b } : { from: b, to: a });
  const filler = (a: number): readonly Span[] => (Math.abs(row - a) > 1e-6 ? [between(a, row)] : []);
  if (end.kind === 'tall') {
    const block = tallBlock(kitchen, run, end, packs ? { panel } : end.outer === 'free' ? {} : { filler: more });
    const inner = isLow ? block.to : block.from;
    return { counter: inner, base: inner, fillers: filler(inner), panels: [], tall: [block] };
  }
  if (end.kind === 'free') {
    const edge = at + inward * kitchen.counter.overhang;
    const carcass = edge + inward * panel;
    return { counter: at, base: carcass, fillers: filler(carcass), panels: [between(edge, carcass)], tall: [] };
  }
  return {
    counter: at + inward * end.counter,
    base: at + inward * end.base,
    fillers: filler(at + inward * end.tile),
    panels: [],
    tall: [],
  };
}
