import { failure, type Place, type Problem, type Result } from '../engine/result';

/** More problems than this at once help nobody. */
const MOST_PROBLEMS = 50;

/** A file and a line, as far as they are known. */
export const placeIn = (file?: string, line?: number): Place => ({
  ...(file ? { file } : {}),
  ...(line ? { line } : {}),
});

/** A problem with the file and the line of its path; what is missing gets the line of what it is missing from. */
export function placeProblem(problem: Problem, lines: ReadonlyMap<string, number>, file?: string): Problem {
  let path = problem.at?.path ?? '';
  while (path !== '' && !lines.has(path)) path = path.replace(/(\.[^.[\]]*|\[\d+\]|^[^.[\]]*)$/, '');
  return { ...problem, at: { ...(file ? { file } : {}), line: lines.get(path) ?? 1, ...problem.at } };
}

/** The failure that problems make together; `problems` is not empty. */
export const failureOf = (problems: readonly Problem[]): Result<never> =>
  failure(problems[0]!, problems.slice(1, MOST_PROBLEMS));
