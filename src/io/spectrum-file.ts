import type { GivenColor } from '../engine/finish/given-color';
import { failure, type Place, type Problem, type Result, success } from '../engine/result';
import { checkGivenColor } from '../model/check-finish';

/** Steps a reflectance table may have, nm. */
const STEPS_NM = [1, 5, 10, 20];

/** A factor cannot be this large (a fluorescent white stays under 3), so values above are percent. */
const PERCENT_FROM = 3;

interface Row {
  readonly line: number;
  readonly nm: number;
  readonly value: number;
}

/**
 * Reads a reflectance spectrum from a text table: wavelength in nm and value, separated by comma, semicolon, tab or spaces;
 * `#` starts a comment, one line of headings may come first; decimal commas where the comma does not separate. Even steps of
 * 1, 5, 10 or 20 nm from 400 nm or less to 700 nm or more. Values are 0-1 or percent: which one was read is said as a notice.
 */
export function parseSpectrumCsv(text: string, file?: string): Result<GivenColor & { kind: 'spectrum' }> {
  const at = (line?: number): Place => ({ ...(file ? { file } : {}), ...(line ? { line } : {}) });
  const table = readTable(text, at);
  if (!table.ok) return table;
  const { rows, columns } = table.value;

  const first = rows[0];
  const second = rows[1];
  if (!first || !second) {
    return failure(problem('no-spectrum', 'The file has no table of wavelengths and values.', at()));
  }
  const step_nm = second.nm - first.nm;
  if (!STEPS_NM.includes(step_nm)) {
    const text = `Line ${second.line}: the step from ${first.nm} to ${second.nm} nm is not 1, 5, 10 or 20 nm.`;
    return failure(problem('uneven-steps', text, at(second.line)));
  }
  const uneven = rows.find((row, i) => Math.abs(row.nm - (first.nm + i * step_nm)) > 1e-6);
  if (uneven) {
    const text = `Line ${uneven.line}: ${uneven.nm} nm breaks the step of ${step_nm} nm.`;
    return failure(problem('uneven-steps', text, at(uneven.line)));
  }

  const percent = rows.some((row) => row.value > PERCENT_FROM);
  const reflectance = rows.map((row) => (percent ? row.value / 100 : row.value));
  const bad = rows.find((_, i) => !(reflectance[i]! >= 0 && reflectance[i]! <= 1));
  if (bad) {
    const range = percent ? '0 to 100%' : '0 to 1';
    return failure(problem('out-of-range', `Line ${bad.line}: ${bad.value} is outside ${range}.`, at(bad.line)));
  }
  const color = { kind: 'spectrum', start_nm: first.nm, step_nm, reflectance } as const;
  const [wrong] = checkGivenColor(color, 'spectrum');
  if (wrong) return failure({ ...wrong, at: at() });

  const notices = [scaleNotice(percent, at())];
  if (columns > 2) notices.push(moreColumnsNotice(columns, at()));
  return success(color, notices);
}

function readTable(
  text: string,
  at: (line?: number) => Place,
): Result<{ readonly rows: readonly Row[]; readonly columns: number }> {
  const rows: Row[] = [];
  let columns = 0;
  let headed = false;
  for (const [i, raw] of text
    .replace(/^\uFEFF/, '')
    .split(/\r\n|\n|\r/)
    .entries()) {
    const content = raw.replace(/#.*/, '').trim();
    if (content === '') continue;
    const cells = splitCells(content);
    const nm = Number(cells[0]);
    const value = Number(cells[1]);
    if (cells[0] !== '' && cells[1] && Number.isFinite(nm) && Number.isFinite(value)) {
      rows.push({ line: i + 1, nm, value });
      columns = Math.max(columns, cells.length);
    } else if (rows.length === 0 && !headed && Number.isNaN(nm)) {
      headed = true;
    } else {
      return failure(problem('bad-row', `Line ${i + 1}: "${content}" is not a wavelength and a value.`, at(i + 1)));
    }
  }
  return success({ rows, columns });
}

/** Between semicolons, tabs or spaces a comma is a decimal comma; otherwise it separates. */
function splitCells(line: string): readonly string[] {
  const withPoint = (cell: string) => cell.trim().replace(',', '.');
  const mark = [';', '\t'].find((one) => line.includes(one));
  if (mark) return line.split(mark).map(withPoint);
  const words = line.split(/\s+/);
  const spaced = words.length > 1 && words.every((word) => !word.startsWith(',') && !word.endsWith(','));
  return spaced ? words.map(withPoint) : line.split(',').map((cell) => cell.trim());
}

const problem = (code: string, text: string, at: Place): Problem => ({
  code,
  text,
  at,
  remedy:
    'Give a table of two columns, nm and reflectance, in even steps of 1, 5, 10 or 20 nm from 400 to 700 nm at least.',
});

const scaleNotice = (percent: boolean, at: Place): Problem => ({
  code: percent ? 'read-as-percent' : 'read-as-factor',
  text: percent ? 'The values were read as percent.' : 'The values were read as factors from 0 to 1.',
  at,
  remedy: 'Nothing to do if that is right.',
});

const moreColumnsNotice = (columns: number, at: Place): Problem => ({
  code: 'more-columns',
  text: `The table has ${columns} columns; only the first two were read.`,
  at,
  remedy: 'Split the file to read another column.',
});
