import type { Command } from './commands';
import type { Offered } from './offered-finishes';
import type { Finish, Project } from './project';

/**
 * A command together with those that take in what it names and only the offered finishes have, as one: the same command where there is
 * nothing to take in.
 */
export function takingIn({ library }: Project, command: Command, label: string, { byId }: Offered): Command {
  const has = new Set(library.map(({ id }) => id));
  const taken = new Map<string, Finish>();
  for (const id of finishesNamed(command)) {
    const finish = has.has(id) ? undefined : byId.get(id);
    if (finish) taken.set(id, finish);
  }
  if (taken.size === 0) return command;
  const adds = [...taken.values()].map((finish): Command => ({ kind: 'add-finish', finish }));
  const rest = command.kind === 'together' ? command.commands : [command];
  return { kind: 'together', label, commands: [...adds, ...rest] };
}

/** Finishes a command lays, as finish or as grout. */
function finishesNamed(command: Command): readonly string[] {
  switch (command.kind) {
    case 'lay-finish':
      return [command.finish, command.laying?.grout ?? []].flat();
    case 'set-laying':
      return [command.laying.grout ?? []].flat();
    case 'together':
      return command.commands.flatMap(finishesNamed);
    default:
      return [];
  }
}
