import { failure, type Result, success } from '../engine/result';
import type { LengthUnit } from '../model/length-text';
import { inTradeWords, TRADE_WORDS, type TradeWords, turned } from '../model/trade-words';
import { inUnit } from '../model/unit-words';

/** How the program speaks to people; JSON stays as it is. */
export interface Speech {
  readonly words: TradeWords;
  /** Null: as every command says it by itself. */
  readonly unit: LengthUnit | null;
}

const UNITS: Readonly<Record<string, LengthUnit>> = { metric: 'mm', us: 'in' };

/** Takes `--words` and `--units`, which every command understands, out of the arguments. */
export function readSpeech(
  argv: readonly string[],
): Result<{ readonly speech: Speech; readonly rest: readonly string[] }> {
  const rest: string[] = [];
  const asked: Record<string, string | undefined> = {};
  for (let i = 0; i < argv.length; i++) {
    const [, option, value] = /^--(words|units)(?:=(.*))?$/.exec(argv[i]!) ?? [];
    if (option === undefined) rest.push(argv[i]!);
    else if (asked[option] !== undefined)
      return wrong(`--${option} is given twice; it takes one value.`, 'Leave one of them out.');
    else asked[option] = value ?? argv[++i] ?? '';
  }
  const { words = 'us', units } = asked;
  const known = TRADE_WORDS.find((one) => one === words);
  if (!known) return wrong(`--words takes us or uk, not "${words}".`, 'Write --words uk or --words us.');
  const unit = units === undefined ? null : UNITS[units];
  if (unit === undefined)
    return wrong(`--units takes metric or us, not "${units}".`, 'Write --units us or --units metric.');
  return success({ speech: { words: known, unit }, rest });
}

const wrong = (text: string, remedy: string): Result<never> => failure({ code: 'wrong-arguments', text, remedy });

/** A text for people in the words and units asked for. `names` stay as they are, and so do the arguments of the command. */
export function inWords(text: string, { words, unit }: Speech, names: readonly string[]): string {
  if (words === 'us' && unit === null) return text;
  const kept = names.filter((name) => /\p{L}/u.test(name) && text.includes(name));
  return turned(text, kept, (part) => inTradeWords(unit === null ? part : inUnit(part, unit), words));
}
