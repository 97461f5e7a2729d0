import Papa from 'papaparse';
import { failure, type Problem, type Result, success } from '../../engine/result';
import { LEAST_WAVELENGTHS, meaningOfHeading } from './field-of-heading';
import { sheetProblem } from './sheet-problem';
import type { SheetRow } from './types';

/** What is kept of a library at once; more is several libraries. */
export const MOST_ROWS = 100_000;
/** Instruments give 401 wavelengths at 1 nm; a table with its samples in columns may have more. */
const MOST_COLUMNS = 2000;
/** A long note; more is another kind of file. */
const MOST_LETTERS_IN_CELL = 5000;
/** As many cells of the widest table. */
const MOST_LETTERS_IN_LINE = 200_000;
/** Notes of several lines and empty lines make more lines than rows. */
const MOST_LINES = 4 * MOST_ROWS;

const MARKS = [';', '\t', '|', ','] as const;
type Mark = (typeof MARKS)[number];

/** As many lines show what separates cells. */
const LOOKED_AT_LINES = 60;

/** The rows of a table cut into cells. */
export interface CutRows {
  readonly mark: Mark;
  readonly rows: readonly SheetRow[];
  /** Comment lines, without their #. */
  readonly comments: readonly string[];
  /** Rows that cannot be cut, or with a cell that is too long. */
  readonly broken: readonly { readonly line: number; readonly problem: Problem }[];
}

/**
 * Cuts a table into rows and cells: comma, semicolon, tab or bar between cells, found out; cells may stand in double quotes, hold line
 * breaks and doubled quotes. Lines are those of the file. Empty rows and lines that begin with # are left out.
 * Problems: 'no-table', 'line-too-long', 'too-many-rows', 'too-many-columns'.
 */
export function cutRows(text: string, file?: string): Result<CutRows> {
  const lined = text.replace(/^\uFEFF/, '').replace(/\r\n?/g, '\n');
  const wrong = lineProblem(lined, file);
  if (wrong) return failure(wrong);
  // Spreadsheets write their separator into a first line of its own.
  const said = /^sep=([;,\t|])\n/i.exec(lined)?.[1] as Mark | undefined;
  const body = said ? lined.slice(lined.indexOf('\n') + 1) : lined;
  const mark = said ?? findMark(body);
  const parsed = Papa.parse<string[]>(body, { delimiter: mark, newline: '\n', preview: MOST_ROWS + 1000 });
  return sortRows(parsed, mark, said ? 2 : 1, file);
}

