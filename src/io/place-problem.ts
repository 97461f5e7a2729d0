import { failure, type Place, type Problem, type Result } from '../engine/result';
import { type JsonLines, lineOf } from './json-lines';

/** More problems than this at once help nobody. */
export const MOST_PROBLEMS = 50;

/** A file and a line, as far as they are known. */
export const placeIn = (file?: string, line?: number): Place => ({
  ...(file ? { file } : {}),
  ...(line ? { line } : {}),
});

/** A problem with the file and the line of its path; what is missing gets the line of what it is missing from. */
export const placeProblem = (problem: Problem, lines: JsonLines, file?: string): Problem => ({
  ...problem,
  at: { ...(file ? { file } : {}), line: lineOf(lines, problem.at?.path ?? ''), ...problem.at },
});

/** The failure that problems make together; `problems` is not empty. */
export const failureOf = (problems: readonly Problem[]): Result<never> =>
  failure(problems[0]!, problems.slice(1, MOST_PROBLEMS));
