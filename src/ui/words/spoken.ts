import type { LengthUnit } from '../../model/length-text';
import { hasUsWord, inTradeWords, type TradeWords, turned } from '../../model/trade-words';
import { inUnit } from '../../model/unit-words';

/*
 * All that people read is written in US words and metric units and turned here, once, into what is chosen.
 *
 * A new file of words needs one thing: wrap what it exports, `export const MY_WORDS = spoken({ ... } as const)`. Read a message while
 * drawing; a list of them that is made while a module loads is made in `reread(() => ...)`, else it does not follow (a test tells both).
 * Sentences and names that engine, model and kitchen make are shown through `retold`, the names of surfaces through `engine-words`.
 */

/** How the page speaks. */
export interface Manner {
  readonly words: TradeWords;
  readonly unit: LengthUnit;
}

let manner: Manner = { words: 'us', unit: 'mm' };

/** What lengths are shown in just now. */
export const unitNow = (): LengthUnit => manner.unit;

/** The language tag of the words chosen, for lists, numbers and dates. */
export const localeNow = (): 'en-US' | 'en-GB' => (manner.words === 'uk' ? 'en-GB' : 'en-US');

/** Another number after each change. */
export const choiceNow = (): number => changes;
let changes = 0;

/** Changes how the page speaks; what reads messages must be drawn again. Some two thousand messages are turned in a few milliseconds. */
export function setManner(next: Manner): void {
  if (next.words === manner.words && next.unit === manner.unit) return;
  manner = next;
  changes++;
  retoldBefore.clear();
  for (const refill of refills) refill();
}

type Leaf = string | number | boolean | null | undefined;
// biome-ignore lint/suspicious/noExplicitAny: a message takes what it is made of.
type Say = (...args: any[]) => unknown;
type Messages = Leaf | Say | { readonly [key: string]: Messages } | readonly Messages[];

/** Writes the messages of one object anew. */
const refills: (() => void)[] = [];
/** What `spoken` has made, so that nothing is wrapped twice. */
const made = new WeakSet<object>();

/**
 * Messages that speak as is chosen: strings are turned when the choice changes, what functions return when they are called. The texts a
 * function is given stay as they are in what it says: they are names, or turned already. Single words in small letters are ids.
 */
export function spoken<const T>(messages: T): T {
  return wrapped(messages as Messages) as T;
}

/** Whether these messages follow the choice. */
export const isSpoken = (messages: unknown): boolean =>
  (typeof messages === 'object' || typeof messages === 'function') && messages !== null && made.has(messages);

function wrapped(messages: Messages): Messages {
  if (typeof messages === 'function') return made.has(messages) ? messages : speaking(messages);
  if (typeof messages !== 'object' || messages === null || made.has(messages)) return messages;
  const source = messages as Record<string, Messages>;
  const copy = (Array.isArray(messages) ? [] : {}) as Record<string, Messages>;
  const texts: string[] = [];
  for (const [key, value] of Object.entries(source)) {
    copy[key] = wrapped(value);
    // What a choice is called by inside stays.
    if (typeof value === 'string' && key !== 'id') texts.push(key);
  }
  const refill = () => {
    for (const key of texts) copy[key] = turn(source[key] as string, []);
  };
  refill();
  refills.push(refill);
  made.add(copy);
  return copy as Messages;
}

function speaking(say: Say): Say {
  const speak: Say = (...args) => {
    const said = say(...args);
    return isPlain() ? said : turnAll(said, keptOf(args));
  };
  made.add(speak);
  return speak;
}

/** A list or record made of messages while a module loads, kept as it is chosen: made again, in place, when the choice changes. */
export function reread<const T extends object>(make: () => T): T {
  const kept = make();
  refills.push(() => Object.assign(kept, make()));
  return kept;
}

const isPlain = (): boolean => manner.words === 'us' && manner.unit === 'mm';

function turnAll(said: unknown, kept: readonly string[]): unknown {
  if (typeof said === 'string') return turn(said, kept);
  if (Array.isArray(said)) return said.map((one) => turnAll(one, kept));
  if (typeof said !== 'object' || said === null || Object.getPrototypeOf(said) !== Object.prototype) return said;
  return Object.fromEntries(
    Object.entries(said).map(([key, value]) => [
      key,
      typeof value === 'string' && ID.test(value) ? value : turnAll(value, kept),
    ]),
  );
}

const turn = (text: string, kept: readonly string[]): string =>
  isPlain() && !text.includes('lb/')
    ? text
    : turned(text, kept, (part) => inTradeWords(inUnit(part, manner.unit), manner.words));

/** A text of the program's own, all of it, as the page speaks. */
export const toldNow = (text: string): string => turn(text, []);

/** The texts among what a message is made of that turning would change. */
function keptOf(args: readonly unknown[]): readonly string[] {
  const kept: string[] = [];
  const look = (value: unknown, depth: number) => {
    if (typeof value === 'string') {
      if (!ID.test(value) && isTurnable(value)) kept.push(value);
    } else if (typeof value === 'object' && value !== null && depth < 2) {
      for (const one of Object.values(value)) look(one, depth + 1);
    }
  };
  for (const arg of args) look(arg, 0);
  return kept;
}

const ID = /^[a-z]+(?:-[a-z]+)*$/;
const isTurnable = (text: string): boolean => hasUsWord(text) || /\d [a-z]|\d L\b/.test(text);

/** Names that people or suppliers gave, by where they come from. */
const names = new Map<string, readonly string[]>();

/** Names that stay as they are in whatever is told; of each `of` the last ones given. */
export function keepNames(of: string, given: Iterable<string>): void {
  const kept = [...new Set(given)].filter(isTurnable);
  if (kept.length === 0 && !names.get(of)?.length) return;
  names.set(of, kept);
  retoldBefore.clear();
}

const retoldBefore = new Map<string, string>();
const MOST_KEPT = 4000;

/** A text of engine, model or kitchen as the page speaks; names in it, and what stands in quotes, stay. */
export function retold(text: string): string {
  if (isPlain()) return turn(text, []);
  const before = retoldBefore.get(text);
  if (before !== undefined) return before;
  const said = isTurnable(text)
    ? turn(
        text,
        [...names.values()].flat().filter((name) => text.includes(name)),
      )
    : text;
  if (retoldBefore.size >= MOST_KEPT) retoldBefore.clear();
  retoldBefore.set(text, said);
  return said;
}
