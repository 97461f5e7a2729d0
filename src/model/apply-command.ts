import { failure, type Result, success } from '../engine/result';
import { changeLight } from './change-light';
import { changeLooks } from './change-looks';
import { bad, replace, unknown } from './change-problems';
import { checkFinish } from './check-finish';
import { checkText } from './check-number';
import { checkPlacement, libraryOf, unknownFinish } from './check-project';
import { type Command, type FinishChanges, optionById, type Rename } from './commands';
import { isSurfaceId } from './decision-order';
import { layFinishOn } from './lay-finish';
import type { Finish, Option, Placement, Project } from './project';

/**
 * The document after a command. Pure: the document given is never changed, and a command that is wrong (unknown id, value
 * out of range) gives a problem and no document.
 */
export function applyCommand(project: Project, command: Command): Result<Project> {
  switch (command.kind) {
    case 'lay-finish':
      return onSurface(project, command, (option) => layFinishOn(project, option, command));
    case 'set-laying':
      return changePlacement(project, command, { laying: command.laying });
    case 'set-state':
      return changePlacement(project, command, { state: command.state });
    case 'add-finish':
      return addFinish(project, command.finish);
    case 'edit-finish':
      return editFinish(project, command.finish, command.changes);
    case 'remove-finish':
      return removeFinish(project, command.finish);
    case 'add-lamp':
    case 'add-beam':
    case 'set-group':
    case 'set-daylight':
    case 'copy-setting':
    case 'remove-setting':
    case 'set-site':
    case 'set-openings':
    case 'set-fixtures':
    case 'set-kitchen':
    case 'set-users':
    case 'set-year':
      return changeLight(project, command);
    case 'add-look':
    case 'edit-look':
    case 'remove-look':
      return changeLooks(project, command);
    case 'copy-option':
      return copyOption(project, command.option, command.id, command.name);
    case 'remove-option':
      return removeOption(project, command.option);
    case 'rename':
      return rename(project, command);
    case 'together':
      return applyTogether(project, command.commands);
  }
}

/** All or none. */
function applyTogether(project: Project, commands: readonly Command[]): Result<Project> {
  let present = project;
  for (const command of commands) {
    const result = applyCommand(present, command);
    if (!result.ok) return result;
    present = result.value;
  }
  return success(present);
}

function onSurface(
  project: Project,
  { option: id, surface }: { readonly option: string; readonly surface: string },
  change: (option: Option) => Result<Option>,
): Result<Project> {
  const option = optionById(project, id);
  if (!option) return unknown('option', id, project.options);
  if (!isSurfaceId(surface)) return failure(bad('unknown-surface', 'surface', `There is no surface "${surface}".`));
  const changed = change(option);
  if (!changed.ok) return changed;
  return success({ ...project, options: replace(project.options, option, changed.value) });
}

function changePlacement(
  project: Project,
  command: Extract<Command, { kind: 'set-laying' | 'set-state' }>,
  change: Partial<Placement>,
): Result<Project> {
  return onSurface(project, command, (option) => {
    const placement = { ...option.scheme[command.surface], ...change };
    const [problem, ...more] = checkPlacement(placement, libraryOf(project), `scheme.${command.surface}`);
    if (problem) return failure(problem, more);
    return success({ ...option, scheme: { ...option.scheme, [command.surface]: placement } });
  });
}

function addFinish(project: Project, finish: Finish): Result<Project> {
  if (project.library.some((one) => one.id === finish.id)) {
    return failure(bad('duplicate-id', 'finish.id', `The library has a finish "${finish.id}" already.`));
  }
  const [problem, ...more] = checkFinish(finish, 'finish');
  return problem ? failure(problem, more) : success({ ...project, library: [...project.library, finish] });
}

function editFinish(project: Project, id: string, changes: FinishChanges): Result<Project> {
  const before = libraryOf(project).get(id);
  if (!before) return failure(unknownFinish(id, 'finish'));
  const after: Finish = { ...before, ...changes, id };
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
  return success({ ...project, library: project.library.filter((one) => one !== finish) });
}

function copyOption(project: Project, from: string, id: string, name: string): Result<Project> {
  const option = optionById(project, from);
  if (!option) return unknown('option', from, project.options);
  if (optionById(project, id)) return failure(bad('duplicate-id', 'id', `There is an option "${id}" already.`));
  const [problem] = [...checkText(id, 'id'), ...checkText(name, 'name')];
  return problem ? failure(problem) : success({ ...project, options: [...project.options, { ...option, id, name }] });
}

function removeOption(project: Project, id: string): Result<Project> {
  const option = optionById(project, id);
  if (!option) return unknown('option', id, project.options);
  if (project.options.length === 1)
    return failure(bad('last-option', 'option', 'A project keeps at least one option.'));
  return success({ ...project, options: project.options.filter((one) => one !== option) });
}

function rename(project: Project, { what, id, name }: Rename): Result<Project> {
  const [problem] = checkText(name, 'name');
  if (problem) return failure(problem);
  if (what === 'project') return success({ ...project, name });
  if (what === 'option') {
    const option = optionById(project, id ?? '');
    if (!option) return unknown('option', id ?? '', project.options);
    return success({ ...project, options: replace(project.options, option, { ...option, name }) });
  }
  const setting = project.settings.find((one) => one.id === id);
  if (!setting) return unknown('setting', id ?? '', project.settings);
  return success({ ...project, settings: replace(project.settings, setting, { ...setting, name }) });
}

/** Every placement that uses a finish, as finish or as grout. */
function usesOf(project: Project, id: string): readonly { readonly placement: Placement; readonly at: string }[] {
  return project.options.flatMap((option) =>
    Object.entries(option.scheme)
      .filter(([, placement]) => placement.finish === id || placement.laying.grout === id)
      .map(([surface, placement]) => ({ placement, at: `${surface} in "${option.name}"` })),
  );
}
