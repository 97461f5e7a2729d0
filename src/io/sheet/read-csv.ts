import { failure, type Problem, type Result, success } from '../../engine/result';
import { colorColumns } from './color-columns';
import { bareNotice, isUnknown, unknownNotice } from './column-notices';
import { type CutRows, cutRows, knownHeadings } from './cut-rows';
import { guessColumns } from './guess-columns';
import { nameColumns } from './name-columns';
import { conditionsInWords } from './said-conditions';
import { counted, IF_RIGHT, sheetProblem } from './sheet-problem';
import { areStrangeHeadings, columnsUnder } from './strange-headings';
import { turnSpectra } from './turn-spectra';
import type { RefusedRow, Sheet, SheetColumn, SheetRow } from './types';

/** Headings stand among the first rows, below titles at most. */
const HEADINGS_WITHIN = 40;

/** What says that values are of light, not of a surface. */
const OF_LAMPS = /spectral\s+power|irradiance|radiance|emissi|luminous\s+flux|lumens/i;

/** Titles and comments that are looked at, and letters of each. */
const MOST_WORDS = 200;
const MOST_LETTERS = 200;

/** Rows that are looked at for decimal commas, and for what a column holds. */
const LOOKED_AT_ROWS = 500;

/**
 * Reads a table of finishes: which mark separates, where the headings are (titles may stand above, there may be none), what each column
 * means, and spectra whose samples stand in columns. Rows that do not fit the headings are refused. Problems: those of `cutRows`, and
 * 'no-rows' and 'lamp-spectra'.
 */
export function readCsv(text: string, file: string): Result<Sheet> {
  const cut = cutRows(text, file);
  if (!cut.ok) return cut;
  const { rows, comments, broken } = cut.value;
  const table = turnedTable(rows) ?? headedTable(rows) ?? bareTable(rows);
  const words = [...comments, ...table.above.flatMap(({ cells }) => cells)]
    .slice(0, MOST_WORDS)
    .map((one) => one.slice(0, MOST_LETTERS));
  if (words.some((one) => OF_LAMPS.test(one))) return failure(lampSpectra(file));
  const fitting = table.isTurned
    ? { rows: table.rows, refused: broken.map((one, i) => refusedRow(table.rows.length + i + 1, one.problem)) }
    : fitRows(table.rows, table.columns, broken, file);
  if (fitting.rows.length + fitting.refused.length === 0) return failure(noRows(table.columns, file));
  const isComma = cut.value.mark !== ',';
  const comma = isComma ? withComma(fitting.rows) : null;
  const sheet: Sheet = {
    format: 'csv',
    file,
    columns: table.columns,
    rows: fitting.rows,
    // What headings of colors state holds for those that are taken only.
    said: conditionsInWords([...words, ...table.columns.filter(saysOfAll).map(({ heading }) => heading)]),
    decimalComma: isComma,
    ...(table.unknown && { unknown: table.unknown }),
    refused: fitting.refused,
    notices: [...table.notices(file), ...(comma === null ? [] : [commaNotice(comma, file)])],
  };
  return success(sheet);
}

const saysOfAll = ({ field }: SheetColumn): boolean =>
  field === 'illuminant' || field === 'observer_deg' || field === 'specular';

interface Table {
  readonly columns: readonly SheetColumn[];
  readonly rows: readonly SheetRow[];
  readonly above: readonly SheetRow[];
  readonly isTurned: boolean;
  /** Columns that nothing is known of, by number. */
  readonly unknown?: readonly number[];
  notices(file: string): readonly Problem[];
}

function turnedTable(rows: CutRows['rows']): Table | null {
  const turned = turnSpectra(rows);
  if (!turned) return null;
  const words = `The samples stand in columns, one wavelength a line; ${counted(turned.rows.length, 'sample')} were read.`;
  return { ...turned, isTurned: true, notices: (file) => [sheetProblem('table-turned', words, IF_RIGHT, file)] };
}

