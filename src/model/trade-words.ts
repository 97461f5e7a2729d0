import { ENDINGS, PLURALS, SPELLINGS, TERMS } from './trade-word-tables';

/** Everything is written in US words; `inTradeWords` turns a text for the UK. */
export type TradeWords = 'us' | 'uk';

export const TRADE_WORDS: readonly TradeWords[] = ['us', 'uk'];

const UK_OF: ReadonlyMap<string, string> = new Map([
  ...TERMS.map(([us, uk]) => [us, uk] as const),
  ...TERMS.map(([us, uk]) => [`${us}s`, `${uk}s`] as const),
  ...SPELLINGS,
  ...Object.entries(PLURALS),
]);

const spaced = (term: string): string => term.replaceAll(' ', '[ -]');
const longestFirst = (words: Iterable<string>): string => [...words].sort((a, b) => b.length - a.length).join('|');

const TERM = longestFirst([...TERMS.map(([us]) => `${spaced(us)}s?`), ...Object.keys(PLURALS)]);
const SPELLING = longestFirst(SPELLINGS.map(([us]) => us));
/** What stands before or after a word of an id, a path, a file's name, a number or a code. */
const BEFORE = String.raw`(?<![\p{L}\p{N}_./\\#@:]|\p{N}-|--|cooker )`;
const AFTER = String.raw`(?![\p{L}\p{N}_]|[./\\@:=_][\p{L}\p{N}_]|-\p{N})`;
const US_WORD = new RegExp(`${BEFORE}(?:(an?) )?(?:(${TERM})|(${SPELLING})(${ENDINGS})?)${AFTER}`, 'giu');

/** Whether there is anything to turn in a text: a quick look. */
export const hasUsWord = (text: string): boolean => {
  US_WORD.lastIndex = 0;
  return US_WORD.test(text);
};

/**
 * A text written in US words, in the words of `words`. `kept`: parts of it that stay as they are, such as names people gave; so do codes,
 * paths, file names and what stands between double quotes. What is in UK words already stays.
 */
export function inTradeWords(text: string, words: TradeWords, kept: readonly string[] = []): string {
  if (words === 'us' || !hasUsWord(text)) return text;
  return turned(text, [...kept, ...(text.match(PATHS) ?? [])], (part) => part.replace(US_WORD, ukOf));
}

/** Turns what lies between the parts that are kept and what stands in quotes. Of parts that overlap the one that begins first is kept whole. */
export function turned(text: string, kept: readonly string[], turn: (part: string) => string): string {
  const spans = keptSpans(text, kept);
  if (spans.length === 0) return turn(text);
  let [out, at] = ['', 0];
  for (const [from, to] of spans) {
    if (from < at) continue;
    out += turn(text.slice(at, from)) + text.slice(from, to);
    at = to;
  }
  return out + turn(text.slice(at));
}

/** What is quoted, and the ids and calls that are listed after such heads. */
const QUOTED = /(?:Name one of|Known|Others|Usage): [^\n]*|"[^"\n]*"|\u201c[^\u201d\n]*\u201d/gu;
/** Paths and names of files, hyphens and all. */
const PATHS = /[\p{L}\p{N}_-]*\p{L}[\p{L}\p{N}_-]*(?:[./\\_][\p{L}\p{N}_-]+)+/gu;

function keptSpans(text: string, kept: readonly string[]): readonly (readonly [from: number, to: number])[] {
  const spans = [...text.matchAll(QUOTED)].map((found) => [found.index, found.index + found[0].length] as const);
  for (const part of kept) {
    if (part === '') continue;
    for (let at = text.indexOf(part); at >= 0; at = text.indexOf(part, at + part.length)) {
      if (isWhole(text, at, at + part.length)) spans.push([at, at + part.length]);
    }
  }
  return spans.sort((a, b) => a[0] - b[0] || b[1] - a[1]);
}

/** A name within another word is not that name. */
const isWhole = (text: string, from: number, to: number): boolean =>
  !(LETTER.test(text.charAt(from - 1)) && LETTER.test(text.charAt(from))) &&
  !(LETTER.test(text.charAt(to)) && LETTER.test(text.charAt(to - 1)));
const LETTER = /[\p{L}\p{N}]/u;

function ukOf(_found: string, article = '', term?: string, spelling?: string, ending = ''): string {
  const us = term ?? spelling! + ending;
  const plain = us.toLowerCase();
  const whole = UK_OF.get(plain.replaceAll('-', ' '));
  const hyphen = plain.includes('-') ? '-' : ' ';
  const uk = whole !== undefined ? whole.replaceAll(' ', hyphen) : `${UK_OF.get(spelling!.toLowerCase())}${ending}`;
  const cased = caseOf(us, uk);
  return article === '' ? cased : `${articleFor(article, us, cased)} ${cased}`;
}

/** Capitals as in the US word: all of it, its first letter, or none. */
function caseOf(us: string, uk: string): string {
  if (us.length > 1 && us === us.toUpperCase()) return uk.toUpperCase();
  return us.charAt(0) === us.charAt(0).toUpperCase() ? uk.charAt(0).toUpperCase() + uk.slice(1) : uk;
}

/** "an upper cabinet", "a wall unit". Articles change only where the first sound does. */
function articleFor(article: string, us: string, uk: string): string {
  const isVowel = (word: string) => /^[aeiou]/i.test(word);
  if (isVowel(us) === isVowel(uk)) return article;
  return `${article.charAt(0)}${isVowel(uk) ? 'n' : ''}`;
}
