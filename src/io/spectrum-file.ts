import type { GivenColor } from '../engine/finish/given-color';
import { failure, type Problem, type Result, success } from '../engine/result';
import { REFLECTANCE_NOISE } from '../engine/spectrum/resample';
import { checkGivenColor } from '../model/check-finish';
import { evenSteps, type SpectrumRow, stepOf } from './even-steps';
import { placeIn } from './place-problem';
import { cellNumber, type TableLine, tableLines } from './table-cells';

/** A factor cannot be this large (a fluorescent white stays under 3), so values above are percent. */
const PERCENT_FROM = 3;
/** A step this much longer than the others means that a line is missing. Our judgement. */
const GAP = 1.5;

/**
 * Reads a reflectance spectrum from a text table: wavelength in nm and value, separated by comma, semicolon, tab or spaces,
 * from short to long or the other way; `#` starts a comment, lines of headings may come first; decimal commas where the
 * comma does not separate. Steps up to 20 nm from 400 nm or less to 700 nm or more; steps that change slowly, as array
 * instruments have them, are evened out, a missing line is not. Values are 0-1 or percent: which one was read is said as a
 * notice, like everything that was left out or brought to other steps.
 */
export function parseSpectrumCsv(text: string, file?: string): Result<GivenColor & { kind: 'spectrum' }> {
  const lines = tableLines(text);
  const start = lines.findIndex(isRow);
  const above = lines.slice(0, Math.max(0, start));
  const last = above.at(-1);
  if (last && Number.isFinite(wavelengthOf(last))) return failure(badRow(last, file));
  const read = readRows(start < 0 ? [] : lines.slice(start), file);
  if (!read.ok) return read;
  const rows = read.value;

  const greatest = rows.reduce((most, row) => Math.max(most, row.value), 0);
  const percent = greatest > PERCENT_FROM || (greatest > 1 + REFLECTANCE_NOISE && saysPercent(above));
  const factors = percent ? rows.map((row) => ({ ...row, value: row.value / 100 })) : rows;
  const bad = factors.findIndex(({ value }) => !(value > -REFLECTANCE_NOISE && value < 1 + REFLECTANCE_NOISE));
  if (bad >= 0) {
    const { line, value } = rows[bad]!;
    const range = percent ? '0 to 100%' : '0 to 1';
    return failure(problem('out-of-range', `Line ${line}: ${value} is outside ${range}.`, file, line));
  }
  const { sampled, isEvened } = evenSteps(factors);
  const color = { kind: 'spectrum', ...sampled } as const;
  const [wrong] = checkGivenColor(color, 'spectrum');
  if (wrong) return failure({ ...wrong, text: wrong.text.replace(/^spectrum[^:]*: /, ''), at: placeIn(file) });

  const columns = lines.slice(start).reduce((most, { cells }) => Math.max(most, cells.length), 0);
  return success(color, [
    percent
      ? notice('read-as-percent', 'The values were read as percent.', IF_RIGHT, file)
      : notice('read-as-factor', 'The values were read as factors from 0 to 1.', IF_RIGHT, file),
    ...(isEvened ? [notice('steps-evened', evenedText(sampled.step_nm), IF_RIGHT, file)] : []),
    ...(above.length > 1 ? [notice('lines-left-out', leftOutText(above.length), IF_RIGHT, file)] : []),
    ...(columns > 2 ? [notice('more-columns', columnsText(columns), 'Split the file to read another.', file)] : []),
  ]);
}

const IF_RIGHT = 'Nothing to do if that is right.';

/** The rows from short to long wavelengths; what is no row, stands twice or is missing is refused with its line. */
function readRows(lines: readonly TableLine[], file?: string): Result<readonly SpectrumRow[]> {
  const broken = lines.find((line) => !isRow(line));
  if (broken) return failure(badRow(broken, file));
  const rows = lines.map((line) => ({ line: line.line, nm: wavelengthOf(line), value: cellNumber(line.cells[1]!) }));
  if (rows.length < 2) {
    return failure(problem('no-spectrum', 'The file has no table of wavelengths and values.', file));
  }
  if (rows[0]!.nm > rows.at(-1)!.nm) rows.reverse();
  const usual_nm = stepOf(rows);
  for (const [i, row] of rows.entries()) {
    const before = rows[i - 1];
    if (!before) continue;
    const later = before.line > row.line ? before : row;
    if (!(row.nm > before.nm)) {
      const text = `Line ${later.line}: ${later.nm} nm stands twice or out of order.`;
      return failure(problem('wavelength-order', text, file, later.line));
    }
    if (row.nm - before.nm > GAP * usual_nm + 1e-6) {
      const step = `from ${before.nm} to ${row.nm} nm, where other steps are ${Number(usual_nm.toFixed(2))} nm`;
      return failure(problem('uneven-steps', `Line ${later.line}: ${step}.`, file, later.line));
    }
  }
  return success(rows);
}

const wavelengthOf = ({ cells }: TableLine): number => cellNumber(cells[0]!.replace(/nm$/i, '').trim());

const isRow = (line: TableLine): boolean =>
  Number.isFinite(wavelengthOf(line)) && Number.isFinite(cellNumber(line.cells[1] ?? ''));

const saysPercent = (lines: readonly TableLine[]): boolean =>
  lines.some(({ cells }) => cells.some((cell) => /%|percent/i.test(cell)));

const badRow = ({ line, cells }: TableLine, file?: string): Problem =>
  problem('bad-row', `Line ${line}: "${cells.slice(0, 2).join(' ')}" is not a wavelength and a value.`, file, line);

const problem = (code: string, text: string, file?: string, line?: number): Problem => ({
  code,
  text,
  at: placeIn(file, line),
  remedy:
    'Give one line for each wavelength: nm, then reflectance, in even steps up to 20 nm from 400 to 700 nm at least.',
});

const notice = (code: string, text: string, remedy: string, file?: string): Problem => ({
  code,
  text,
  at: placeIn(file),
  remedy,
});

const evenedText = (step_nm: number): string =>
  `The wavelengths are not evenly spaced; they were brought to steps of ${step_nm} nm.`;

const leftOutText = (count: number): string => `${count} lines above the table were not read.`;

const columnsText = (columns: number): string => `The table has ${columns} columns; only the first two were read.`;
