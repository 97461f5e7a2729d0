import type { GivenColor } from '../engine/finish/given-color';
import { failure, type Problem, type Result, success } from '../engine/result';
import { aboveOneProblem, REFLECTANCE_NOISE } from '../engine/spectrum/resample';
import { checkGivenColor } from '../model/check-finish';
import { evenSteps, type SpectrumRow, stepOf } from './even-steps';
import { placeIn } from './place-problem';
import { readAcross, type TableAcross } from './spectrum-file-across';
import { cellNumber, type TableLine, tableLines } from './table-cells';

/** A factor cannot be this large (a fluorescent white stays under 3), so values above are percent. */
const PERCENT_FROM = 3;
/** Up to here values above white are taken for a glow, beyond for a mistake. Our judgment. */
const MOST_GLOW = 1.3;
/** A step this much longer than the others means that a line is missing. Our judgment. */
const GAP = 1.5;

/** The rows of one sample and how the file writes it. */
interface ReadSample {
  readonly rows: readonly SpectrumRow[];
  /** Lines above the values, headings among them. */
  readonly above: readonly TableLine[];
  /** The greatest value of all samples in the file. */
  readonly greatest: number;
  readonly notices: readonly Problem[];
}

/**
 * Reads a reflectance spectrum from a text table: wavelength in nm and value, separated by comma, semicolon, tab or spaces,
 * from short to long or the other way; `#` starts a comment, lines of headings may come first; decimal commas where the
 * comma does not separate. Or one sample a row with the wavelengths across (`readAcross`). Of several samples `sample` names
 * one, without regard to case; without a name several rows are refused, of several columns the first is taken. Steps up to
 * 20 nm from 400 nm or less to 700 nm or more; steps that change slowly, as array instruments have them, are evened out, a
 * missing line is not. Values are 0-1 or percent: which one was read is said as a notice unless the headings say it, like
 * everything that was left out or brought to other steps.
 */
export function parseSpectrumCsv(
  text: string,
  file?: string,
  sample?: string,
): Result<GivenColor & { kind: 'spectrum' }> {
  const across = readAcross(text, file);
  if (across && !across.ok) return across;
  const read = across ? sampleAcross(across.value, file, sample) : sampleDown(tableLines(text), file, sample);
  if (!read.ok) return read;
  const { rows, above, greatest, notices } = read.value;
  const disorder = orderProblem(rows, file);
  if (disorder) return failure(disorder);

  const isSaid = saysPercent(above);
  const percent = greatest > PERCENT_FROM || (greatest > 1 + REFLECTANCE_NOISE && isSaid);
  const factors = percent ? rows.map((row) => ({ ...row, value: row.value / 100 })) : rows;
  const bad = outsideProblem(rows, percent ? 100 : 1, file);
  if (bad) return failure(bad);
  const { sampled, isEvened } = evenSteps(factors);
  const color = { kind: 'spectrum', ...sampled } as const;
  const [wrong] = checkGivenColor(color, 'spectrum');
  if (wrong) return failure({ ...wrong, text: wrong.text.replace(/^spectrum[^:]*: /, ''), at: placeIn(file) });

  return success(color, [
    ...(percent && !isSaid ? [notice('read-as-percent', 'The values were read as percent.', IF_RIGHT, file)] : []),
    ...(percent ? [] : [notice('read-as-factor', 'The values were read as factors from 0 to 1.', IF_RIGHT, file)]),
    ...(isEvened ? [notice('steps-evened', evenedText(sampled.step_nm), IF_RIGHT, file)] : []),
    ...notices,
  ]);
}

/** The sample with a name, or the only one. */
function sampleAcross({ samples, above }: TableAcross, file?: string, wanted?: string): Result<ReadSample> {
  const found = wanted === undefined ? samples[0] : samples.find(({ name }) => isNamed(name, wanted));
  if (samples.length === 0)
    return failure(problem('no-spectrum', 'The file has no values below its wavelengths.', file));
  if (!found)
    return failure(
      unknownSample(
        wanted!,
        samples.map(({ name }) => name),
        file,
      ),
    );
  if (wanted === undefined && samples.length > 1) {
    return failure({
      code: 'several-samples',
      text: `The file has ${samples.length} samples: ${listed(samples.map(({ name }) => name))}.`,
      at: placeIn(file),
      remedy: `Keep the row of one sample, or name it on the command line: "${file ?? 'FILE'}#${found.name}".`,
    });
  }
  const greatest = samples.flatMap(({ rows }) => rows).reduce((most, { value }) => Math.max(most, value), 0);
  return success({ rows: found.rows, above, greatest, notices: [] });
}

