import { numberInCell } from './cell-number';
import { guessColumns } from './guess-columns';
import type { SheetColumn } from './types';

/** Nothing that could be a value: a word, not a number and no hex code. */
const isWord = (cell: string): boolean =>
  cell !== '' && Number.isNaN(numberInCell(cell, true)) && !/^#?[0-9a-f]{6}$/i.test(cell);

/** Whether a first row is headings though nobody knows them: words only, over a column at least that holds none. */
export function areStrangeHeadings(first: readonly string[], below: readonly (readonly string[])[]): boolean {
  if (first.length < 2 || !first.every(isWord)) return false;
  return first.some((_, column) => {
    const cells = below.map((row) => row[column] ?? '').filter((cell) => cell !== '');
    return cells.length > 0 && !cells.some(isWord);
  });
}

/** Three numbers side by side may be a color; where something else may be written over them nobody takes them for one. */
const MAY_BE_ANYTHING = /^(lab|rgb)_/;

/** Columns under such headings: what a heading told, if one did, else what stands in them. Each field stands once. */
export function columnsUnder(
  named: readonly SheetColumn[],
  below: readonly (readonly string[])[],
): readonly SheetColumn[] {
  const told = named.map(({ field }) => field);
  const guessed = guessColumns(below, named.length);
  return named.map(({ heading, field }, i) => {
    const guess = guessed[i]!.field;
    const isSure = guess !== null && !told.includes(guess) && !MAY_BE_ANYTHING.test(guess);
    return { heading, field: field ?? (isSure ? guess : null) };
  });
}
