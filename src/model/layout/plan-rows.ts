import type { Kitchen } from '../kitchen';
import { longestRow, moduleWidths } from './module-widths';
import type { Row, Span, Unit, UnitKind } from './types';

/** Clear strip beside an inner corner, so that drawers pass the handles of the other leg, mm. Common practice. */
const CORNER_FILLER = 50;
const WALL_FILLER = 20;
export const PANEL = 20;
const TALL_MODULE = 600;
const SINK_MODULE = 800;
const DISHWASHER_MODULE = 600;
/** Least free floor between the end of the short leg and the door wall, mm (walkway, planning guidelines: 914). */
const WALKWAY = 914;
const END_MODULES = [600, 500, 450, 400, 300];

/** The rows in mm, before they become metres. */
export interface Rows {
  readonly left: Row & { readonly end: number; readonly sink: Span };
  readonly back: Row & { readonly to: number; readonly cooktop: Span };
  readonly wall: readonly (Row & Span)[];
  readonly tall: { readonly panel: Span; readonly oven: Span; readonly fridge: Span };
  readonly island: { readonly row: Row; readonly panel: number };
}

/** Fits standard modules into the runs of an L kitchen; what remains becomes fillers. Lengths in mm. */
export function planRows(kitchen: Kitchen): Rows {
  const tallFrom = kitchen.room.width - WALL_FILLER - 2 * TALL_MODULE - PANEL;
  const back = backRow(kitchen.base.depth, tallFrom);
  return {
    left: leftRow(kitchen),
    back: { units: back.units, fillers: back.fillers, to: tallFrom, cooktop: back.cooktop },
    wall: wallRows(back, tallFrom),
    tall: {
      panel: { from: tallFrom, to: tallFrom + PANEL },
      oven: { from: tallFrom + PANEL, to: tallFrom + PANEL + TALL_MODULE },
      fridge: { from: tallFrom + PANEL + TALL_MODULE, to: tallFrom + PANEL + 2 * TALL_MODULE },
    },
    island: islandRow(kitchen),
  };
}

interface BackRow extends Row {
  readonly cooktop: Span;
  readonly before: readonly number[];
  readonly after: readonly number[];
}

/** Corner filler, units, cooktop unit as near the middle as modules allow, units. */
function backRow(from: number, to: number): BackRow {
  const free = to - from - CORNER_FILLER;
  for (let total = Math.floor(free / 50 + 1e-6) * 50; total > 0; total -= 50) {
    const cooktop = total >= 2100 ? 900 : 600;
    const sides = splitEvenly(total - cooktop);
    if (!sides) continue;
    const [before, after] = sides;
    const start = to - total;
    const cook = start + sum(before);
    const afterUnits = stand(cook + cooktop, after, 'low');
    const last = afterUnits[afterUnits.length - 1]!;
    const drawersLast = last.to - last.from <= 600 ? [...afterUnits.slice(0, -1), as('drawers', last)] : afterUnits;
    return {
      units: [
        ...stand(start, before, 'high'),
        { kind: 'cooktop', from: cook, to: cook + cooktop, handle: 'high' },
        ...drawersLast,
      ],
      fillers: [{ from, to: start }],
      cooktop: { from: cook, to: cook + cooktop },
      before,
      after,
    };
  }
  throw new Error(`no room for a cooktop between two units in ${to - from} mm of back wall`);
}

/** Two rows of modules as alike as possible; narrower modules away from the middle. */
function splitEvenly(total: number): readonly [readonly number[], readonly number[]] | null {
  for (let difference = 0; difference <= 600; difference += 50) {
    const before = moduleWidths((total + difference) / 2);
    const after = moduleWidths((total - difference) / 2);
    if (!before?.length || !after?.length) continue;
    return [[...before].sort((a, b) => a - b), [...after].sort((a, b) => b - a)];
  }
  return null;
}

/** Wall units stand over the base units beside the cooktop; into the corner goes what fits. */
function wallRows(back: BackRow, to: number): (Row & Span)[] {
  const aligned = back.cooktop.from - sum(back.before);
  const corner = longestRow(aligned - WALL_FILLER);
  const start = aligned - sum(corner);
  return [
    {
      from: 0,
      to: back.cooktop.from,
      units: [...stand(start, corner, 'high'), ...stand(aligned, back.before, 'high')],
      fillers: [{ from: 0, to: start }],
    },
    { from: back.cooktop.to, to, units: stand(back.cooktop.to, back.after, 'low'), fillers: [] },
  ];
}

/** From the corner towards the door: filler, units, sink under the window, dishwasher, end unit, end panel. */
function leftRow(kitchen: Kitchen): Rows['left'] {
  const corner = kitchen.room.depth - kitchen.base.depth;
  const free = corner - (kitchen.sink.center + SINK_MODULE / 2);
  const { filler, widths } = cornerFit(free);
  const sinkTo = corner - filler - sum(widths);
  const sinkFrom = sinkTo - SINK_MODULE;
  const units: Unit[] = [{ kind: 'sink', from: sinkFrom, to: sinkTo, handle: 'high' }, ...stand(sinkTo, widths, 'low')];
  let end = sinkFrom;
  if (end - DISHWASHER_MODULE - PANEL >= WALKWAY) {
    units.unshift({ kind: 'dishwasher', from: end - DISHWASHER_MODULE, to: end, handle: 'high' });
    end -= DISHWASHER_MODULE;
  }
  const width = END_MODULES.find((w) => end - w - PANEL >= WALKWAY);
  if (width) {
    units.unshift({ kind: width >= 400 ? 'drawers' : 'door', from: end - width, to: end, handle: 'high' });
    end -= width;
  }
  return {
    units,
    fillers: [{ from: corner - filler, to: corner }],
    end: end - PANEL,
    sink: { from: sinkFrom, to: sinkTo },
  };
}

/** Modules and filler between sink and corner; keeps the sink at the window's centre when a filler can take the rest. */
function cornerFit(free: number): { filler: number; widths: readonly number[] } {
  const widths = longestRow(free - CORNER_FILLER);
  const filler = free - sum(widths);
  if (filler >= CORNER_FILLER && filler <= 3 * CORNER_FILLER) return { filler, widths };
  if (filler > 3 * CORNER_FILLER) return { filler: CORNER_FILLER, widths: moduleWidths(sum(widths) + 300) ?? [300] };
  return { filler: CORNER_FILLER, widths: [] };
}

/** Units of the island's working side; its two end panels share what is left. */
function islandRow(kitchen: Kitchen): Rows['island'] {
  const { x, width } = kitchen.island;
  const inner = width - 2 * kitchen.counter.overhang;
  const widths = longestRow(inner - 2 * PANEL);
  const panel = (inner - sum(widths)) / 2;
  const units = stand(x + kitchen.counter.overhang + panel, widths, 'high');
  return { row: { units: units.map((u, i) => (i % 2 === 0 ? as('drawers', u) : u)), fillers: [] }, panel };
}

function stand(from: number, widths: readonly number[], handle: 'low' | 'high'): Unit[] {
  let at = from;
  return widths.map((width) => {
    const unit: Unit = { kind: width >= 800 ? 'pair' : 'door', from: at, to: at + width, handle };
    at += width;
    return unit;
  });
}

const as = (kind: UnitKind, unit: Unit): Unit => ({ ...unit, kind });

const sum = (widths: readonly number[]): number => widths.reduce((total, width) => total + width, 0);
