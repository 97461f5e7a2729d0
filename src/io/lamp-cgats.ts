import { failure, type Problem, type Result, success } from '../engine/result';
import { bandsOf, type CgatsBand } from './cgats-bands';
import { type CgatsWord, cgatsWords } from './cgats-words';
import { placeIn } from './place-problem';
import { fileStem, type ReadLamp, wavelengthProblem } from './read-lamp';
import { cellNumber } from './table-cells';

/**
 * Reads the spectra of a CGATS.17 / ISO 28178 text: every row of data is one lamp. Bands stand one to a column, or in pairs
 * SPECTRAL_NM and value. Rows may run over lines; decimal commas are read. The scale does not matter for a lamp.
 */
export function readLampCgats(text: string, file?: string): Result<readonly ReadLamp[]> {
  const words = cgatsWords(text);
  const lamps: ReadLamp[] = [];
  let from = 0;
  for (;;) {
    const begin = find(words, 'BEGIN_DATA_FORMAT', from);
    if (begin < 0) break;
    const table = readTable(words, from, begin, file);
    if (!table.ok) return table;
    for (const lamp of table.value.lamps) lamps.push(lamp);
    from = table.value.end;
  }
  return lamps.length > 0 ? success(lamps) : failure(noSpectra(words[0]?.line ?? 1, file));
}

function readTable(
  words: readonly CgatsWord[],
  from: number,
  begin: number,
  file?: string,
): Result<{ readonly lamps: readonly ReadLamp[]; readonly end: number }> {
  const formatEnd = find(words, 'END_DATA_FORMAT', begin);
  const data = formatEnd < 0 ? -1 : find(words, 'BEGIN_DATA', formatEnd);
  const end = data < 0 ? -1 : find(words, 'END_DATA', data);
  if (end < 0) {
    const missing = formatEnd < 0 ? 'END_DATA_FORMAT' : data < 0 ? 'BEGIN_DATA' : 'END_DATA';
    return failure(wrong('unfinished-table', words[begin]!.line, `${missing} is missing after this line.`, file));
  }
  const fields = words.slice(begin + 1, formatEnd);
  const values = words.slice(data + 1, end);
  const told = (keyword: string) => {
    const at = find(words, keyword, from, end);
    return at < 0 ? null : { line: words[at]!.line, count: Number(words[at + 1]?.text) };
  };
  const named = told('NUMBER_OF_FIELDS');
  if (named && named.count !== fields.length) {
    const text = `NUMBER_OF_FIELDS is ${named.count}, but ${fields.length} fields are named.`;
    return failure(wrong('field-count', named.line, text, file));
  }
  const whole = Math.floor(values.length / Math.max(1, fields.length));
  if (whole * fields.length !== values.length) {
    const { line } = values[whole * fields.length]!;
    const text = `The row that starts here has ${values.length - whole * fields.length} of ${fields.length} values.`;
    return failure(wrong('short-row', line, text, file));
  }
  const sets = told('NUMBER_OF_SETS');
  if (sets && sets.count !== whole) {
    const text = `NUMBER_OF_SETS is ${sets.count}, but the data have ${whole}.`;
    return failure(wrong('set-count', sets.line, text, file));
  }

  const bands = bandsOf(fields.map(({ text }) => text));
  if (bands.length === 0) return success({ lamps: [], end });
  const lamps: ReadLamp[] = [];
  for (let i = 0; i < whole; i++) {
    const lamp = readRow(fields, values.slice(i * fields.length, (i + 1) * fields.length), bands, i, file);
    if (!lamp.ok) return lamp;
    lamps.push(lamp.value);
  }
  return success({ lamps, end });
}

function readRow(
  fields: readonly CgatsWord[],
  row: readonly CgatsWord[],
  bands: readonly CgatsBand[],
  index: number,
  file?: string,
): Result<ReadLamp> {
  const samples = bands.map(({ nm, value }) => {
    const { line, text } = row[value]!;
    return { line, nm: typeof nm === 'number' ? nm : cellNumber(row[nm.at]!.text), text, power: cellNumber(text) };
  });
  const bad = samples.find(({ nm, power }) => Number.isNaN(nm) || Number.isNaN(power));
  if (bad) return failure(wrong('bad-row', bad.line, `"${bad.text}" is no power at a wavelength.`, file));
  if (samples.length > 1 && samples[0]!.nm > samples.at(-1)!.nm) samples.reverse();
  const problem = wavelengthProblem(samples, file);
  if (problem) return failure(problem);
  const cell = (name: string) => row[fields.findIndex(({ text }) => text.toUpperCase() === name)]?.text ?? '';
  const name = cell('SAMPLE_NAME') || cell('SAMPLE_ID') || `${fileStem(file)} ${index + 1}`;
  return success({ name, nm: samples.map(({ nm }) => nm), power: samples.map(({ power }) => power) });
}

/** Where a keyword stands at or after `from` and before `to`; -1 if nowhere. */
function find(words: readonly CgatsWord[], keyword: string, from: number, to = words.length): number {
  for (let i = from; i < to; i++) if (words[i]!.text === keyword && !words[i]!.quoted) return i;
  return -1;
}

const wrong = (code: string, line: number, text: string, file?: string): Problem => ({
  code,
  text: `Line ${line}: ${text}`,
  at: placeIn(file, line),
  remedy: 'Export the file again, or correct it at this line.',
});

const noSpectra = (line: number, file?: string): Problem => ({
  code: 'no-spectrum',
  text: 'The file has no spectral fields.',
  at: placeIn(file, line),
  remedy: 'Export with spectral data: fields such as SPECTRAL_NM400, or pairs of SPECTRAL_NM and SPECTRAL_DEC.',
});
