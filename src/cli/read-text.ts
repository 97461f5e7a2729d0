import { readFileSync, statSync } from 'node:fs';
import { failure, type Result, success } from '../engine/result';

/** Far above any project or spectrum. */
const MOST_BYTES = 20e6;

/** More than a table of finishes may have; its reader says so in its own words. */
const MOST_BYTES_OF_TABLES = 200e6;

/** The text of a file (UTF-8), or the reason why it cannot be read. */
export const readText = (file: string): Result<string> => tried(file, MOST_BYTES, () => readFileSync(file, 'utf8'));

/** The bytes of a file that may be a large table, or the reason why it cannot be read. */
export const readBytes = (file: string): Result<Uint8Array> =>
  tried(file, MOST_BYTES_OF_TABLES, () => readFileSync(file));

function tried<T>(file: string, most: number, read: () => T): Result<T> {
  try {
    const found = statSync(file);
    if (found.isDirectory()) return unreadable(file, REASONS['EISDIR']!);
    if (!found.isFile()) return unreadable(file, 'it is no regular file');
    if (found.size > most) return unreadable(file, `it is larger than ${most / 1e6} MB`);
    return success(read());
  } catch (error) {
    return unreadable(file, REASONS[codeOf(error)] ?? codeOf(error));
  }
}

const unreadable = (file: string, reason: string): Result<never> =>
  failure({
    code: 'unreadable-file',
    text: `The file cannot be read: ${reason}.`,
    at: { file },
    remedy: 'Check the name and the folder.',
  });

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file',
  EISDIR: 'it is a folder',
  EACCES: 'reading it is not allowed',
};

const codeOf = (error: unknown): string =>
  error instanceof Error && 'code' in error ? String(error.code) : String(error);
