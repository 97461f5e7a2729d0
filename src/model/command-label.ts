import { surfaceName } from '../engine/judge/surface-words';
import type { Command } from './commands';
import { isEmpty } from './empty-surface';
import type { Project } from './project';

/** What a command does, in words for "Undo: ..." and for the log. `project` is the document before it. */
export function commandLabel(project: Project, command: Command): string {
  const finishName = (id: string) => project.library.find((finish) => finish.id === id)?.label ?? id;
  const lookName = (id: string) => project.looks?.find((look) => look.id === id)?.name ?? id;
  switch (command.kind) {
    case 'lay-finish':
      return `${surfaceName(command.surface)}: ${isEmpty(command) ? 'left empty' : finishName(command.finish)}`;
    case 'set-laying':
      return `laying of the ${surfaceName(command.surface)}`;
    case 'set-state':
      return `${surfaceName(command.surface)}: ${command.state}`;
    case 'add-finish':
      return `add ${command.finish.label}`;
    case 'edit-finish':
      return `change ${finishName(command.finish)}`;
    case 'remove-finish':
      return `remove ${finishName(command.finish)}`;
    case 'add-finishes':
      return command.finishes.length === 1
        ? `add ${command.finishes[0]!.label}`
        : `add ${command.finishes.length} finishes`;
    case 'add-lamp':
      return `add lamp ${command.lamp.label}`;
    case 'set-group':
      return command.light === undefined ? `dim ${command.group} light` : `lamp of ${command.group} light`;
    case 'add-beam':
      return `add beam ${command.beam.label}`;
    case 'set-daylight':
      return command.daylight ? 'daylight' : 'no daylight';
    case 'copy-setting':
      return `copy setting as "${command.name}"`;
    case 'remove-setting':
      return `remove setting "${project.settings.find((one) => one.id === command.setting)?.name ?? command.setting}"`;
    case 'set-site':
      return 'place and bearing';
    case 'set-openings':
      return 'windows';
    case 'set-fixtures':
      return 'lamps of the room';
    case 'set-kitchen':
      return 'kitchen';
    case 'set-users':
      return 'who uses the kitchen';
    case 'set-year':
      return 'year of the house';
    case 'add-look':
      return `add look "${command.look.name}"`;
    case 'edit-look':
      return `change look "${lookName(command.look)}"`;
    case 'remove-look':
      return `remove look "${lookName(command.look)}"`;
    case 'set-job':
      return 'whom the work is for and when';
    case 'set-assumptions':
      return 'what quantities rest on';
    case 'set-item':
      return `${command.record.item} of the schedule`;
    case 'set-extra':
      return `${command.extra.id} of the schedule`;
    case 'remove-extra':
      return `remove ${command.id} from the schedule`;
    case 'set-sample':
      return `sample of ${finishName(command.sample.finish)}`;
    case 'remove-sample':
      return `no sample of ${finishName(command.finish)}`;
    case 'add-log':
      return 'note in the log';
    case 'remove-log':
      return 'remove from the log';
    case 'set-note':
      return command.what === 'project' ? 'note of the project' : 'note of the option';
    case 'freeze-revision':
      return `freeze ${command.id} "${command.name}"`;
    case 'rename-revision':
      return `rename ${command.revision} to "${command.name}"`;
    case 'remove-revision':
      return `remove ${command.revision}`;
    case 'go-back-to-revision':
      return `go back to ${command.revision}`;
    case 'copy-option':
      return `copy option as "${command.name}"`;
    case 'remove-option':
      return `remove option "${project.options.find((one) => one.id === command.option)?.name ?? command.option}"`;
    case 'rename':
      return `rename to "${command.name}"`;
    case 'together':
      return command.label;
  }
}
