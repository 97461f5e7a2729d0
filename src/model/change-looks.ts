import { failure, type Result, success } from '../engine/result';
import { bad, replace, unknown } from './change-problems';
import { checkLook } from './check-look';
import type { LookCommand } from './commands';
import type { CopiedLook } from './look';
import type { Project } from './project';

/** The document after a command on its looks. */
export function changeLooks(project: Project, command: LookCommand): Result<Project> {
  const looks = project.looks ?? [];
  if (command.kind === 'add-look') {
    if (looks.some(({ id }) => id === command.look.id)) {
      return failure(bad('duplicate-id', 'look.id', `There is a look "${command.look.id}" already.`));
    }
    return withLooks(project, [...looks, command.look], command.look);
  }
  const before = looks.find(({ id }) => id === command.look);
  if (!before) return unknown('look', command.look, looks);
  if (command.kind === 'edit-look') {
    const after = { ...before, ...command.changes, id: before.id };
    return withLooks(project, replace(looks, before, after), after);
  }
  const { looks: _, ...rest } = project;
  const left = looks.filter((one) => one !== before);
  return success(left.length > 0 ? { ...rest, looks: left } : rest);
}

function withLooks(project: Project, looks: readonly CopiedLook[], changed: CopiedLook): Result<Project> {
  const [problem, ...more] = checkLook(changed, 'look');
  return problem ? failure(problem, more) : success({ ...project, looks });
}
