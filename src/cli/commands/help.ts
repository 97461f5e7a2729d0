import { success } from '../../engine/result';
import type { Command } from '../command';

/** The list of commands. */
export const help = (commands: readonly Command[]): Command => {
  const self: Command = { name: 'help', usage: 'help', summary: 'Prints this list.', run };
  const all = [...commands, self];
  function run() {
    const json = { commands: all.map(({ name, usage, summary }) => ({ name, usage, summary })) };
    const text = [
      'Upstand: kitchen finishes that belong together in their room and light.',
      '',
      ...all.flatMap(({ usage, summary }) => [`  upstand ${usage}`, `      ${summary}`]),
      '',
      'With --json the result is JSON on standard output and nothing else is printed there.',
      'Exit: 0 done, 2 wrong input (the message says file, place and what to do), 1 anything else.',
      'Planning aid only: check physical samples in the room before ordering.',
    ].join('\n');
    return success({ json, text });
  }
  return self;
};
