import { failure, type Problem, type Result, success } from '../engine/result';
import { PROBLEMS } from '../ui/words/problems';

const BYTES_PER_MEGABYTE = 1e6;

/** How large a file of some kind may be, MB, and what is said of a larger one. */
export interface FileLimit {
  readonly megabytes: number;
  readonly tooLarge: (megabytes: number) => string;
  readonly remedy: string;
}

/** Whether a file is too large to be looked into. */
export const isTooLarge = (file: File, { megabytes }: Pick<FileLimit, 'megabytes'>): boolean =>
  file.size > megabytes * BYTES_PER_MEGABYTE;

/**
 * Reads a text file that somebody chose. Whatever happens there is an answer: a file that is too large or gone, code that could not be
 * fetched, and a mistake of ours, too, are problems to be told.
 */
export async function readFile<T>(
  file: File,
  limit: FileLimit,
  parse: (text: string) => Result<T> | Promise<Result<T>>,
): Promise<Result<T>> {
  const refused = (problem: Problem): Result<never> => failure({ ...problem, at: { file: file.name } });
  if (isTooLarge(file, limit)) {
    const text = limit.tooLarge(Math.round(file.size / BYTES_PER_MEGABYTE));
    return refused({ code: 'file-too-large', text, remedy: limit.remedy });
  }
  let text: string;
  try {
    text = await file.text();
  } catch {
    return refused({ code: 'unreadable', text: PROBLEMS.unreadable, remedy: PROBLEMS.unreadableRemedy });
  }
  try {
    return await parse(text);
  } catch (error) {
    return refused(readingBroke(error));
  }
}

/** A mistake of ours while something was read. */
export const readingBroke = (error: unknown): Problem => ({
  code: 'reading-broke',
  text: PROBLEMS.readingBroke(error instanceof Error ? error.message : String(error)),
  remedy: PROBLEMS.readingBrokeRemedy,
});

/** Code that is fetched when it is needed. It may be gone: without a network, or after a newer version took its place. */
export async function fetched<T>(load: () => Promise<T>): Promise<Result<T>> {
  try {
    return success(await load());
  } catch {
    return failure({ code: NOT_FETCHED, text: PROBLEMS.notFetched, remedy: PROBLEMS.notFetchedRemedy });
  }
}

export const NOT_FETCHED = 'code-not-fetched';