/** Wavelengths down the first column; the values of a column with a name, or of the second. */
function sampleDown(lines: readonly TableLine[], file?: string, wanted?: string): Result<ReadSample> {
  const start = lines.findIndex((line) => isRow(line, 1));
  const above = lines.slice(0, Math.max(0, start));
  const last = above.at(-1);
  if (last && Number.isFinite(wavelengthOf(last))) return failure(badRow(last, 1, file));
  const heads = last?.cells.slice(1) ?? [];
  const column = wanted === undefined ? 1 : 1 + heads.findIndex((name) => isNamed(name, wanted));
  if (column < 1) return failure(unknownSample(wanted!, heads, file));
  const read = readRows(start < 0 ? [] : lines.slice(start), column, file);
  if (!read.ok) return read;
  const columns = lines.slice(start).reduce((most, { cells }) => Math.max(most, cells.length), 0);
  return success({
    rows: read.value,
    above,
    greatest: read.value.reduce((most, { value }) => Math.max(most, value), 0),
    notices: [
      ...(above.length > 1 ? [notice('lines-left-out', leftOutText(above.length), IF_RIGHT, file)] : []),
      ...(columns > 2 && wanted === undefined
        ? [notice('more-columns', columnsText(columns), 'Split the file to read another.', file)]
        : []),
    ],
  });
}

const IF_RIGHT = 'Nothing to do if that is right.';

/** The rows from short to long wavelengths; what is no row is refused with its line. */
function readRows(lines: readonly TableLine[], column: number, file?: string): Result<readonly SpectrumRow[]> {
  const broken = lines.find((line) => !isRow(line, column));
  if (broken) return failure(badRow(broken, column, file));
  const rows = lines.map((line) => ({
    line: line.line,
    nm: wavelengthOf(line),
    value: cellNumber(line.cells[column]!),
  }));
  if (rows.length < 2) {
    return failure(problem('no-spectrum', 'The file has no table of wavelengths and values.', file));
  }
  if (rows[0]!.nm > rows.at(-1)!.nm) rows.reverse();
  return success(rows);
}

/** A wavelength that stands twice or is missing. */
function orderProblem(rows: readonly SpectrumRow[], file?: string): Problem | null {
  const usual_nm = stepOf(rows);
  for (const [i, row] of rows.entries()) {
    const before = rows[i - 1];
    if (!before) continue;
    const later = before.line > row.line ? before : row;
    if (!(row.nm > before.nm)) {
      const text = `Line ${later.line}: ${later.nm} nm stands twice or out of order.`;
      return problem('wavelength-order', text, file, later.line);
    }
    if (row.nm - before.nm > GAP * usual_nm + 1e-6) {
      const step = `from ${before.nm} to ${row.nm} nm, where other steps are ${Number(usual_nm.toFixed(2))} nm`;
      return problem('uneven-steps', `Line ${later.line}: ${step}.`, file, later.line);
    }
  }
  return null;
}

/** A value that no surface has; what is a little above white glows. */
function outsideProblem(rows: readonly SpectrumRow[], scale: 1 | 100, file?: string): Problem | null {
  const isOutside = ({ value }: SpectrumRow) =>
    !(value > -REFLECTANCE_NOISE * scale && value < (1 + REFLECTANCE_NOISE) * scale);
  const first = rows.find(isOutside);
  if (!first) return null;
  const most = rows.reduce((greatest, row) => (row.value > greatest.value ? row : greatest));
  if (first.value > 0 && most.value < MOST_GLOW * scale) {
    const glows = aboveOneProblem(most.value / scale, most.nm);
    return { ...glows, text: `Line ${most.line}: ${glows.text}`, at: placeIn(file, most.line) };
  }
  const range = scale === 100 ? '0 to 100%' : '0 to 1';
  return problem('out-of-range', `Line ${first.line}: ${first.value} is outside ${range}.`, file, first.line);
}

const wavelengthOf = ({ cells }: TableLine): number => cellNumber(cells[0]!.replace(/nm$/i, '').trim());

const isRow = (line: TableLine, column: number): boolean =>
  Number.isFinite(wavelengthOf(line)) && Number.isFinite(cellNumber(line.cells[column] ?? ''));

const isNamed = (name: string, wanted: string): boolean => name.trim().toLowerCase() === wanted.trim().toLowerCase();

const saysPercent = (lines: readonly TableLine[]): boolean =>
  lines.some(({ cells }) => cells.some((cell) => /%|percent/i.test(cell)));

const badRow = ({ line, cells }: TableLine, column: number, file?: string): Problem =>
  problem(
    'bad-row',
    `Line ${line}: "${[cells[0], cells[column] ?? ''].join(' ').trim()}" is not a wavelength and a value.`,
    file,
    line,
  );

/** More names than this hide the message. */
const MOST_NAMES = 20;

const listed = (names: readonly string[]): string =>
  names.length > MOST_NAMES
    ? `${names.slice(0, MOST_NAMES).join(', ')} and ${names.length - MOST_NAMES} more`
    : names.join(', ');

const unknownSample = (wanted: string, names: readonly string[], file?: string): Problem => ({
  code: 'unknown-sample',
  text: `There is no sample "${wanted}" in this file.`,
  at: placeIn(file),
  remedy: names.length > 0 ? `Name one of: ${listed(names)}.` : 'Its columns have no headings: leave the name out.',
});

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
