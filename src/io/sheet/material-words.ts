import type { FinishClass } from '../../engine/finish/types';
import { isBlank } from './cell-number';
import { plainText } from './cell-text';
import { type Columns, cellOf } from './columns';
import type { MaterialWord, SheetRow } from './types';

/** More different words than this are no materials. */
const MOST_WORDS = 200;
const MOST_LETTERS = 80;

/** What a word is called by in `ImportChoices.classes`: case and blanks do not count. */
export const materialKey = (cell: string): string => plainText(cell).text.slice(0, MOST_LETTERS).toLowerCase();

/** The class that a word was said to mean. */
export const classSaid = (classes: Readonly<Record<string, FinishClass>> | undefined, cell: string) => {
  const key = materialKey(cell);
  return classes && Object.hasOwn(classes, key) ? classes[key] : undefined;
};

/** Collects the words of a file for materials with what they were taken for. */
export function materialWords(columns: Columns) {
  const words = new Map<string, { word: string; class: FinishClass | null; rows: number }>();
  return {
    add(row: SheetRow, kind: FinishClass | null): void {
      const cell = cellOf(columns, row, 'class');
      if (isBlank(cell)) return;
      const key = materialKey(cell);
      const known = words.get(key);
      if (known) {
        known.rows++;
        known.class ??= kind;
      } else if (words.size < MOST_WORDS) {
        words.set(key, { word: plainText(cell).text.slice(0, MOST_LETTERS), class: kind, rows: 1 });
      }
    },
    /** What is not understood first, then what most rows have; our own word for a class means itself. */
    list: (): readonly MaterialWord[] =>
      [...words]
        .filter(([key, one]) => key !== one.class)
        .map(([, one]) => one)
        .sort((a, b) => Number(a.class !== null) - Number(b.class !== null) || b.rows - a.rows),
  };
}
