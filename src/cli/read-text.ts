import { readFileSync } from 'node:fs';
import { failure, type Result, success } from '../engine/result';

/** The text of a file (UTF-8), or the reason why it cannot be read. */
export function readText(file: string): Result<string> {
  try {
    return success(readFileSync(file, 'utf8'));
  } catch (error) {
    return failure({
      code: 'unreadable-file',
      text: `The file cannot be read: ${REASONS[codeOf(error)] ?? codeOf(error)}.`,
      at: { file },
      remedy: 'Check the name and the folder.',
    });
  }
}

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file',
  EISDIR: 'it is a folder',
  EACCES: 'reading it is not allowed',
};

const codeOf = (error: unknown): string =>
  error instanceof Error && 'code' in error ? String(error.code) : String(error);