function sortRows(
  { data, errors, meta }: Papa.ParseResult<string[]>,
  mark: Mark,
  firstLine: number,
  file?: string,
): Result<CutRows> {
  const rows: SheetRow[] = [];
  const comments: string[] = [];
  const broken: { line: number; problem: Problem }[] = [];
  const errorsOf = new Map(errors.map((error) => [error.row ?? -1, error.code]));
  let line = firstLine;
  for (const [i, cells] of data.entries()) {
    const at = line;
    line += 1;
    let letters = 0;
    for (const cell of cells) {
      for (let from = cell.indexOf('\n'); from >= 0; from = cell.indexOf('\n', from + 1)) line++;
      letters = Math.max(letters, cell.length);
    }
    const first = cells[0] ?? '';
    const refuse = (code: string, words: string, remedy: string) =>
      broken.push({ line: at, problem: sheetProblem(code, words, remedy, file, at) });
    const error = errorsOf.get(i);
    if (isComment(first)) comments.push(cells.join(mark).replace(/^\s*#+\s*/, ''));
    else if (cells.every((cell) => cell.trim() === '')) continue;
    else if (error === 'MissingQuotes') {
      refuse('quote-not-closed', `A quote opens in this row and never closes; what follows was not read.`, CLOSE_QUOTE);
    } else if (error === 'InvalidQuotes' && line > at + 1) {
      refuse('quotes-out-of-order', 'The quotes in this row do not fit together.', CLOSE_QUOTE);
    } else if (letters > MOST_LETTERS_IN_CELL) {
      refuse(
        'cell-too-long',
        `A cell has ${letters} letters; up to ${MOST_LETTERS_IN_CELL} can be kept.`,
        'Shorten it.',
      );
    } else if (cells.length > MOST_COLUMNS) {
      const words = `Row in line ${at} has ${cells.length} columns; up to ${MOST_COLUMNS} can be read.`;
      return failure(sheetProblem('too-many-columns', words, 'Split the file.', file, at));
    } else rows.push({ line: at, cells: cells.map((cell) => cell.trim()) });
  }
  if (rows.length > MOST_ROWS || meta.truncated) {
    return failure(tooManyRows(file));
  }
  if (rows.length + broken.length === 0) {
    return failure(sheetProblem('no-table', 'The file has no rows.', 'Choose a file with a table (CSV).', file));
  }
  return success({ mark, rows, comments, broken });
}

const CLOSE_QUOTE = 'Close each cell in quotes with a quote; write a quote inside of it twice ("").';

/** #d9cfbb in a first column is a color. */
const isComment = (first: string): boolean =>
  /^\s*#/.test(first) && !/^\s*#(?:[0-9a-f]{3}|[0-9a-f]{6})?\s*$/i.test(first);

/** A line that is too long, or too many of them: seen before anything is cut, which would take long. */
function lineProblem(text: string, file?: string): Problem | null {
  let line = 1;
  for (let from = 0; from < text.length; line++) {
    const found = text.indexOf('\n', from);
    const end = found < 0 ? text.length : found;
    if (end - from > MOST_LETTERS_IN_LINE) {
      const words = `Line ${line} has more than ${MOST_LETTERS_IN_LINE} letters: this is no table of finishes.`;
      return sheetProblem('line-too-long', words, 'Choose a table (CSV).', file, line);
    }
    if (line > MOST_LINES) return tooManyRows(file);
    from = end + 1;
  }
  return null;
}

const tooManyRows = (file?: string): Problem =>
  sheetProblem(
    'too-many-rows',
    `The file has more than ${MOST_ROWS.toLocaleString('en-US')} rows.`,
    'Split it into several files.',
    file,
  );

/** The first lines of a text. */
function startOf(text: string): string {
  let end = 0;
  for (let i = 0; i < LOOKED_AT_LINES && end >= 0; i++) end = text.indexOf('\n', end) + 1 || -1;
  return end < 0 ? text : text.slice(0, end);
}

/** The mark by which most lines fall into the same number of cells, two at least, and most headings are understood. */
function findMark(text: string): Mark {
  const start = startOf(text);
  let best: Mark = ',';
  let most = 0;
  for (const mark of MARKS) {
    const { data } = Papa.parse<string[]>(start, { delimiter: mark, newline: '\n' });
    const rows = data.filter((cells) => !isComment(cells[0] ?? '') && cells.some((cell) => cell.trim() !== ''));
    const counts = new Map<number, number>();
    for (const { length } of rows) if (length > 1) counts.set(length, (counts.get(length) ?? 0) + 1);
    const usual = Math.max(0, ...counts.values()) / Math.max(1, rows.length);
    const headings = Math.max(0, ...rows.map((cells) => (cells.length > 1 ? knownHeadings(cells) : 0)));
    const worth = usual + Math.min(headings, 10);
    if (worth <= most) continue;
    best = mark;
    most = worth;
  }
  return best;
}

/** How many different fields a row names as headings; sizes in mm look like wavelengths, which are headings only where many stand. */
export function knownHeadings(cells: readonly string[]): number {
  const fields = new Set(cells.slice(0, MOST_COLUMNS).map((cell) => meaningOfHeading(cell)?.field));
  fields.delete(undefined);
  const bands = [...fields].filter((field) => field?.startsWith('nm:')).length;
  return bands < LEAST_WAVELENGTHS ? fields.size - bands : fields.size;
}
