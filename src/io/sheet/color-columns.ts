import type { Problem } from '../../engine/result';
import { letterColumns } from './color-letters';
import { chosenSet } from './color-sets';
import { isOtherGloss } from './field-of-heading';
import { counted, IF_RIGHT, sheetProblem } from './sheet-problem';
import type { Field } from './types';

/** What is known of the columns of a color from all headings together. */
export interface ColorColumns {
  /** Columns named by letters. */
  readonly fields: ReadonlyMap<number, Field>;
  /** Columns that are understood and left out, each told. */
  readonly left: ReadonlySet<number>;
  notices(file: string, line: number): readonly Problem[];
}

/** Sets of columns named by letters, the set that counts of several, and what is left out: inks, halves of a set, gloss at other angles. */
export function colorColumns(headings: readonly string[]): ColorColumns {
  const { fields, inks, halves } = letterColumns(headings);
  const chosen = chosenSet(headings, fields);
  const glosses = headings.flatMap((heading, at) => (isOtherGloss(heading) ? [at] : []));
  const named = (columns: readonly number[]) => columns.map((at) => `"${headings[at]}"`).join(', ');
  return {
    fields,
    left: new Set([...inks, ...halves, ...chosen.left, ...glosses]),
    notices: (file, line) => {
      const tell = (columns: readonly number[], code: string, words: string, remedy: string) =>
        columns.length > 0 ? [sheetProblem(code, words, remedy, file, line)] : [];
      return [
        ...tell(
          chosen.left,
          'set-chosen',
          `The color stands in several sets of columns: ${chosen.words}`,
          'Nothing to do if that is right; else say what the other columns mean.',
        ),
        ...tell(
          inks,
          'device-columns',
          `${named(inks)} are amounts of ink; they say no color without the profile of their printer, and were left out.`,
          IF_RIGHT,
        ),
        ...tell(
          halves,
          'set-not-whole',
          `${named(halves)}: ${counted(halves.length, 'column')} of X, Y, Z or x, y, Y without the others; left out.`,
          'Give the whole set, or say what the column means: a Y alone is read as LRV.',
        ),
        ...tell(
          glosses,
          'gloss-other-angle',
          `${named(glosses)}: gloss at another angle than 60° cannot be turned into gloss at 60°, and was left out.`,
          'Give gloss units at 60° if you have them.',
        ),
      ];
    },
  };
}
