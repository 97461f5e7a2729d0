import { FINISH_CLASSES } from '../../engine/finish/types';
import { success } from '../../engine/result';
import type { Command } from '../command';
import { wrapped } from '../text/figures';

/** Words of the commands and what they print, each in a line. */
const WORDS: readonly (readonly [string, string])[] = [
  ['strength', 'Of an undertone: Munsell chroma over that at which a white, gray or black gets a tinted name (1).'],
  ['WID', 'Whiteness index that holds at every lightness; higher is whiter.'],
  ['LRV', 'Light reflectance value: the share of light that comes back, 0 to 100.'],
  ['CIEDE2000', 'Difference of two colors; about 1 can just be seen side by side.'],
  ['Duv', 'How far the white of a lamp is off that of a black body: above 0 greenish, below pinkish.'],
  ['Ra, R9', 'Color rendering (CIE 13.3), 100 is best: eight muted colors on average, and a strong red.'],
  ['--class', `What the finish is made of: ${FINISH_CLASSES.join(', ')}; without it paint.`],
  ['--gloss', 'Gloss units at 60°, to put back a mirror reflection that was excluded.'],
];

/** The list of commands. */
export const help = (commands: readonly Command[]): Command => {
  const self: Command = { name: 'help', usage: 'help', summary: 'Prints this list.', run };
  const all = [...commands, self];
  function run() {
    const words = WORDS.map(([word, meaning]) => ({ word, meaning }));
    const json = { commands: all.map(({ name, usage, summary }) => ({ name, usage, summary })), words };
    const text = [
      'Upstand: kitchen finishes that belong together in their room and light.',
      '',
      ...all.flatMap(({ usage, summary }) => [`  upstand ${usage}`, wrapped(summary, '      ')]),
      '',
      'Words:',
      ...WORDS.map(([word, meaning]) => `  ${word.padEnd(11)}${wrapped(meaning, ' '.repeat(13)).trimStart()}`),
      '',
      'Put values that hold #, ( or several words in quotes.',
      'Every command takes --words us|uk (trade words and spelling) and --units metric|us for what it prints; JSON stays the same.',
      'With --json the result is JSON on standard output and nothing else is printed there.',
      'Exit: 0 done, 2 wrong input (the message says file, place and what to do), 1 anything else.',
      'Planning aid only: check physical samples in the room before ordering.',
    ].join('\n');
    return success({ json, text });
  }
  return self;
};
