import { failure, type Problem, type Result, success } from '../engine/result';
import type { SpectrumRow } from './even-steps';
import { placeIn } from './place-problem';
import { cellNumber, linesSeparatedBy, SEPARATORS, type TableLine } from './table-cells';

/** A heading of this many wavelengths in order runs across: 400-700 nm at 20 nm has 16. */
const LEAST_ACROSS = 16;

/** Wavelengths as headings, nm: sample numbers lie below. */
const HEADING_NM = { from: 300, to: 900 };

/** One sample of a table with wavelengths across. */
export interface SampleAcross {
  readonly name: string;
  readonly line: number;
  /** From short to long wavelengths. */
  readonly rows: readonly SpectrumRow[];
}

/** Samples a row each, as instruments export them, and the lines down to the headings. */
export interface TableAcross {
  readonly samples: readonly SampleAcross[];
  readonly above: readonly TableLine[];
}

interface Headings {
  readonly cells: readonly string[];
  /** Where the wavelengths begin among the cells. */
  readonly from: number;
  readonly nm: readonly number[];
}

/**
 * Reads a table with one sample a row and the wavelengths across the top ("400", "400 nm", "R400", "SPECTRAL_NM400"), other
 * columns before or after them; null where the text has no such headings. A row takes its name from a column of names, else
 * from the first words in it, else from its number. A row with something else than numbers is refused.
 */
export function readAcross(text: string, file?: string): Result<TableAcross> | null {
  for (const mark of SEPARATORS) {
    const lines = linesSeparatedBy(text, mark);
    for (const [at, { cells }] of lines.entries()) {
      const head = headingsOf(cells);
      if (!head) continue;
      const read = readSamples(head, lines.slice(at + 1), file);
      return read.ok ? success({ samples: read.value, above: lines.slice(0, at + 1) }) : read;
    }
  }
  return null;
}

/** The longest run of rising or falling wavelengths in a line. */
function headingsOf(cells: readonly string[]): Headings | null {
  if (cells.length < LEAST_ACROSS) return null;
  const nm = cells.map(headingNm);
  let best = { from: 0, to: 0 };
  for (const sign of [1, -1]) {
    let from = 0;
    for (let i = 0; i <= nm.length; i++) {
      const goesOn = i > from && sign * (nm[i]! - nm[i - 1]!) > 0;
      if (goesOn) continue;
      if (i - from > best.to - best.from) best = { from, to: i };
      from = i;
    }
  }
  if (best.to - best.from < LEAST_ACROSS) return null;
  return { cells, from: best.from, nm: nm.slice(best.from, best.to) };
}

/** "400", "400 nm", "R400", "SPECTRAL_NM400", "R[400nm]"; NaN for what names no wavelength. */
function headingNm(cell: string): number {
  const found = /^[^\d.,]*(\d{3}(?:[.,]\d+)?)[^\d]*$/.exec(cell)?.[1];
  const nm = found === undefined ? Number.NaN : cellNumber(found);
  return nm >= HEADING_NM.from && nm <= HEADING_NM.to ? nm : Number.NaN;
}

function readSamples(head: Headings, lines: readonly TableLine[], file?: string): Result<readonly SampleAcross[]> {
  const samples: SampleAcross[] = [];
  for (const { line, cells } of lines) {
    if (isKeyword(cells)) continue;
    const texts = head.nm.map((_, i) => cells[head.from + i] ?? '');
    const bad = texts.findIndex((text) => Number.isNaN(cellNumber(text)));
    if (bad >= 0) return failure(badValue(line, head.nm[bad]!, texts[bad]!, file));
    const rows = head.nm.map((nm, i) => ({ line, nm, value: cellNumber(texts[i]!) }));
    if (rows[0]!.nm > rows.at(-1)!.nm) rows.reverse();
    samples.push({ name: unusedName(nameOf(head, cells, samples.length + 1), samples), line, rows });
  }
  return success(samples);
}

/** Lines of a CGATS file between the headings and the values. */
const isKeyword = ([first = '']: readonly string[]): boolean => /^(BEGIN|END)_DATA|^NUMBER_OF_/i.test(first);

function nameOf({ cells: heads, from, nm }: Headings, cells: readonly string[], number: number): string {
  const others = cells
    .map((text, i) => ({ text, head: heads[i] ?? '', i }))
    .filter(({ text, i }) => {
      return text !== '' && (i < from || i >= from + nm.length);
    });
  const words = others.filter(({ text }) => Number.isNaN(cellNumber(text)));
  const named =
    words.find(({ head }) => /name|label/i.test(head)) ??
    words.find(({ head }) => /sample|id$/i.test(head)) ??
    words[0] ??
    others.find(({ head }) => /name|label|sample|id$|^(no|nr)\b|#/i.test(head));
  return named?.text ?? String(number);
}

/** A name that stands twice gets a number, so that each sample can be named. */
function unusedName(name: string, samples: readonly SampleAcross[]): string {
  const isUsed = (one: string) => samples.some((sample) => sample.name === one);
  let free = name;
  for (let i = 2; isUsed(free); i++) free = `${name} (${i})`;
  return free;
}

const badValue = (line: number, nm: number, text: string, file?: string): Problem => ({
  code: 'bad-row',
  text: `Line ${line}: ${text === '' ? `the value at ${nm} nm is missing` : `"${text}" at ${nm} nm is not a number`}.`,
  at: placeIn(file, line),
  remedy: 'Give one row for each sample, with a reflectance under every wavelength.',
});
