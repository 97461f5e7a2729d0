import { numberInCell } from './cell-number';
import { meaningOfHeading } from './field-of-heading';
import type { Field, SheetColumn, SheetRow } from './types';

/** A run of this many wavelengths in order down the first column is a spectrum: 400-700 nm at 20 nm has 16. */
const LEAST_DOWN = 16;

/** Both ends that a reflectance needs, nm, and the longest step. */
const REACH = { from: 401, to: 699, step: 20 };

/** Columns and rows of a table whose samples stood in columns. */
export interface TurnedTable {
  readonly columns: readonly SheetColumn[];
  readonly rows: readonly SheetRow[];
  /** Lines above the table that were not read. */
  readonly above: readonly SheetRow[];
}

/**
 * Turns a table with wavelengths down the first column and one sample in each further one, so that each sample is a row; lines above it
 * with a name ("name", "class", "gloss") before their cells become columns. Null for any other table.
 */
export function turnSpectra(rows: readonly SheetRow[]): TurnedTable | null {
  const nm = rows.map(({ cells }) => numberInCell((cells[0] ?? '').replace(/\s*nm$/i, ''), true));
  const run = longestRun(nm);
  if (!run) return null;
  const down = rows.slice(run.from, run.to);
  const count = Math.max(...down.map(({ cells }) => cells.length));
  if (count < 2 || !down.every(({ cells }) => cells.slice(1).every(isValue))) return null;

  const above = rows.slice(0, run.from);
  const heads = above.filter(({ cells }) => cells.length > 1 && cells.slice(1).some((cell) => cell !== ''));
  const named = heads.map((row) => ({ row, field: meaningOfHeading(row.cells[0] ?? '')?.field ?? null }));
  const isSpectral = (field: Field | null) => field?.startsWith('nm:') === true;
  // The line nearest to the values names the samples, unless it says that it is something else.
  const names =
    named.findLast(({ field }) => field === 'name' || field === 'code') ??
    named.findLast(({ field }) => field === null);
  const others = named.filter((one) => one !== names && one.field !== null && !isSpectral(one.field));
  const order = nm[run.from]! < nm[run.to - 1]! ? down : down.toReversed();
  const heading = { heading: names?.row.cells[0] ?? '', field: names?.field ?? ('name' as const) };
  const columns: SheetColumn[] = [
    ...(names ? [heading] : []),
    ...others.map(({ row, field }) => ({ heading: row.cells[0]!, field })),
    ...order.map(({ cells }): SheetColumn => {
      return { heading: cells[0]!, field: `nm:${numberInCell(cells[0]!.replace(/\s*nm$/i, ''), true)}` };
    }),
  ];
  const line = names?.row.line ?? rows[run.from]!.line;
  const turned = Array.from({ length: count - 1 }, (_, i): SheetRow => {
    const cellOf = ({ cells }: SheetRow) => cells[i + 1] ?? '';
    return {
      line,
      cells: [...(names ? [cellOf(names.row)] : []), ...others.map(({ row }) => cellOf(row)), ...order.map(cellOf)],
    };
  });
  const read = new Set([names?.row, ...others.map(({ row }) => row)]);
  return {
    columns,
    rows: turned.filter(({ cells }) => cells.some((cell) => cell !== '')),
    above: above.filter((row) => !read.has(row)),
  };
}

const isValue = (cell: string): boolean => cell === '' || !Number.isNaN(numberInCell(cell, true));

/** The longest run of rising or falling wavelengths that reaches over what is visible. */
function longestRun(nm: readonly number[]): { readonly from: number; readonly to: number } | null {
  let best = { from: 0, to: 0 };
  for (const sign of [1, -1]) {
    let from = 0;
    for (let i = 1; i <= nm.length; i++) {
      if (sign * (nm[i]! - nm[i - 1]!) > 0) continue;
      if (i - from > best.to - best.from) best = { from, to: i };
      from = i;
    }
  }
  const count = best.to - best.from;
  if (count < LEAST_DOWN) return null;
  const ends = [nm[best.from]!, nm[best.to - 1]!];
  const [least, most] = [Math.min(...ends), Math.max(...ends)];
  const isSpectrum = least >= 200 && least <= REACH.from && most >= REACH.to && most <= 2600;
  return isSpectrum && (most - least) / (count - 1) <= REACH.step ? best : null;
}
