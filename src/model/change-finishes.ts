import { failure, type Problem, type Result, success } from '../engine/result';
import { bad, replace } from './change-problems';
import { checkFinish } from './check-finish';
import { checkPlacement, libraryOf, unknownFinish } from './check-project';
import type { FinishChanges, FinishCommand } from './commands';
import type { Finish, Placement, Project } from './project';

/** The document after a command on its finishes. */
export function changeFinishes(project: Project, command: FinishCommand): Result<Project> {
  switch (command.kind) {
    case 'add-finish':
      return addFinish(project, command.finish);
    case 'add-finishes':
      return addFinishes(project, command.finishes);
    case 'edit-finish':
      return editFinish(project, command.finish, command.changes);
    case 'remove-finish':
      return removeFinish(project, command.finish);
  }
}

function addFinish(project: Project, finish: Finish): Result<Project> {
  if (project.library.some((one) => one.id === finish.id)) return failure(taken(finish.id, 'finish'));
  const [problem, ...more] = checkFinish(finish, 'finish');
  return problem ? failure(problem, more) : success({ ...project, library: [...project.library, finish] });
}

/** All or none. */
function addFinishes(project: Project, finishes: readonly Finish[]): Result<Project> {
  if (finishes.length === 0) return success(project);
  const ids = new Set(project.library.map(({ id }) => id));
  const problems = finishes.flatMap((finish, i): readonly Problem[] => {
    const path = `finishes[${i}]`;
    const twice = ids.has(finish.id) ? [taken(finish.id, path)] : [];
    ids.add(finish.id);
    return [...twice, ...checkFinish(finish, path)];
  });
  const [problem, ...more] = problems;
  return problem ? failure(problem, more) : success({ ...project, library: [...project.library, ...finishes] });
}

const taken = (id: string, path: string): Problem =>
  bad('duplicate-id', `${path}.id`, `The library has a finish "${id}" already.`);

function editFinish(project: Project, id: string, changes: FinishChanges): Result<Project> {
  const before = libraryOf(project).get(id);
  if (!before) return failure(unknownFinish(id, 'finish'));
  // What is undefined is taken away: the same finish is the same data, and a file of it the same text.
  const known = Object.entries({ ...before, ...changes, id }).filter(([, value]) => value !== undefined);
  const after = Object.fromEntries(known) as unknown as Finish;
  const [problem, ...more] = checkFinish(after, 'finish');
  if (problem) return failure(problem, more);
  const next = { ...project, library: replace(project.library, before, after) };
  const use = usesOf(next, id).find(({ placement }) => checkPlacement(placement, libraryOf(next), '').length > 0);
  if (use) {
    return failure(
      bad('in-use', 'changes.class', `${before.label} is laid on ${use.at}, where a ${after.class} cannot be.`),
    );
  }
  return success(next);
}

function removeFinish(project: Project, id: string): Result<Project> {
  const finish = libraryOf(project).get(id);
  if (!finish) return failure(unknownFinish(id, 'finish'));
  const [use] = usesOf(project, id);
  if (use) return failure(bad('in-use', 'finish', `${finish.label} is still laid on ${use.at}.`));
  const { samples, ...rest } = project;
  const left = samples?.filter((sample) => sample.finish !== id) ?? [];
  const library = project.library.filter((one) => one !== finish);
  return success(left.length > 0 ? { ...rest, library, samples: left } : { ...rest, library });
}

/** Every placement that uses a finish, as finish or as grout. */
export function usesOf(
  project: Pick<Project, 'options'>,
  id: string,
): readonly { readonly placement: Placement; readonly at: string }[] {
  return project.options.flatMap((option) =>
    Object.entries(option.scheme)
      .filter(([, placement]) => placement.finish === id || placement.laying.grout === id)
      .map(([surface, placement]) => ({ placement, at: `${surface} in "${option.name}"` })),
  );
}
