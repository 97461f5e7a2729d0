import { failure, type Result, success } from '../engine/result';
import { changeFinishes } from './change-finishes';
import { changeLight } from './change-light';
import { changeLog } from './change-log';
import { changeLooks } from './change-looks';
import { bad, replace, unknown } from './change-problems';
import { checkText } from './check-number';
import { checkPlacement, libraryOf } from './check-project';
import { type Command, optionById, type Rename } from './commands';
import { isSurfaceId } from './decision-order';
import { layFinishOn } from './lay-finish';
import { changeOrder } from './order/change-order';
import { optionWithoutProgress } from './order/without-progress';
import type { Option, Placement, Project } from './project';

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
    case 'add-finishes':
    case 'edit-finish':
    case 'remove-finish':
      return changeFinishes(project, command);
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
    case 'add-log':
    case 'remove-log':
    case 'set-note':
    case 'freeze-revision':
    case 'rename-revision':
    case 'remove-revision':
    case 'go-back-to-revision':
      return changeLog(project, command);
    case 'set-job':
    case 'set-assumptions':
    case 'set-item':
    case 'set-extra':
    case 'remove-extra':
    case 'set-sample':
    case 'remove-sample':
      return changeOrder(project, command);
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

function copyOption(project: Project, from: string, id: string, name: string): Result<Project> {
  const option = optionById(project, from);
  if (!option) return unknown('option', from, project.options);
  if (optionById(project, id)) return failure(bad('duplicate-id', 'id', `There is an option "${id}" already.`));
  const [problem] = [...checkText(id, 'id'), ...checkText(name, 'name')];
  const copy = { ...optionWithoutProgress(option), id, name };
  return problem ? failure(problem) : success({ ...project, options: [...project.options, copy] });
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
