import { failure, type Problem, type Result, success } from '../engine/result';
import { parseLibrary } from '../io/library-file';
import { libraryRows } from '../io/library-rows';
import { decodeText } from '../io/sheet/decode-text';
import { finishesOf } from '../io/sheet/finishes-of';
import { readSheet } from '../io/sheet/read-sheet';
import type { ImportChoices, ImportOutcome } from '../io/sheet/types';
import { readBytes } from './read-text';

/** What came out of a file of finishes, and the columns it had (none of a library file). */
export interface OpenedRange {
  readonly outcome: ImportOutcome;
  readonly headings: readonly string[];
  /** The list of a document that they stand in; null of a table. */
  readonly list: 'library' | 'finishes' | null;
  /** What a kept library is called; null of all else. */
  readonly library: { readonly id: string; readonly name: string } | null;
}

/** Reads finishes from a library, a project, or a table of any kind; problems are those of the file as a whole. */
export function openRange(file: string, choices: ImportChoices): Result<OpenedRange> {
  const bytes = readBytes(file);
  if (!bytes.ok) return bytes;
  const last = Math.max(-1, ...Object.keys(choices.fields ?? {}).map(Number));
  if (isOurs(bytes.value)) return last < 0 ? openLibrary(bytes.value, file) : failure(noColumn(last, 0, file));
  const sheet = readSheet(bytes.value, file);
  if (!sheet.ok) return sheet;
  const count = sheet.value.columns.length;
  if (last >= count) return failure(noColumn(last, count, file));
  const headings = sheet.value.columns.map(
    ({ heading, field }, i) => `${i + 1} ${heading || 'without a heading'}: ${field ?? '?'}`,
  );
  return success({ outcome: finishesOf(sheet.value, choices), headings, list: null, library: null });
}

const noColumn = (column: number, count: number, file: string): Problem => ({
  code: 'wrong-arguments',
  text: `--column ${column + 1}: ${count === 0 ? 'a library has no columns.' : `the table has ${count} columns.`}`,
  at: { file },
  remedy: count === 0 ? 'Leave it out.' : `Write a number from 1 to ${count}.`,
});

/** A document of this program; other JSON is refused by what it is, as a table would be. */
const isOurs = (bytes: Uint8Array): boolean =>
  /^\s*\{\s*"[\s\S]*"upstand-/.test(String.fromCharCode(...bytes.subarray(0, 2000)).replace(/^\u00ef\u00bb\u00bf/, ''));

function openLibrary(bytes: Uint8Array, file: string): Result<OpenedRange> {
  const text = decodeText(bytes, file);
  if (!text.ok) return text;
  const library = parseLibrary(text.value, file);
  if (!library.ok) return library;
  const { id, name } = library.value;
  const list = /"upstand-project"/.test(text.value.slice(0, 2000)) ? 'library' : 'finishes';
  const rows = libraryRows(library.value, (i) => ({ file, path: `${list}[${i}]` }));
  return success({
    headings: [],
    list,
    library: list === 'finishes' ? { id, name } : null,
    outcome: { ...rows, words: [], questions: [], notices: library.notices ?? [] },
  });
}
