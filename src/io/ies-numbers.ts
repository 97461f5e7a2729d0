import { failure, type Problem, type Result, success } from '../engine/result';
import { placeIn } from './place-problem';

/** A number of a file and the line it stands on. */
export interface IesNumber {
  readonly value: number;
  readonly line: number;
}

/** A place in the numbers of a file: numbers are parted by spaces, line ends and commas, however the lines are broken. */
export interface IesCursor {
  readonly text: string;
  readonly file: string | undefined;
  /** Character and line that are read next. */
  at: number;
  line: number;
}

const NUMBER = /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i;

/** The next word, or null at the end; a Ctrl-Z of old systems ends the file. */
export function nextWord(cursor: IesCursor): { readonly word: string; readonly line: number } | null {
  const { text } = cursor;
  while (cursor.at < text.length && isBetween(text.charCodeAt(cursor.at))) {
    if (text[cursor.at] === '\n') cursor.line++;
    cursor.at++;
  }
  const start = cursor.at;
  while (cursor.at < text.length && !isBetween(text.charCodeAt(cursor.at))) cursor.at++;
  return cursor.at > start ? { word: text.slice(start, cursor.at), line: cursor.line } : null;
}

const isBetween = (code: number): boolean => code <= 32 || code === 44 || code === 160;

/** The next number; `what` names it in the problem. */
export function nextNumber(cursor: IesCursor, what: string): Result<IesNumber> {
  const next = nextWord(cursor);
  if (!next) {
    return failure({
      code: 'too-few-numbers',
      text: `Line ${cursor.line}: the file ends before ${what}.`,
      at: placeIn(cursor.file, cursor.line),
      remedy: 'Fetch the file again: it was cut off, or a count in it is too large.',
    });
  }
  const value = NUMBER.test(next.word) ? Number(next.word) : Number.NaN;
  if (Number.isFinite(value)) return success({ value, line: next.line });
  return failure({
    code: 'not-a-number',
    text: `Line ${next.line}: "${next.word.slice(0, 30)}" stands where ${what} should be a number.`,
    at: placeIn(cursor.file, next.line),
    remedy: 'Correct the number, or fetch the file again.',
  });
}

/** The next `names.length` numbers by name. */
export function nextRecord<Name extends string>(
  cursor: IesCursor,
  names: Readonly<Record<Name, string>>,
): Result<Readonly<Record<Name, IesNumber>>> {
  const record = {} as Record<Name, IesNumber>;
  for (const name of Object.keys(names) as Name[]) {
    const read = nextNumber(cursor, names[name]);
    if (!read.ok) return read;
    record[name] = read.value;
  }
  return success(record);
}

/** The next `count` numbers; `lines` holds where each stands. */
export function nextList(
  cursor: IesCursor,
  count: number,
  what: string,
): Result<{ readonly values: Float64Array; readonly lines: Uint32Array }> {
  const values = new Float64Array(count);
  const lines = new Uint32Array(count);
  for (let i = 0; i < count; i++) {
    const read = nextNumber(cursor, `${what} ${i + 1} of ${count}`);
    if (!read.ok) return read;
    values[i] = read.value.value;
    lines[i] = read.value.line;
  }
  return success({ values, lines });
}

/** A problem of the file on a line. */
export const iesProblem = (code: string, line: number, text: string, remedy: string, file?: string): Problem => ({
  code,
  text: `Line ${line}: ${text}`,
  at: placeIn(file, line),
  remedy,
});
