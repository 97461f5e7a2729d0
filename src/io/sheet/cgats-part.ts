import type { Problem } from '../../engine/result';
import { placeIn } from '../place-problem';
import { cellNumber } from '../table-cells';
import type { CgatsColumns } from './cgats-columns';
import type { CgatsRow } from './cgats-rows';
import { MOST_CELLS, type PartOfSheet } from './merge-tables';
import type { SheetRow } from './types';

/** More wavelengths than this in one table are no spectra: 1 nm from 300 to 900 nm has 601. */
const MOST_WAVELENGTHS = 1000;

export interface CgatsPart extends PartOfSheet {
  readonly refused: readonly (CgatsRow & { readonly row: number })[];
  /** The greatest reflectance of each row; NaN where it has none. */
  readonly greatest: readonly number[];
}

/** Rows of a table as rows of a sheet, numbered from `firstRow`: spectra in pairs get a column for each wavelength, xyY becomes XYZ. */
export function cgatsPart(
  names: readonly string[],
  { fields, bands, xyY }: CgatsColumns,
  rows: readonly CgatsRow[],
  firstRow: number,
  file: string,
): CgatsPart {
  const refused: (CgatsRow & { readonly row: number })[] = [];
  const pairs = bands.flatMap(({ nm, value }) => (typeof nm === 'number' ? [] : [{ at: nm.at, value }]));
  const inPairs = new Set(pairs.flatMap(({ at, value }) => [at, value]));
  const plain = names.map((_, i) => i).filter((i) => !inPairs.has(i));
  const wavelengthsSeen = new Set<number>();
  const mostWavelengths = Math.min(MOST_WAVELENGTHS, Math.floor(MOST_CELLS / Math.max(1, rows.length)));
  const kept: { readonly row: number; readonly given: CgatsRow; readonly spectrum: ReadonlyMap<number, string> }[] = [];
  for (const [i, given] of rows.entries()) {
    const row = firstRow + i;
    const problem = given.problem ?? (xyY && chromaticityProblem(given, xyY, file));
    const spectrum = problem ?? spectrumOf(given, pairs, wavelengthsSeen, mostWavelengths, file);
    if (spectrum instanceof Map) kept.push({ row, given, spectrum });
    else refused.push({ ...given, row, problem: spectrum });
  }
  const wavelengths = [...wavelengthsSeen].sort((a, b) => a - b);
  const sheetRows = kept.map(({ row, given, spectrum }): SheetRow => {
    const cells = plain.map((i) => given.cells[i]!);
    if (xyY) withXyz(cells, given.cells, xyY.map((at) => plain.indexOf(at)) as [number, number, number], xyY);
    for (const nm of wavelengths) cells.push(spectrum.get(nm) ?? '');
    return { row, line: given.line, cells };
  });
  const values = bands.map(({ value }) => value);
  return {
    columns: [
      ...plain.map((i) => ({ heading: names[i]!, field: fields[i]! })),
      ...wavelengths.map((nm) => ({ heading: `SPECTRAL_NM ${nm}`, field: `nm:${nm}` as const })),
    ],
    rows: sheetRows,
    refused,
    greatest: kept.map(({ given }) => greatestOf(given.cells, values)),
  };
}

/** The values of a row in pairs by their wavelengths, which are noted; or what is wrong with them. */
function spectrumOf(
  { line, cells }: CgatsRow,
  pairs: readonly { readonly at: number; readonly value: number }[],
  seen: Set<number>,
  most: number,
  file: string,
): Map<number, string> | Problem {
  const spectrum = new Map<number, string>();
  for (const { at, value } of pairs) {
    const nm = cellNumber(cells[at]!);
    if (!(nm >= 100 && nm <= 5000)) {
      return wrongPair(line, `"${cells[at]!.slice(0, 40)}" is no wavelength in nm`, file);
    }
    if (spectrum.has(nm)) return wrongPair(line, `${nm} nm is given twice`, file);
    spectrum.set(nm, cells[value]!);
  }
  for (const nm of spectrum.keys()) {
    if (!seen.has(nm) && seen.size >= most) {
      return wrongPair(line, `with it the table has more than ${most} different wavelengths`, file);
    }
    seen.add(nm);
  }
  return spectrum;
}

function greatestOf(cells: readonly string[], values: readonly number[]): number {
  let most = Number.NaN;
  for (const at of values) {
    const value = cellNumber(cells[at]!);
    if (!(value <= most)) most = Number.isNaN(value) ? most : value;
  }
  return most;
}

/** X = x Y/y and Z = (1 - x - y) Y/y (CIE 15) in the places of x and y. What is no number stays, and is refused as such. */
function withXyz(
  cells: string[],
  given: readonly string[],
  to: readonly [number, number, number],
  from: readonly [number, number, number],
): void {
  const [x, y, Y] = from.map((at) => cellNumber(given[at]!)) as [number, number, number];
  const [X, Z] = Y === 0 ? [0, 0] : [(x * Y) / y, ((1 - x - y) * Y) / y];
  if (Number.isNaN(x)) return;
  if (!Number.isFinite(X) || !Number.isFinite(Z)) return;
  cells[to[0]] = String(Number(X.toPrecision(8)));
  cells[to[1]] = String(Number(Z.toPrecision(8)));
}

/** A y of nothing with a Y of something is no color. */
function chromaticityProblem(
  { line, cells }: CgatsRow,
  [, y, Y]: readonly [number, number, number],
  file: string,
): Problem | null {
  if (cellNumber(cells[y]!) > 0 || !(cellNumber(cells[Y]!) > 0)) return null;
  return {
    code: 'bad-chromaticity',
    text: `Line ${line}: y is ${cells[y]!.slice(0, 40)}; X and Z cannot be had from it.`,
    at: placeIn(file, line),
    remedy: 'Correct x and y: both lie between 0 and 1.',
  };
}

const wrongPair = (line: number, what: string, file: string): Problem => ({
  code: 'bad-pair',
  text: `Line ${line}: ${what}.`,
  at: placeIn(file, line),
  remedy: 'Give each SPECTRAL_NM once with its value after it.',
});
