import { failure, type Problem, type Result, success } from '../engine/result';
import { reflectanceOnGrid } from '../engine/spectrum/resample';
import type { ReflectanceSpd } from '../engine/spectrum/types';
import { placeIn } from './place-problem';
import { wavelengthProblem } from './read-lamp';
import { cellNumber, type TableLine, tableLines } from './table-cells';

/** Color evaluation samples of CIE 224:2017. */
const SAMPLE_COUNT = 99;

/** No factor of the samples is above 1 by more than rounding, so a larger value means percent. */
const PERCENT_FROM = 1.5;

/** A heading of this many rising wavelengths runs across: 400-700 nm at 20 nm has 16. */
const LEAST_ACROSS = 16;

/** Wavelengths as headings, nm: percent and sample numbers lie below. */
const HEADING_NM = { from: 300, to: 900 };

interface Value {
  readonly line: number;
  readonly text: string;
  readonly value: number;
}

/** The table, whichever way it was written: wavelengths, and for each sample its values in their order. */
interface SampleTable {
  readonly wavelengths: readonly { readonly line: number; readonly nm: number }[];
  readonly samples: readonly (readonly Value[])[];
}

/**
 * Reads the reflectances of the 99 color evaluation samples of CIE 224:2017 from a table that the user has: wavelengths
 * down the first column and 99 further columns, or wavelengths across the top and 99 rows. Values 0-1 or percent; which
 * one was read is said as a notice. The samples are not part of the program: the standard does not let them be passed on.
 */
export function parseFidelitySamples(text: string, file?: string): Result<readonly ReflectanceSpd[]> {
  const lines = tableLines(text);
  const table = acrossTable(lines) ?? downTable(lines);
  const problem = tableProblem(table, file);
  if (problem) return failure(problem);

  const { wavelengths, samples } = table;
  const greatest = samples.flat().reduce((most, { value }) => Math.max(most, value), 0);
  const scale = greatest > PERCENT_FROM ? 100 : 1;
  const outside = samples.flat().find(({ value }) => !(value >= 0 && value <= scale));
  if (outside) {
    return failure({
      code: 'out-of-range',
      text: `Line ${outside.line}: ${outside.value} is outside ${scale === 1 ? '0 to 1' : '0 to 100%'}.`,
      at: placeIn(file, outside.line),
      remedy: 'Give reflectances from 0 to 1, or all of them in percent.',
    });
  }
  const start_nm = wavelengths[0]!.nm;
  const step_nm = wavelengths[1]!.nm - start_nm;
  const spectra: ReflectanceSpd[] = [];
  for (const sample of samples) {
    const made = reflectanceOnGrid({ start_nm, step_nm, reflectance: sample.map(({ value }) => value / scale) });
    if (!made.ok) return failure({ ...made.problem, at: placeIn(file, wavelengths[0]!.line) });
    spectra.push(made.value);
  }
  return success(spectra, [scaleNotice(scale === 100, file)]);
}

function acrossTable(lines: readonly TableLine[]): SampleTable | null {
  const at = lines.findIndex(({ cells }) => headingWavelengths(cells).length >= LEAST_ACROSS);
  const head = lines[at];
  if (!head) return null;
  const nm = headingWavelengths(head.cells);
  const first = head.cells.length - nm.length;
  return {
    wavelengths: nm.map((one) => ({ line: head.line, nm: one })),
    samples: lines.slice(at + 1).map(({ line, cells }) => nm.map((_, i) => sampleValue(line, cells[first + i] ?? ''))),
  };
}

/** The wavelengths that a line of headings ends with; none where its last cells are no rising wavelengths. */
function headingWavelengths(cells: readonly string[]): readonly number[] {
  const nm: number[] = [];
  for (const cell of [...cells].reverse()) {
    const one = wavelengthOf(cell);
    if (!(one >= HEADING_NM.from && one <= HEADING_NM.to && one < (nm[0] ?? Number.POSITIVE_INFINITY))) break;
    nm.unshift(one);
  }
  return nm;
}

function downTable(lines: readonly TableLine[]): SampleTable {
  const start = lines.findIndex(({ cells }) => cells.length > 1 && wavelengthOf(cells[0]!) >= HEADING_NM.from);
  const rows = start < 0 ? [] : lines.slice(start);
  const columns = rows.reduce((most, { cells }) => Math.max(most, cells.findLastIndex((cell) => cell !== '') + 1), 0);
  return {
    wavelengths: rows.map(({ line, cells }) => ({ line, nm: wavelengthOf(cells[0]!) })),
    samples: Array.from({ length: Math.max(0, columns - 1) }, (_, i) =>
      rows.map(({ line, cells }) => sampleValue(line, cells[i + 1] ?? '')),
    ),
  };
}

const wavelengthOf = (cell: string): number => cellNumber(cell.replace(/nm$/i, '').trim());

const sampleValue = (line: number, text: string): Value => ({ line, text, value: cellNumber(text) });

function tableProblem({ wavelengths, samples }: SampleTable, file?: string): Problem | null {
  const said = (code: string, text: string, line?: number): Problem => ({
    code,
    text: line === undefined ? text : `Line ${line}: ${text}`,
    at: placeIn(file, line),
    remedy: `Give the ${SAMPLE_COUNT} samples of CIE 224 in even steps from 400 to 700 nm at least: nm, then ${SAMPLE_COUNT} columns.`,
  });
  if (wavelengths.length < 2) return said('no-samples', 'The file has no table of wavelengths and reflectances.');
  const order = wavelengthProblem(wavelengths, file);
  if (order) return order;
  if (samples.length !== SAMPLE_COUNT) {
    const count = samples.length === 1 ? 'one sample' : `${samples.length} samples`;
    return said('sample-count', `The file has ${count}; CIE 224 has ${SAMPLE_COUNT}.`);
  }
  const bad = samples.flat().find(({ value }) => Number.isNaN(value));
  if (bad) return said('bad-row', bad.text === '' ? 'a value is missing.' : `"${bad.text}" is not a number.`, bad.line);
  const step_nm = wavelengths[1]!.nm - wavelengths[0]!.nm;
  const uneven = wavelengths.find(({ nm }, i) => Math.abs(nm - (wavelengths[0]!.nm + i * step_nm)) > 1e-6);
  return uneven ? said('uneven-steps', `${uneven.nm} nm breaks the step of ${step_nm} nm.`, uneven.line) : null;
}

const scaleNotice = (percent: boolean, file?: string): Problem => ({
  code: percent ? 'read-as-percent' : 'read-as-factor',
  text: percent ? 'The samples were read as percent.' : 'The samples were read as factors from 0 to 1.',
  at: placeIn(file),
  remedy: 'Nothing to do if that is right.',
});
