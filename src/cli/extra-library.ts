import { failure, type Problem, type Result, success } from '../engine/result';
import { counted } from '../io/sheet/sheet-problem';
import type { Finish, Project } from '../model/project';
import { openRange } from './open-range';

/**
 * The project with the finishes of another file added: a project, a library, or a table. What a table refuses is told. An id that stands for
 * two different finishes is refused with its place.
 */
export function withLibraryOf(project: Project, file: string): Result<Project> {
  const opened = openRange(file, {});
  if (!opened.ok) return opened;
  const { outcome, list } = opened.value;
  const { kept, refused, notices } = outcome;
  const [first] = refused;
  if (first && (kept.length === 0 || list)) {
    return failure(
      list
        ? first.problem
        : { ...first.problem, remedy: `${first.problem.remedy} Or make a library of it first: upstand import --out.` },
      refused.slice(1).map(({ problem }) => problem),
    );
  }
  const known = new Map(project.library.map((finish) => [finish.id, JSON.stringify(finish)]));
  const problems: Problem[] = [];
  const added: Finish[] = [];
  for (const { row, finish } of kept) {
    const before = known.get(finish.id);
    if (before === undefined) added.push(finish);
    else if (before !== JSON.stringify(finish))
      problems.push(conflict(file, finish, list ? `${list}[${row - 1}].id` : `row ${row}`));
  }
  const [problem, ...more] = problems;
  if (problem) return failure(problem, more);
  const left: readonly Problem[] = first ? [leftOut(refused.length, first.problem)] : [];
  return success({ ...project, library: [...project.library, ...added] }, [...notices, ...left]);
}

const leftOut = (count: number, { text, at }: Problem): Problem => ({
  code: 'rows-left-out',
  text: `${counted(count, 'row')} left out; the first: ${text}`,
  ...(at && { at }),
  remedy: 'See all of them with: upstand import.',
});

const conflict = (file: string, { id, label }: Finish, path: string): Problem => ({
  code: 'same-id',
  text: `${id} (${label}) is another finish in the project.`,
  at: { file, path },
  remedy: 'Give one of the two another id.',
});
