import { failure, type Problem, type Result, success } from '../engine/result';
import { placeIn } from './place-problem';
import { fileStem, type ReadLamp, wavelengthProblem } from './read-lamp';
import { cellNumber, type TableLine, tableLines } from './table-cells';

/** A line of the table that starts with a wavelength. */
interface Row extends TableLine {
  readonly nm: number;
}

/** Headings that say what the numbers are and not which lamp gave them. */
const UNNAMED = /^((relative|spectral|radiant|power|value|intensity|radiance|irradiance|flux|spd|density)\b[\s.-]*)+/i;

/**
 * Reads a table of lamps: wavelengths in nm down the first column, one lamp in each further column, headings above where
 * there are any. What stands above the table is left out and said; what stands in it must be numbers.
 */
export function readLampTable(text: string, file?: string): Result<readonly ReadLamp[]> {
  const lines = tableLines(text);
  const start = lines.findIndex(({ cells }) => cells.length > 1 && !Number.isNaN(wavelengthOf(cells[0]!)));
  if (start < 0) return failure(wavelengthProblem([], file)!);
  const broken = brokenFirst(lines.slice(0, start), lines[start]!);
  if (broken) return failure(badRow(broken, 'is no wavelength', broken.cells[0]!, file));

  const rows: Row[] = [];
  for (const { line, cells } of lines.slice(start)) {
    const nm = wavelengthOf(cells[0]!);
    if (Number.isNaN(nm)) return failure(badRow({ line, cells }, 'is no wavelength', cells[0]!, file));
    rows.push({ line, cells, nm });
  }
  if (rows.length > 1 && rows[0]!.nm > rows.at(-1)!.nm) rows.reverse();
  const problem = wavelengthProblem(rows, file) ?? commaProblem(rows, file);
  if (problem) return failure(problem);
  return readColumns(rows, lines.slice(0, start), file);
}

function readColumns(rows: readonly Row[], above: readonly TableLine[], file?: string): Result<readonly ReadLamp[]> {
  const columns = Math.max(...rows.map(({ cells }) => cells.length));
  const headings = headingsOf(above, columns);
  const lamps: ReadLamp[] = [];
  const skipped: string[] = [];
  const used = [...Array(columns - 1).keys()].map((i) => i + 1).filter((c) => rows.some(({ cells }) => cells[c]));
  for (const column of used) {
    const heading = headings?.cells[column] ?? '';
    const name = heading || (used.length > 1 ? `column ${column + 1}` : fileStem(file));
    const power = rows.map(({ cells }) => cellNumber(cells[column] ?? ''));
    if (power.every(Number.isNaN) && used.length > 1) skipped.push(name);
    else {
      const bad = power.findIndex(Number.isNaN);
      if (bad >= 0) {
        const { line, cells } = rows[bad]!;
        const what = cells[column] ? 'is not a number' : 'has no value';
        return failure(badRow({ line, cells }, what, cells[column] || `"${name}"`, file));
      }
      lamps.push({ name, nm: rows.map(({ nm }) => nm), power });
    }
  }
  if (lamps.length === 0) return failure(wavelengthProblem([], file)!);
  const [only, ...more] = lamps;
  const named = more.length === 0 && only && isUnnamed(only.name) ? [{ ...only, name: fileStem(file) }] : lamps;
  const unread = above.filter((one) => one !== headings).map(({ line }) => line);
  return success(named, [
    ...(unread.length > 0 ? [unreadNotice(unread, file)] : []),
    ...skipped.map((name) => skippedNotice(name, file)),
  ]);
}

/** The line of headings: the last one above the table, if it has as many cells. */
function headingsOf(above: readonly TableLine[], columns: number): TableLine | undefined {
  const last = above.at(-1);
  return last && last.cells.length === columns && last.cells.slice(1).some((cell) => cell !== '') ? last : undefined;
}

const isUnnamed = (heading: string): boolean =>
  heading
    .replaceAll('_', ' ')
    .replace(/[([].*$/, '')
    .replace(UNNAMED, '')
    .trim() === '';

/** The wavelength at the start of a row, with or without its unit; NaN if it is none. */
const wavelengthOf = (cell: string): number => cellNumber(cell.replace(/nm$/i, '').trim());

/** A line right above the table that looks like its first row with a slip in it: it must not get lost among the headings. */
function brokenFirst(above: readonly TableLine[], first: TableLine): TableLine | undefined {
  const last = above.at(-1);
  const looksLikeRow =
    last &&
    last.cells.length === first.cells.length &&
    /^[\d.,]/.test(last.cells[0]!) &&
    last.cells.slice(1).every((cell) => !Number.isNaN(cellNumber(cell)));
  return looksLikeRow ? last : undefined;
}

/** "380,0,0014" may be 380 and 0.0014 or three numbers. Values that all are digits, some with a leading zero, tell. */
function commaProblem(rows: readonly Row[], file?: string): Problem | null {
  const values = rows.flatMap(({ cells }) => cells.slice(1));
  const doubtful = rows.find(({ cells }) => cells.length > 2 && cells.slice(1).some((cell) => /^0\d/.test(cell)));
  if (!doubtful || !values.every((cell) => /^\d*$/.test(cell))) return null;
  return {
    code: 'comma-twice',
    text: `Line ${doubtful.line}: commas stand both between the columns and inside the numbers.`,
    at: placeIn(file, doubtful.line),
    remedy: 'Save the table with semicolons or tabs between the columns, or with decimal points.',
  };
}

const badRow = ({ line }: TableLine, what: string, cell: string, file?: string): Problem => ({
  code: 'bad-row',
  text: `Line ${line}: ${cell.startsWith('"') ? cell : `"${cell}"`} ${what}.`,
  at: placeIn(file, line),
  remedy: 'Give one line for each wavelength: nm, then one number for each lamp.',
});

const unreadNotice = (lines: readonly number[], file?: string): Problem => ({
  code: 'lines-left-out',
  text:
    lines.length === 1
      ? 'One line above the table was not read.'
      : `${lines.length} lines above the table were not read.`,
  at: placeIn(file, lines[0]),
  remedy: 'Nothing to do if they hold no wavelengths.',
});

const skippedNotice = (name: string, file?: string): Problem => ({
  code: 'column-left-out',
  text: `The column "${name}" has no numbers; it was not read.`,
  at: placeIn(file),
  remedy: 'Nothing to do if it is no lamp.',
});
