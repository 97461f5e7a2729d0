import type { Problem } from '../../engine/result';
import { placeIn } from '../place-problem';
import type { DataLine } from './cgats-tables';

/** A row of data as it stands, or what is wrong with it. */
export interface CgatsRow {
  readonly line: number;
  readonly cells: readonly string[];
  readonly problem?: Problem;
}

/**
 * The rows of a table of `fields` columns. White space is all that parts values, so that a row may wrap over lines and a value
 * too few or too many shifts all that follow. Where the lines say what a row is, that is used to find the way again:
 * - most lines hold one row: a line that does not is refused, unless lines that follow make it whole;
 * - every row begins on a new line: rows are kept up to the first that does not end with a line;
 * - rows begin anywhere: they can be told by their count only, which has to be right.
 * A line with tabs for each column keeps its words together and its empty cells.
 */
export function cgatsRows(
  data: readonly DataLine[],
  fields: number,
  sets: number | null,
  file: string,
): readonly CgatsRow[] {
  const lines = data.map((one) => fittedLine(one, fields));
  const whole = lines.filter(({ cells, isOpen }) => !isOpen && cells.length === fields).length;
  if (whole * 2 >= lines.length) return rowsByLine(lines, fields, file);
  const grouped = groupedRows(lines, fields, file);
  if (!grouped.some(({ problem }) => problem)) return grouped;
  const words = lines.reduce((sum, { cells }) => sum + cells.length, 0);
  const isOpen = lines.some((one) => one.isOpen);
  if (!isOpen && words % fields === 0 && (sets === null || words === sets * fields)) {
    return runningRows(lines, fields);
  }
  return grouped;
}

type Line = Omit<DataLine, 'tabbed'>;

function fittedLine({ line, cells, isOpen, tabbed }: DataLine, fields: number): Line {
  if (tabbed !== undefined && cells.length !== fields) {
    const apart = tabbed.split('\t');
    if (apart.length === fields) return { line, cells: apart.map(unquoted), isOpen: false };
  }
  return { line, cells, isOpen };
}

function rowsByLine(lines: readonly Line[], fields: number, file: string): readonly CgatsRow[] {
  const rows: CgatsRow[] = [];
  for (let i = 0; i < lines.length; i++) {
    const { line, cells, isOpen } = lines[i]!;
    if (!isOpen && cells.length % fields === 0) rows.push(...split(lines[i]!, fields));
    else {
      const last = isOpen ? -1 : lastOfWrapped(lines, i, fields);
      const joined = lines.slice(i, last + 1).flatMap((one) => one.cells);
      rows.push(last < 0 ? { line, cells, problem: unfit(lines[i]!, fields, file) } : { line, cells: joined });
      if (last >= 0) i = last;
    }
  }
  return rows;
}

/** The line up to which short lines from `from` on make one row; -1 if none. */
function lastOfWrapped(lines: readonly Line[], from: number, fields: number): number {
  let sum = 0;
  for (let i = from; i < lines.length; i++) {
    const { cells, isOpen } = lines[i]!;
    sum += cells.length;
    if (isOpen || cells.length >= fields || sum > fields) return -1;
    if (sum === fields) return i;
  }
  return -1;
}

/** Rows that each begin on a new line and may go on over others; from the first that does not on, none can be told. */
function groupedRows(lines: readonly Line[], fields: number, file: string): readonly CgatsRow[] {
  const rows: CgatsRow[] = [];
  let from = 0;
  while (from < lines.length) {
    const first = lines[from]!;
    const cells: string[] = [];
    let to = from;
    while (to < lines.length && cells.length < fields && !lines[to]!.isOpen) cells.push(...lines[to++]!.cells);
    if (cells.length !== fields) {
      const held = { ...first, cells, isOpen: lines[to]?.isOpen === true && cells.length < fields };
      rows.push({ line: first.line, cells: first.cells, problem: lost(held, fields, lines.length - from, file) });
      return rows;
    }
    rows.push({ line: first.line, cells });
    from = to;
  }
  return rows;
}

function runningRows(lines: readonly Line[], fields: number): readonly CgatsRow[] {
  const words = lines.flatMap(({ line, cells }) => cells.map((cell) => ({ line, cell })));
  return Array.from({ length: words.length / fields }, (_, i) => {
    const row = words.slice(i * fields, (i + 1) * fields);
    return { line: row[0]!.line, cells: row.map(({ cell }) => cell) };
  });
}

const split = ({ line, cells }: Line, fields: number): readonly CgatsRow[] =>
  Array.from({ length: cells.length / fields }, (_, i) => ({
    line,
    cells: cells.slice(i * fields, (i + 1) * fields),
  }));

const unquoted = (cell: string): string => {
  const trimmed = cell.trim();
  return /^".*"$/.test(trimmed) && trimmed.length > 1 ? trimmed.slice(1, -1).replaceAll('""', '"').trim() : trimmed;
};

function unfit({ line, cells, isOpen }: Line, fields: number, file: string): Problem {
  if (isOpen) return openQuote(line, file);
  return {
    code: cells.length < fields ? 'short-row' : 'long-row',
    text: `Line ${line}: the row has ${cells.length} values where ${fields} are named.`,
    at: placeIn(file, line),
    remedy: 'Give each row one value for each field; put names with spaces in double quotes.',
  };
}

/** A row whose end cannot be found, so that nothing after it can be trusted either. */
function lost(row: Line, fields: number, left: number, file: string): Problem {
  const problem = unfit(row, fields, file);
  if (left <= 1) return problem;
  const text = `${problem.text} All that follows may be shifted and is left out: ${left} lines from here.`;
  return { ...problem, text };
}

const openQuote = (line: number, file: string): Problem => ({
  code: 'open-quote',
  text: `Line ${line}: a double quote is not closed.`,
  at: placeIn(file, line),
  remedy: 'Close the quote on the same line; write a quote within a name twice.',
});
