import { ENDINGS, PLURALS, SAME, SPELLINGS, TERMS } from './trade-word-tables';

/*
 * A search finds the same whichever of the trade's words or spellings it is made in: each word of it is looked for in all its forms.
 */

/** Terms that mean the same, each in every form, without plurals. */
const FORMS: ReadonlyMap<string, readonly string[]> = groups([...TERMS, ...SAME]);

const US_STEMS = new Map(SPELLINGS);
const UK_STEMS = new Map(SPELLINGS.map(([us, uk]) => [uk, us]));

const longestFirst = (words: Iterable<string>): string => [...words].sort((a, b) => b.length - a.length).join('|');
const PLURAL_OF: ReadonlyMap<string, string> = new Map(
  Object.entries(PLURALS).flatMap(([us, uk]) => [
    [us, uk.replace(/s$/, '')],
    [uk, uk.replace(/s$/, '')],
  ]),
);
const TERM = `(?:${longestFirst(FORMS.keys())})s?(?![\\p{L}\\p{N}])`;
const TOKEN = new RegExp(`(?<![\\p{L}\\p{N}])(?:${TERM})|[^ ]+`, 'gu');
const SPELLED = new RegExp(`^(${longestFirst([...US_STEMS.keys(), ...UK_STEMS.keys()])})(${ENDINGS})?$`, 'u');

/** All in small letters, with words that hyphens join apart; those of codes stay. */
const plain = (text: string): string =>
  text
    .toLowerCase()
    .replace(/(?<=\p{L})-(?=\p{L})/gu, ' ')
    .replace(/\s+/g, ' ')
    .trim();

const tokensOf = (text: string): readonly string[] => plain(text).match(TOKEN) ?? [];

/** A word or term of a search in all its forms; itself where it has no other. */
function formsOf(token: string): readonly string[] {
  const single = PLURAL_OF.get(token) ?? token.replace(/s$/, '');
  const forms = FORMS.get(token) ?? FORMS.get(single);
  if (forms) return forms;
  const [, stem, ending = ''] = SPELLED.exec(token) ?? [];
  const other = stem === undefined ? undefined : (US_STEMS.get(stem) ?? UK_STEMS.get(stem));
  return other === undefined ? [token] : [`${stem}${ending}`, `${other}${ending}`];
}

/** What a search looks through: the text, and its words in the other forms, for one who has typed but half of one. */
export function searchable(text: string): string {
  const others = tokensOf(text).flatMap((token) => formsOf(token));
  return `${plain(text)} ${[...new Set(others)].join(' ')}`;
}

let last: { readonly search: string; readonly words: readonly (readonly string[])[] } | null = null;

/** Whether every word of a search is in a text that `searchable` made. An empty search finds all. */
export function isFound(search: string, text: string): boolean {
  if (last?.search !== search) last = { search, words: tokensOf(search).map(formsOf) };
  return last.words.every((forms) => forms.some((form) => text.includes(form)));
}

/** Groups of terms that share one are one group. */
function groups(pairs: readonly (readonly string[])[]): ReadonlyMap<string, readonly string[]> {
  const found = new Map<string, readonly string[]>();
  for (const pair of pairs) {
    const all = [...new Set(pair.flatMap((term) => found.get(term) ?? [term]))].sort();
    for (const term of all) found.set(term, all);
  }
  return found;
}
