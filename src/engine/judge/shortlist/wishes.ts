import type { FinishClass } from '../../finish/types';
import { surfacesPhrase } from '../surface-words';
import type { Candidate, HeldSurface, WishTold } from './types';
import type { Wish } from './wish';

/** Whether a wish is met; null where what is known of the finish does not say. */
export function isMet(wish: Wish, candidate: Candidate, around: readonly HeldSurface[]): boolean | null {
  switch (wish.kind) {
    case 'class':
      return candidate.finish.class === wish.class;
    case 'lrv':
      return candidate.lrv >= wish.from && candidate.lrv <= wish.to;
    case 'sheen':
      return candidate.finish.glossGu >= wish.from && candidate.finish.glossGu <= wish.to;
    case 'price':
      return candidate.priceBand === null ? null : wish.bands.includes(candidate.priceBand);
    case 'availability':
      return candidate.availability === null
        ? null
        : says(candidate.availability.toLowerCase(), wish.words.toLowerCase());
    case 'pattern':
      return candidate.pattern === wish.pattern;
    default: {
      const other = around.find(({ surface }) => surface === wish.surface);
      if (!other) return null;
      return wish.kind === 'no-lighter-than' ? candidate.lrv <= other.lrv : candidate.lrv >= other.lrv;
    }
  }
}

/** "Not in stock" does not say "in stock". */
function says(text: string, words: string): boolean {
  const at = text.indexOf(words);
  return at >= 0 && !text.slice(0, at).endsWith('not ');
}

/** Where the name of a class is short for what it is. */
const CLASS_WORDS: { readonly [C in FinishClass]?: string } = {
  engineered: 'engineered stone',
  glazed: 'glazed tile',
  vinyl: 'vinyl plank',
  glass: 'glass, painted behind',
};

/** Price bands in words: a sign would be that of one currency. */
const BANDS: Readonly<Record<string, string>> = { $: 'low', $$: 'middle', $$$: 'high' };

/** A wish in words: "light reflectance 60 to 80". */
export function wishWords(wish: Wish): string {
  switch (wish.kind) {
    case 'class':
      return CLASS_WORDS[wish.class] ?? wish.class;
    case 'lrv':
      return `light reflectance ${wish.from} to ${wish.to}`;
    case 'sheen':
      return `sheen ${wish.from} to ${wish.to} GU`;
    case 'price':
      return `a ${wish.bands.map((band) => BANDS[band] ?? band).join(' or ')} price`;
    case 'availability':
      return `"${wish.words}"`;
    case 'pattern':
      return `a ${wish.pattern} pattern`;
    case 'no-lighter-than':
      return `no lighter than ${surfacesPhrase([wish.surface]).text}`;
    case 'no-darker-than':
      return `no darker than ${surfacesPhrase([wish.surface]).text}`;
  }
}

/** Where a wish puts a finish: met, then what nobody knows, then missed. Our judgment: an unknown may still turn out met. */
export const wishLevel = (isMet: boolean | null): number => (isMet === null ? 1 : isMet ? 0 : 2);

/** What a finish makes of the wishes, in words: "Meets 1 of 3 wishes: wood. Misses: a low price. Not known: a quiet pattern." */
export function wishSentence(told: readonly WishTold[]): string {
  const listed = (is: boolean | null): string =>
    told.flatMap(({ wish, is_met }) => (is_met === is ? [wish] : [])).join('; ');
  const [met, missed, unknown] = [listed(true), listed(false), listed(null)];
  if (told.length === 1) {
    if (unknown) return `Not known whether it meets your wish: ${unknown}.`;
    return met ? `Meets your wish: ${met}.` : `Misses your wish: ${missed}.`;
  }
  const count = told.filter(({ is_met }) => is_met).length;
  const meets =
    count === 0
      ? `Meets none of ${told.length} wishes.`
      : `Meets ${count === told.length ? 'all' : `${count} of`} ${told.length} wishes: ${met}.`;
  return `${meets}${missed && ` Misses: ${missed}.`}${unknown && ` Not known: ${unknown}.`}`;
}
