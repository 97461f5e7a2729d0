import { type ParseArgsConfig, parseArgs } from 'node:util';
import { failure, type Result, success } from '../engine/result';

type Options = NonNullable<ParseArgsConfig['options']>;
type Parsed<O extends Options> = ReturnType<
  typeof parseArgs<{ args: string[]; options: O; allowPositionals: true; strict: true }>
>;

/** What a command was given: its options, and exactly one thing to work on. */
export interface Arguments<O extends Options> {
  readonly subject: string;
  readonly values: Parsed<O>['values'];
}

/** The minus of the typographer, which no option starts with. */
const MINUS = '\u2212';

/** "-0.3" and "-0.3," are numbers of a value, no options. */
const keepNumbers = (arg: string): string => (/^-[\d.]/.test(arg) ? arg.replace('-', MINUS) : arg);

const numbersBack = (word: string): string => (word.startsWith(MINUS) ? word.replace(MINUS, '-') : word);

/**
 * Parses options and the one positional argument of a command; `usage` is shown when they are wrong. With `several` 'joined'
 * words that follow belong to the argument, as where somebody left out the quotes; else they are refused.
 */
export function readArguments<O extends Options>(
  args: readonly string[],
  options: O,
  subjectName: string,
  usage: string,
  several: 'refused' | 'joined' = 'refused',
): Result<Arguments<O>> {
  const read = readWords(args, options, usage);
  if (!read.ok) return read;
  const { words, values } = read.value;
  const [subject, ...rest] = words;
  if (subject === undefined) return wrongArguments(`${subjectName} is missing.`, usage);
  if (several === 'joined') return success({ subject: [subject, ...rest].join(' '), values });
  if (rest.length > 0) return wrongArguments(`"${rest[0]}" is one argument too many.`, usage);
  return success({ subject, values });
}

/** As `readArguments`, for a command that works on two things, both named. */
export function readTwoArguments<O extends Options>(
  args: readonly string[],
  options: O,
  names: readonly [first: string, second: string],
  usage: string,
): Result<{ readonly first: string; readonly second: string; readonly values: Parsed<O>['values'] }> {
  const read = readWords(args, options, usage);
  if (!read.ok) return read;
  const { words, values } = read.value;
  const [first, second, extra] = words;
  if (first === undefined) return wrongArguments(`${names[0]} is missing.`, usage);
  if (second === undefined) return wrongArguments(`${names[1]} is missing.`, usage);
  if (extra !== undefined) return wrongArguments(`"${extra}" is one argument too many.`, usage);
  return success({ first, second, values });
}

function readWords<O extends Options>(
  args: readonly string[],
  options: O,
  usage: string,
): Result<{ readonly words: readonly string[]; readonly values: Parsed<O>['values'] }> {
  try {
    const config = {
      args: args.map(keepNumbers),
      options,
      allowPositionals: true,
      strict: true,
      tokens: true,
    } as const;
    const { tokens, ...parsed } = parseArgs(config);
    const twice = saidTwice(tokens, options);
    if (twice !== null) return wrongArguments(`--${twice} is given twice; it takes one value.`, usage);
    const { positionals, values } = parsed as unknown as Parsed<O>;
    return success({ words: positionals.map(numbersBack), values });
  } catch (error) {
    // parseArgs reports wrong arguments by exceptions with these codes; anything else is a bug.
    if (!isArgumentError(error)) throw error;
    return wrongArguments(valueMissing(error) ?? firstSentence(error.message), usage);
  }
}

/** The first option with one value that stands twice: parseArgs would take the last and say nothing. */
function saidTwice(
  tokens: readonly { readonly kind: string; readonly name?: string }[],
  options: Options,
): string | null {
  const said = tokens.flatMap(({ kind, name }) => (kind === 'option' && name !== undefined ? [name] : []));
  const isSingle = (name: string): boolean => options[name]?.type === 'string' && options[name].multiple !== true;
  return said.find((name, i) => isSingle(name) && said.indexOf(name) < i) ?? null;
}

const wrongArguments = (text: string, usage: string): Result<never> =>
  failure({ code: 'wrong-arguments', text, remedy: `Usage: upstand ${usage}` });

const isArgumentError = (error: unknown): error is Error & { readonly code: string } =>
  error instanceof TypeError && 'code' in error && String(error.code).startsWith('ERR_PARSE_ARGS_');

/** An option at the end, or with another option where its value should stand: parseArgs says the one "missing", the other "ambiguous". */
function valueMissing({ code, message }: Error & { readonly code: string }): string | null {
  if (code !== 'ERR_PARSE_ARGS_INVALID_OPTION_VALUE') return null;
  const option = /^Option '(?:-\w, )?(--[\w-]+)(?: <value>)?' argument (?:missing|is ambiguous)/.exec(message)?.[1];
  return option === undefined ? null : `${option} needs a value.`;
}

const firstSentence = (message: string): string => `${message.split(/\.\s/)[0]!.replace(/\.$/, '')}.`;