/** The row that names most fields is the heading: two at least, or all that a first row has. */
function headedTable(rows: CutRows['rows']): Table | null {
  const first = rows[0]?.cells ?? [];
  let at = first.length > 0 && knownHeadings(first) === first.length ? 0 : -1;
  let most = 1;
  for (const [i, { cells }] of rows.slice(0, HEADINGS_WITHIN).entries()) {
    const known = knownHeadings(cells);
    if (known <= most) continue;
    at = i;
    most = known;
  }
  const heading = rows[at];
  if (!heading) return null;
  const below = rows.slice(at + 1);
  const above = rows.slice(0, at);
  const colors = colorColumns(heading.cells);
  const columns = nameColumns(
    heading.cells,
    below.slice(0, LOOKED_AT_ROWS).map(({ cells }) => cells),
    colors,
  );
  const unknown = columns.flatMap((column, i) => (isUnknown(column) && !colors.left.has(i) ? [i] : []));
  return {
    columns,
    // A heading may stand again on each page of a printed list.
    rows: below.filter(({ cells }) => !cells.every((cell, i) => cell === (heading.cells[i] ?? ''))),
    above,
    isTurned: false,
    unknown,
    notices: (file) => [
      ...(above.length > 0 ? [titleNotice(above, file)] : []),
      ...colors.notices(file, heading.line),
      ...(unknown.length > 0 ? [unknownNotice(columns, unknown, file, heading.line)] : []),
    ],
  };
}

/** Without headings, or with such as nobody knows: then what stands in the columns tells what they are. */
function bareTable(rows: CutRows['rows']): Table {
  const [heading, ...below] = rows;
  const looked = below.slice(0, LOOKED_AT_ROWS).map(({ cells }) => cells);
  if (heading && areStrangeHeadings(heading.cells, looked)) {
    const columns = columnsUnder(nameColumns(heading.cells, looked, colorColumns(heading.cells)), looked);
    return { columns, rows: below, above: [], isTurned: false, notices: (file) => [bareNotice(columns, file)] };
  }
  const count = rows.reduce((most, { cells }) => Math.max(most, cells.length), 0);
  const columns = guessColumns(
    rows.map(({ cells }) => cells),
    count,
  );
  return { columns, rows, above: [], isTurned: false, notices: (file) => [bareNotice(columns, file)] };
}

/** Rows with as many cells as there are headings; one that has more is shifted, as by a comma without quotes. */
function fitRows(rows: readonly SheetRow[], columns: readonly SheetColumn[], broken: CutRows['broken'], file: string) {
  const kept: SheetRow[] = [];
  const refused: RefusedRow[] = [];
  const bad = broken.values();
  let next = bad.next();
  let row = 0;
  const refuseBefore = (line: number) => {
    for (; !next.done && next.value.line < line; next = bad.next()) refused.push(refusedRow(++row, next.value.problem));
  };
  for (const { line, cells } of rows) {
    refuseBefore(line);
    row++;
    const extra = cells.slice(columns.length).some((cell) => cell !== '');
    if (!extra) {
      const missing = columns.length - cells.length;
      const fitted = missing > 0 ? [...cells, ...Array<string>(missing).fill('')] : cells.slice(0, columns.length);
      kept.push({ row, line, cells: fitted });
      continue;
    }
    const words = `The row has ${cells.length} cells, the headings are ${columns.length}.`;
    const problem = sheetProblem('row-too-long', words, 'Put a cell that holds a separator in quotes.', file, line);
    const cellOf = (field: string) => cells[columns.findIndex((one) => one.field === field)] || null;
    refused.push({ row, code: cellOf('code'), name: cellOf('name'), problem });
  }
  refuseBefore(Number.POSITIVE_INFINITY);
  return { rows: kept, refused };
}

const refusedRow = (row: number, problem: Problem): RefusedRow => ({ row, code: null, name: null, problem });

/** The first number with a comma in it; null where there is none. */
function withComma(rows: readonly SheetRow[]): string | null {
  for (const { cells } of rows.slice(0, LOOKED_AT_ROWS)) {
    const found = cells.find((cell) => /^[+-]?\d+,\d+\s*%?$/.test(cell));
    if (found !== undefined) return found;
  }
  return null;
}

const commaNotice = (cell: string, file: string): Problem =>
  sheetProblem(
    'decimal-comma',
    `Commas in numbers were read as decimal marks (${cell} is ${cell.replace(',', '.')}).`,
    IF_RIGHT,
    file,
  );

const titleNotice = (above: readonly SheetRow[], file: string): Problem =>
  sheetProblem(
    'lines-left-out',
    `${counted(above.length, 'line')} above the headings ${above.length === 1 ? 'was' : 'were'} not read.`,
    IF_RIGHT,
    file,
  );

const noRows = (columns: readonly SheetColumn[], file: string): Problem =>
  sheetProblem(
    'no-rows',
    `The table has headings (${counted(columns.length, 'column')}) but no rows.`,
    'Export it again with its finishes.',
    file,
  );

const lampSpectra = (file: string): Problem =>
  sheetProblem(
    'lamp-spectra',
    'The file holds light of lamps, not reflectances of finishes.',
    'Open it as the light of a lamp, where lamps are set.',
    file,
  );
