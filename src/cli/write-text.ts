import { closeSync, existsSync, openSync, statSync, unlinkSync, writeFileSync } from 'node:fs';
import { failure, type Result, success } from '../engine/result';

/** Writes a file (UTF-8), in place of what stood there; or says why it cannot be written. */
export const writeText = (file: string, text: string): Result<null> => tried(file, () => writeFileSync(file, text));

/** Whether a file can be written, before long work is done for it; what stands there stays. It must not be `source`, what was read. */
export function checkWritable(file: string, source: string): Result<null> {
  if (isSame(file, source)) {
    return failure({
      code: 'overwrites-its-source',
      text: 'This is the file that was read; it would be lost.',
      at: { file },
      remedy: 'Name another file to write to.',
    });
  }
  return tried(file, () => {
    const isNew = !existsSync(file);
    closeSync(openSync(file, 'a'));
    if (isNew) unlinkSync(file);
  });
}

/** Whether two paths lead to one file, by links, too. */
function isSame(a: string, b: string): boolean {
  const [one, other] = [a, b].map((path) => statSync(path, { bigint: true, throwIfNoEntry: false }));
  return one !== undefined && other !== undefined && one.dev === other.dev && one.ino === other.ino;
}

function tried(file: string, write: () => void): Result<null> {
  try {
    write();
    return success(null);
  } catch (error) {
    const code = error instanceof Error && 'code' in error ? String(error.code) : String(error);
    return failure({
      code: 'unwritable-file',
      text: `The file cannot be written: ${REASONS[code] ?? code}.`,
      at: { file },
      remedy: 'Name a file in a folder that exists and may be written to.',
    });
  }
}

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such folder',
  ENOTDIR: 'a part of its path is no folder',
  EISDIR: 'it is a folder',
  EACCES: 'writing there is not allowed',
  EPERM: 'writing there is not allowed',
  EROFS: 'writing there is not allowed',
  ENOSPC: 'the disk is full',
};
