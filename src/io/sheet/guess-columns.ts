import { numberInCell } from './cell-number';
import { classInWords } from './class-words';
import { priceInCell } from './price-cell';
import { bandInCell } from './row-supply';
import type { Field, SheetColumn } from './types';

/** Rows that are looked at. */
const LOOKED_AT = 50;

/** An amount with its currency, so that it is a price whatever it is called. */
function hasCurrency(cell: string): boolean {
  const read = priceInCell(cell, { mark: null, hasCurrency: false });
  return read?.is === 'price' && read.said.currency !== undefined;
}

/**
 * Columns of a table without headings, by what stands in them: hex codes; classes; prices; three numbers side by side as L*, a*, b* or as R, G, B
 * where there are no others; then texts, as code and name. What stays open has no field.
 */
export function guessColumns(rows: readonly (readonly string[])[], count: number): readonly SheetColumn[] {
  const cellsOf = (column: number) =>
    rows
      .slice(0, LOOKED_AT)
      .map((cells) => cells[column] ?? '')
      .filter((cell) => cell !== '');
  const fields: (Field | null)[] = Array<Field | null>(count).fill(null);
  const numeric: number[] = [];
  const words: number[] = [];
  for (let i = 0; i < count; i++) {
    const cells = cellsOf(i);
    if (cells.length === 0) continue;
    const has = (isSo: (cell: string) => boolean) => cells.every(isSo);
    if (has((cell) => /^#?[0-9a-f]{6}$/i.test(cell)) && cells.some((cell) => /[#a-f]/i.test(cell))) fields[i] ??= 'hex';
    else if (has((cell) => !Number.isNaN(numberInCell(cell, true)))) numeric.push(i);
    else if (has((cell) => classInWords(cell) !== null)) fields[i] = 'class';
    else if (has(hasCurrency)) fields[i] ??= 'price';
    else if (has((cell) => bandInCell(cell) !== null)) fields[i] ??= 'price_band';
    else words.push(i);
  }
  const [first = 0, , third = 0] = numeric;
  // A running number before them is a code.
  const triple = numeric.length === 4 && first === 0 ? numeric.slice(1) : numeric;
  if (triple.length === 3 && triple[2]! - triple[0]! === 2 && !fields.includes('hex')) {
    const values = triple.map((column) => cellsOf(column).map((cell) => numberInCell(cell, true)));
    const [l, ...ab] = values;
    const isLab = l!.every((value) => value >= 0 && value <= 100) && ab.flat().every((value) => Math.abs(value) <= 130);
    const isRgb = values.flat().every((value) => Number.isInteger(value) && value >= 0 && value <= 255);
    const named: readonly Field[] = isRgb ? ['rgb_r', 'rgb_g', 'rgb_b'] : isLab ? ['lab_l', 'lab_a', 'lab_b'] : [];
    named.forEach((field, k) => {
      fields[triple[k]!] = field;
    });
    if (triple !== numeric && third > 0) fields[0] = 'code';
  }
  const [one, two] = words;
  if (one !== undefined && two !== undefined) {
    fields[one] ??= 'code';
    fields[two] ??= 'name';
  } else if (one !== undefined) fields[one] ??= 'name';
  return fields.map((field) => ({ heading: '', field }));
}
