import type { Problem } from '../../engine/result';
import { sheetProblem } from './sheet-problem';
import type { Field, ImportChoices, Sheet, SheetColumn } from './types';

const UNKNOWN = 'columns-unknown';
const BARE = 'no-headings';

/** More names than this hide the message. */
const MOST_NAMES = 12;

/** The notices of a sheet as they stand with what was said of its columns: what is answered is told no more. */
export function columnNotices(
  { columns, notices, file, unknown = [] }: Sheet,
  { fields = {} }: ImportChoices,
): readonly Problem[] {
  const chosen = columns.map(
    (column, i): SheetColumn => (i in fields ? { ...column, field: fields[i] ?? null } : column),
  );
  return notices.flatMap((notice) => {
    if (notice.code === BARE) return [bareNotice(chosen, file)];
    if (notice.code !== UNKNOWN) return [notice];
    const open = unknown.filter((i) => !(i in fields));
    return open.length === 0 ? [] : [unknownNotice(columns, open, file, notice.at?.line)];
  });
}

/** What nothing is known of; our own tables have a column for their version. */
export const isUnknown = ({ heading, field }: { readonly heading: string; readonly field: Field | null }): boolean =>
  field === null && heading !== '' && !/^schema$/i.test(heading);

export function unknownNotice(
  columns: readonly SheetColumn[],
  unknown: readonly number[],
  file: string,
  line?: number,
): Problem {
  const names = unknown.slice(0, MOST_NAMES).map((i) => `"${columns[i]?.heading}"`);
  const more = unknown.length > MOST_NAMES ? ` and ${unknown.length - MOST_NAMES} more` : '';
  const words = `Columns that were not understood: ${names.join(', ')}${more}.`;
  return sheetProblem(UNKNOWN, words, 'Say what they mean, or leave them out.', file, line);
}

export function bareNotice(columns: readonly SheetColumn[], file: string): Problem {
  const taken = columns.flatMap(({ field }, i) => (field ? [`${i + 1} ${field}`] : []));
  const headed = columns.some(({ heading }) => heading !== '');
  const lacks = headed ? 'The headings are not ones we know' : 'The table has no headings';
  const words = taken.length > 0 ? `${lacks}; the columns were taken for: ${taken.join(', ')}.` : `${lacks}.`;
  return sheetProblem(BARE, words, 'Check them, or say what each column means.', file);
}
