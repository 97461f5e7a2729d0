import { longestRow, moduleWidths } from '../model/layout/module-widths';

/** What the rows of an L kitchen with island came to in version 2, which did not write them down, mm. */
interface RowsOf2 {
  /** Outer end of the counter on the left wall, its sink, whether a dishwasher stood beside it. */
  readonly end: number;
  readonly sink: number;
  readonly dishwasher: boolean;
  /** Middle and width of the module under the cooktop; null on a back wall too short for one. */
  readonly cooktop: { readonly center: number; readonly module: number } | null;
}

export interface MeasuresOf2 {
  readonly width: number;
  readonly depth: number;
  readonly base: number;
  readonly overhang: number;
  readonly sink: number;
}

const CORNER_FILLER = 50;
const PANEL = 20;
const SINK = 800;
const DISHWASHER = 600;
const TALL = 2 * 600 + 2 * PANEL;
const WALKWAY = 914;
const END_MODULES = [600, 500, 450, 400, 300];

/** Works the rows out as version 2 did. */
export function rowsOfVersion2(measures: MeasuresOf2): RowsOf2 {
  return { ...leftRow(measures), cooktop: backRow(measures) };
}

function leftRow({ depth, base, overhang, sink }: MeasuresOf2): Omit<RowsOf2, 'cooktop'> {
  const corner = depth - base;
  const { filler, length } = cornerFit(corner - (sink + SINK / 2));
  const from = corner - filler - length - SINK;
  const dishwasher = from - DISHWASHER - PANEL >= WALKWAY;
  const beside = dishwasher ? from - DISHWASHER : from;
  const last = END_MODULES.find((width) => beside - width - PANEL >= WALKWAY) ?? 0;
  return { end: beside - last - PANEL - overhang, sink: from + SINK / 2, dishwasher };
}

function cornerFit(free: number): { readonly filler: number; readonly length: number } {
  const widths = longestRow('eu', free - CORNER_FILLER);
  const filler = free - sum(widths);
  if (filler > 3 * CORNER_FILLER) {
    return { filler: CORNER_FILLER, length: sum(moduleWidths('eu', sum(widths) + 300) ?? [300]) };
  }
  return filler >= CORNER_FILLER ? { filler, length: sum(widths) } : { filler: CORNER_FILLER, length: 0 };
}

function backRow({ width, base }: MeasuresOf2): RowsOf2['cooktop'] {
  const to = width - TALL;
  for (let total = Math.floor((to - base - CORNER_FILLER) / 50 + 1e-6) * 50; total > 0; total -= 50) {
    const module = total >= 2100 ? 900 : 600;
    for (let difference = 0; difference <= 600; difference += 50) {
      const before = (total - module + difference) / 2;
      const after = (total - module - difference) / 2;
      if (before <= 0 || after <= 0 || !moduleWidths('eu', before) || !moduleWidths('eu', after)) continue;
      return { center: to - after - module / 2, module };
    }
  }
  return null;
}

const sum = (widths: readonly number[]): number => widths.reduce((total, width) => total + width, 0);
