import { BOOTH } from './booth';
import type { Arrangement, PlacedSample, Position, StandSample } from './types';

/** Between samples, and between rows of them, m. */
const GAP_M = 0.03;
/** A row of samples is no longer than this, m. */
const ROW_M = 1.5;
/** What lies is this far from what stands behind it, m. */
const BEFORE_PANEL_M = 0.14;
/** Small samples are put one over the other as long as the stack is no higher, m. */
const STACK_M = 0.34;
const SMALL_M = 0.16;

/** Puts every sample at its place on the table or at the panel, rows in the middle of the stage. */
export function placeSamples(samples: readonly StandSample[], arrangement: Arrangement): PlacedSample[] {
  const lying = samples.filter(({ position }) => positionIn(arrangement, position) === 'up');
  const standing = samples.filter(({ position }) => positionIn(arrangement, position) === 'upright');
  return [...laid(lying, standing.length > 0), ...stood(standing)];
}

const positionIn = (arrangement: Arrangement, position: Position): Position => {
  if (arrangement === 'as-in-room') return position;
  return arrangement === 'all-flat' ? 'up' : 'upright';
};

/** Rows from the back to the front. */
function laid(samples: readonly StandSample[], isBeforeOthers: boolean): PlacedSample[] {
  const rows = rowsOf(samples);
  const depth = rows.reduce((sum, row) => sum + row.height + GAP_M, -GAP_M);
  // Alone on the table they lie round its middle.
  let back = isBeforeOthers ? BOOTH.depth - BEFORE_PANEL_M : BOOTH.depth - 0.25 - Math.max(0, 0.6 - depth) / 2;
  return rows.flatMap((row) => {
    const y = back - row.height;
    back = y - GAP_M;
    return row.items.map(({ sample, along, up }) => ({
      ...sample,
      placed: 'up' as const,
      at: [along, y + up, 0] as const,
    }));
  });
}

/** Rows from the table up; the first row that is decided stands on the table. */
function stood(samples: readonly StandSample[]): PlacedSample[] {
  let foot = 0;
  return rowsOf(samples).flatMap((row) => {
    const z = foot;
    foot += row.height + GAP_M;
    return row.items.map(({ sample, along, up }) => ({
      ...sample,
      placed: 'upright' as const,
      at: [along, BOOTH.depth, z + up] as const,
    }));
  });
}

interface Row {
  readonly height: number;
  /** Where each sample of the row begins along the stage, and over the foot of the row. */
  readonly items: readonly { readonly sample: StandSample; readonly along: number; readonly up: number }[];
}

function rowsOf(samples: readonly StandSample[]): Row[] {
  const columns = columnsOf(samples);
  const total = columns.reduce((sum, { width }) => sum + width + GAP_M, -GAP_M);
  // Rows of about the same length look like one board.
  const most = total / Math.max(1, Math.ceil(total / ROW_M)) + GAP_M;
  const rows: Column[][] = [];
  let length = Infinity;
  for (const column of columns) {
    if (length + column.width / 2 > most) {
      rows.push([]);
      length = 0;
    }
    rows.at(-1)!.push(column);
    length += column.width + GAP_M;
  }
  return rows.map((row) => {
    const width = row.reduce((sum, column) => sum + column.width + GAP_M, -GAP_M);
    let along = (BOOTH.width - width) / 2;
    const items = row.flatMap((column) => {
      const from = along;
      along += column.width + GAP_M;
      return column.items.map(({ sample, up }) => ({ sample, along: from, up }));
    });
    return { height: Math.max(...row.map((column) => column.height)), items };
  });
}

interface Column {
  readonly width: number;
  readonly height: number;
  readonly items: readonly { readonly sample: StandSample; readonly up: number }[];
}

/** Small samples that follow one another share a column, the first on top. */
function columnsOf(samples: readonly StandSample[]): Column[] {
  const groups: StandSample[][] = [];
  for (const sample of samples) {
    const last = groups.at(-1);
    if (last && isSmall(sample) && last.every(isSmall) && heightOf([...last, sample]) <= STACK_M) last.push(sample);
    else groups.push([sample]);
  }
  return groups.map((group) => {
    const height = heightOf(group);
    let top = height;
    const items = group.map((sample) => {
      const up = top - sample.size_m[1];
      top = up - GAP_M;
      return { sample, up };
    });
    return { width: Math.max(...group.map(({ size_m }) => size_m[0])), height, items };
  });
}

const isSmall = ({ size_m: [width, height] }: StandSample): boolean => Math.max(width, height) <= SMALL_M;
const heightOf = (samples: readonly StandSample[]): number =>
  samples.reduce((sum, { size_m }) => sum + size_m[1] + GAP_M, -GAP_M);
