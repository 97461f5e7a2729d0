import type { Region } from '../kitchen';

/** Widths cabinets are made in, in steps, with what each costs a row in looks: few, even, not too narrow units are best. */
interface Series {
  readonly step_mm: number;
  readonly costs: ReadonlyMap<number, number>;
  /** Narrower than a door needs: a pull-out, only where nothing else closes the row. */
  readonly narrow: readonly [steps: number, cost: number];
}

/** European module widths, common practice: 150, 300 to 600, 800 to 1000, 1200 mm. */
const METRIC: Series = {
  step_mm: 50,
  costs: new Map([
    [6, 1.4],
    [8, 1.15],
    [9, 1.1],
    [10, 1.05],
    [12, 1],
    [16, 1.15],
    [18, 1.1],
    [20, 1.25],
    [24, 2.3],
  ]),
  narrow: [3, 3],
};

/** North American module widths, common practice: 9 to 48 in in steps of 3 in. */
const INCHES: Series = {
  step_mm: 76.2,
  costs: new Map([
    [4, 1.4],
    [5, 1.2],
    [6, 1.1],
    [7, 1.08],
    [8, 1],
    [9, 1.05],
    [10, 1.05],
    [11, 1.1],
    [12, 1.1],
    [13, 1.2],
    [14, 1.25],
    [15, 1.4],
    [16, 2.3],
  ]),
  narrow: [3, 3],
};

const seriesOf = (region: Region): Series => (region === 'us' ? INCHES : METRIC);

/** All module widths of a region are whole multiples of this, mm. */
export const moduleStep = (region: Region): number => seriesOf(region).step_mm;

/** The best row of a length: its modules in steps, and what it costs in looks. */
export interface BestRow {
  readonly cost: number;
  readonly steps: readonly number[];
}

const known = new Map<Series, { readonly usual: (BestRow | null)[]; readonly narrow: (BestRow | null)[] }>();

/** The best row that is `length` steps long, null when no set of modules is. `narrow` lets pull-outs in. */
export function bestRow(region: Region, length: number, narrow: boolean): BestRow | null {
  if (length < 0) return null;
  const series = seriesOf(region);
  let tables = known.get(series);
  if (!tables) {
    tables = { usual: [EMPTY], narrow: [EMPTY] };
    known.set(series, tables);
  }
  const table = narrow ? tables.narrow : tables.usual;
  const costs = narrow ? new Map([series.narrow, ...series.costs]) : series.costs;
  for (let n = table.length; n <= length; n++) table.push(oneLonger(table, costs, n));
  return table[length] ?? null;
}

const EMPTY: BestRow = { cost: 0, steps: [] };

function oneLonger(table: readonly (BestRow | null)[], costs: ReadonlyMap<number, number>, n: number): BestRow | null {
  let found: BestRow | null = null;
  for (const [width, cost] of costs) {
    const rest = table[n - width];
    if (!rest) continue;
    const last = rest.steps.at(-1) ?? width;
    const total = rest.cost + cost + Math.abs(last - width) / 80;
    if (!found || total < found.cost - 1e-9) found = { cost: total, steps: [...rest.steps, width] };
  }
  return found;
}

/** Standard module widths (mm) that sum exactly to `length_mm`, fewest and most even first; null when no set does. Empty for 0. */
export function moduleWidths(region: Region, length_mm: number): readonly number[] | null {
  const step = moduleStep(region);
  const steps = Math.round(length_mm / step);
  if (Math.abs(steps * step - length_mm) > 1e-6) return null;
  return bestRow(region, steps, false)?.steps.map((width) => width * step) ?? null;
}

/** The longest row of standard modules not longer than `limit_mm`, in mm. Empty when not even the narrowest fits. */
export function longestRow(region: Region, limit_mm: number): readonly number[] {
  const step = moduleStep(region);
  for (let steps = Math.floor(limit_mm / step + 1e-6); steps > 0; steps--) {
    const row = bestRow(region, steps, false);
    if (row) return row.steps.map((width) => width * step);
  }
  return [];
}
