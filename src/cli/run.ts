import type { Problem } from '../engine/result';
import type { Command } from './command';
import { assess } from './commands/assess';
import { carryOver } from './commands/carry-over';
import { color } from './commands/color';
import { compare } from './commands/compare';
import { help } from './commands/help';
import { importFinishes } from './commands/import';
import { lamp } from './commands/lamp';
import { light } from './commands/light';
import { schedule } from './commands/schedule';
import { shift } from './commands/shift';
import { shortlist } from './commands/shortlist';
import { inWords, readSpeech, type Speech } from './in-words';
import { printable } from './printable';
import { problemText } from './problem-text';

const WORKING: readonly Command[] = [
  assess,
  carryOver,
  color,
  compare,
  importFinishes,
  lamp,
  light,
  schedule,
  shift,
  shortlist,
];

/** More lines than this on the screen hide the first one. */
const MOST_LINES = 12;

/** What the program prints and returns: data on one channel, messages on the other. */
export interface Outcome {
  readonly exit: 0 | 1 | 2;
  readonly out: string;
  readonly messages: string;
}

/** Runs one command. Exit 0: done; 2: wrong input, with file, place and what to do; bugs are left to the caller. */
export function run(argv: readonly string[]): Outcome {
  const read = readSpeech(argv);
  if (!read.ok) return wrong([read.problem]);
  const { speech, rest } = read.value;
  return runCommand(rest, speech);
}

function runCommand(argv: readonly string[], speech: Speech): Outcome {
  const [name, ...args] = argv;
  const asked = name === undefined || argv.some((one) => one === '--help' || one === '-h') ? 'help' : name;
  const command = [...WORKING, help(WORKING)].find((one) => one.name === asked);
  if (!command) {
    const known = [...WORKING.map((one) => one.name), 'help'].join(', ');
    return wrong([{ code: 'unknown-command', text: `There is no command "${asked}".`, remedy: `Known: ${known}.` }]);
  }
  // What somebody wrote, and how commands are called, are no words to turn.
  const given = [...args, ...WORKING.map(({ usage }) => usage)];
  const say = (line: string) => inWords(line, speech, given);
  const result = command.run(args);
  if (!result.ok) return wrong([result.problem, ...(result.more ?? [])], say);
  const { json, text, notices = [], exit = 0, names = [], isTable = false } = result.value;
  const data = command.hasNotes ? { ...(json as object), notes: notices.map(noteOf) } : json;
  const out = args.includes('--json')
    ? JSON.stringify(data, null, 2)
    : isTable
      ? text
      : inWords(text, speech, [...given, ...names]);
  return {
    exit,
    out: `${printable(out)}\n`,
    messages: lines(notices, (line) => inWords(line, speech, [...given, ...names])),
  };
}

const noteOf = ({ code, text }: Problem) => ({ code, text });

const wrong = (problems: readonly Problem[], say?: (line: string) => string): Outcome => ({
  exit: 2,
  out: '',
  messages: lines(problems, say),
});

function lines(problems: readonly Problem[], say = (line: string) => line): string {
  const shown = problems.slice(0, MOST_LINES).map((problem) => say(problemText(problem)));
  if (problems.length > MOST_LINES) shown.push(`... and ${problems.length - MOST_LINES} more.`);
  return shown.map((line) => `${printable(line)}\n`).join('');
}
