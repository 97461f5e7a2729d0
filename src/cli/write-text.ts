import {
  closeSync,
  existsSync,
  openSync,
  realpathSync,
  renameSync,
  rmSync,
  statSync,
  unlinkSync,
  writeFileSync,
} from 'node:fs';
import { basename, dirname, join, resolve } from 'node:path';
import { failure, type Result, success } from '../engine/result';

/**
 * Writes a file (UTF-8), in place of what stood there; or says why it cannot be written. Written beside and then put in its place: where
 * the disk is full or the program ends, what stood there still stands there whole.
 */
export const writeText = (file: string, text: string): Result<null> =>
  tried(file, () => {
    const before = statSync(file, { throwIfNoEntry: false });
    // What is no plain file (a pipe, a terminal) cannot be replaced.
    if (before && !before.isFile()) return writeFileSync(file, text);
    const place = before ? realpathSync(file) : file;
    const beside = `${place}.${process.pid}.part`;
    try {
      writeFileSync(beside, text, { flag: 'wx', ...(before && { mode: before.mode }) });
      renameSync(beside, place);
    } catch (error) {
      rmSync(beside, { force: true });
      throw error;
    }
  });

/** Whether two files that are to be written are one. */
export function checkApart(file: string, other: string): Result<null> {
  if (!isSame(file, other) && pathOf(file) !== pathOf(other)) return success(null);
  return failure({
    code: 'written-twice',
    text: 'Two things are to be written to this one file; the first would be lost.',
    at: { file },
    remedy: 'Name two files.',
  });
}

/** A path by which a file that is not there yet is known, whatever links lead to its folder. */
function pathOf(file: string): string {
  const folder = dirname(resolve(file));
  return join(existsSync(folder) ? realpathSync(folder) : folder, basename(file));
}

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
