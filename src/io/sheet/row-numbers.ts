import type { Problem } from '../../engine/result';
import { isBlank, numberInCell } from './cell-number';
import { type Columns, cellOf, headingOf } from './columns';
import { quoted, sheetProblem } from './sheet-problem';
import type { Field, SheetRow } from './types';

interface NumberField {
  readonly what: string;
  readonly least: number;
  readonly most: number;
  readonly remedy: string;
}

const OF_LAB = { least: -200, most: 200, remedy: 'Check the number and its decimal mark.' };
const OF_LIGHTNESS = {
  least: 0,
  most: 100,
  remedy: 'No surface is darker than 0 or lighter than 100: check the number.',
};
const OF_RGB = { least: 0, most: 255, remedy: 'Give 0 to 255 for each channel.' };

const OF_CHROMATICITY = { least: 0, most: 1, remedy: 'x and y both lie between 0 and 1.' };

/** Fields that are numbers, what they are called and what they may be. */
const NUMBER_FIELDS = {
  lab_l: { what: 'L*', ...OF_LIGHTNESS },
  lab_a: { what: 'a*', ...OF_LAB },
  lab_b: { what: 'b*', ...OF_LAB },
  lch_l: { what: 'L*', ...OF_LIGHTNESS },
  lch_c: { what: 'C*', least: 0, most: 200, remedy: 'Check the number and its decimal mark.' },
  lch_h: { what: 'h', least: -360, most: 360, remedy: 'Give the hue angle in degrees.' },
  xyz_x: { what: 'X', least: 0, most: 130, remedy: 'Give X with Y = 100 for a perfect white.' },
  xyz_y: { what: 'Y', least: 0, most: 100, remedy: 'Give Y with 100 for a perfect white.' },
  xyz_z: { what: 'Z', least: 0, most: 130, remedy: 'Give Z with Y = 100 for a perfect white.' },
  xyy_x: { what: 'x', ...OF_CHROMATICITY },
  xyy_y: { what: 'y', ...OF_CHROMATICITY },
  xyy_lum: { what: 'Y', least: 0, most: 100, remedy: 'Give Y with 100 for a perfect white.' },
  rgb_r: { what: 'R', ...OF_RGB },
  rgb_g: { what: 'G', ...OF_RGB },
  rgb_b: { what: 'B', ...OF_RGB },
  lrv: { what: 'LRV', least: 0, most: 100, remedy: 'Give the LRV as printed, 0 for black to 100 for white.' },
  uncertainty_de00: { what: 'uncertainty', least: 0, most: 30, remedy: 'Give it in CIEDE2000 units, 0 to 30.' },
} satisfies Partial<Record<Field, NumberField>>;

/** "±0.5", "+/- 0.5". */
const PLUS_MINUS = /^\s*(?:±|\+\s*\/?\s*[-\u2212\u2013])\s*/;

export type NumberFieldId = keyof typeof NUMBER_FIELDS;

/** What went wrong with a row; thrown inside of the reading of one row and caught there. */
export interface CellProblem {
  readonly problem: Problem;
}

export const isCellProblem = (value: unknown): value is CellProblem =>
  typeof value === 'object' && value !== null && 'problem' in value;

/** The number of a field; null where its cell is blank; a problem for words and for what it cannot be. */
export function numberOf(
  columns: Columns,
  row: SheetRow,
  field: NumberFieldId,
  scale = 1,
): number | null | CellProblem {
  const cell = cellOf(columns, row, field);
  if (isBlank(cell)) return null;
  const { what, least, most, remedy } = NUMBER_FIELDS[field];
  const read = numberInCell(field === 'uncertainty_de00' ? cell.replace(PLUS_MINUS, '') : cell, columns.comma);
  if (Number.isNaN(read)) return { problem: notANumber(headingOf(columns, field), cell, row.line, columns.comma) };
  const value = scale === 1 ? read : Number((read * scale).toPrecision(12));
  if (value >= least && value <= most) return value;
  const words = `${what} is ${value}, outside ${least} to ${most}.`;
  return { problem: sheetProblem('out-of-range', words, remedy, undefined, row.line) };
}

export function notANumber(heading: string, cell: string, line: number, comma: boolean): Problem {
  const isComma = !comma && /^[+-]?\d+,\d+$/.test(cell);
  const remedy = isComma
    ? 'Write a decimal point; where commas separate the cells, they are no decimal marks.'
    : 'Write a number, or leave the cell empty.';
  return sheetProblem('not-a-number', `${heading}: ${quoted(cell)} is not a number.`, remedy, undefined, line);
}
