import { failure, type Problem, type Result, success } from '../engine/result';
import { checkColors } from '../io/check-colors';
import { parseProject } from '../io/project-file';
import type { Finish, Project } from '../model/project';
import { readText } from './read-text';

/** The project with the library of another project file added. An id that stands for two different finishes is refused with its place. */
export function withLibraryOf(project: Project, file: string): Result<Project> {
  const text = readText(file);
  if (!text.ok) return text;
  const parsed = parseProject(text.value, file);
  if (!parsed.ok) return parsed;
  const colored = checkColors(parsed.value, text.value, file);
  if (!colored.ok) return colored;
  const known = new Map(project.library.map((finish) => [finish.id, JSON.stringify(finish)]));
  const problems: Problem[] = [];
  const added: Finish[] = [];
  parsed.value.library.forEach((finish, i) => {
    const before = known.get(finish.id);
    if (before === undefined) added.push(finish);
    else if (before !== JSON.stringify(finish)) problems.push(conflict(file, finish, i));
  });
  const [problem, ...more] = problems;
  if (problem) return failure(problem, more);
  return success({ ...project, library: [...project.library, ...added] }, [
    ...(parsed.notices ?? []),
    ...(colored.notices ?? []),
  ]);
}

const conflict = (file: string, { id, label }: Finish, index: number): Problem => ({
  code: 'same-id',
  text: `${id} (${label}) is another finish in the project.`,
  at: { file, path: `library[${index}].id` },
  remedy: 'Give one of the two another id.',
});
