import type { PriceUnit } from '../../model/price';
import { EACH_WORDS, plainUnits, UNIT_WORDS, wordsPattern } from '../../model/unit-vocabulary';

/*
 * Words and signs around prices in English, German, French, Spanish and Italian: currencies (ISO 4217), what a price is for, taxes. Common
 * practice of price lists, no source.
 */

/** What words beside a price say of it. */
export interface PriceSaid {
  readonly currency?: string;
  readonly per?: PriceUnit;
  /** The currency is a bare $, which several countries have. */
  readonly isBareDollar?: true;
  /** It says something of tax. */
  readonly isOnTax?: true;
}

/** `opens`: what a price is for follows ("/", "per"). `alone`: it is what a price is for without such a word before it ("each"). */
interface Meaning extends PriceSaid {
  readonly opens?: true;
  readonly alone?: true;
}

const CODES =
  'usd eur gbp chf cad aud nzd sek nok dkk isk pln czk huf ron bgn jpy cny inr zar brl mxn try ils aed sar sgd hkd krw thb uah rub';

/** Words in lower case without accents; a blank stands for any or none. */
const WORDS: readonly (readonly [meaning: Meaning, words: string])[] = [
  [{ currency: 'USD' }, String.raw`us ?\$|\$ ?us|us dollars?`],
  [{ currency: 'CAD' }, String.raw`(?:ca?|can) ?\$`],
  [{ currency: 'AUD' }, String.raw`au? ?\$`],
  [{ currency: 'NZD' }, String.raw`nz ?\$`],
  [{ currency: 'BRL' }, String.raw`r ?\$`],
  [{ currency: 'USD', isBareDollar: true }, String.raw`\$|dollars?`],
  [{ currency: 'EUR' }, '€|euros?'],
  [{ currency: 'GBP' }, '£|pounds?(?: sterling)?'],
  [{ currency: 'CHF' }, 's?fr|franken|francs? suisses?'],
  [{ currency: 'PLN' }, 'zł|zl'],
  [{ currency: 'CZK' }, 'kc'],
  [{ currency: 'INR' }, '₹'],
  [{ currency: 'TRY' }, '₺'],
  ...CODES.split(' ').map((code) => [{ currency: code.toUpperCase() }, code] as const),
  [{ per: 'm2' }, UNIT_WORDS.m2],
  [{ per: 'ft2' }, UNIT_WORDS.ft2],
  [{ per: 'ft2', alone: true }, 'psf'],
  [{ per: 'm' }, UNIT_WORDS.m],
  [{ per: 'ft' }, UNIT_WORDS.ft],
  [{ per: 'L' }, UNIT_WORDS.L],
  [{ per: 'gal' }, UNIT_WORDS.gal],
  [{ per: 'kg' }, UNIT_WORDS.kg],
  [{ per: 'piece', alone: true }, EACH_WORDS],
  [{ per: 'piece' }, UNIT_WORDS.piece],
  [{ per: 'pack' }, UNIT_WORDS.pack],
  [{ per: 'slab' }, UNIT_WORDS.slab],
  // What it is sold by: nothing more is said.
  [{ alone: true }, 'units?|einheit|unites?|unid(?:ad(?:es)?)?|uds?|unita|u'],
  [
    { isOnTax: true },
    String.raw`(?:(?:incl|including|inkl|inklusive|zzgl|exkl|excl|excluding|ex|inc|plus|\+|ohne|mit|hors|gesetzl|\d{1,2}(?:[.,]\d)? ?%) ?)*` +
      '(?:mwst|ust|vat|gst|sales tax|tax(?:es)?|tva|ttc|ht|iva)(?: (?:incl(?:uido|usa|use)?|inc|esclusa|excl(?:uido)?|comprise))?|' +
      'netto|brutto|net|gross|neto|bruto|lordo',
  ],
  [{ opens: true }, String.raw`\/|per|pro|je|par|por|al|au|a`],
  [{}, String.raw`[()[\]:;,.*']|alla|la|le|el|lo|il|un|una|une|the|in|der|die|das|ein|1|approx`],
];

const TOKENS = WORDS.map(([meaning, words]) => ({ meaning, pattern: wordsPattern(words) }));

/** Nothing longer is a price or a heading of one. */
const MOST_LETTERS = 100;

/** The words in lower case, without accents and signs that say nothing. */
export const plainPrice = (text: string): string => plainUnits(text.slice(0, MOST_LETTERS));

/** What is said, and the words that say nothing of it, in their order. */
export interface ReadWords {
  readonly said: PriceSaid;
  readonly rest: readonly string[];
  /** What the price is for is said by "/", "per" or the like, not by a unit alone. */
  readonly isOpened: boolean;
}

/** Reads words beside a price or of its heading, made plain before. Of two currencies or units the first counts. */
export function readPriceWords(plain: string): ReadWords {
  let said: PriceSaid = {};
  const rest: string[] = [];
  let isOpen = false;
  let isOpened = false;
  for (let at = 0; at < plain.length; ) {
    if (plain[at] === ' ') {
      at++;
      continue;
    }
    const found = tokenAt(plain, at);
    // A letter alone is a unit only where a word for it stands before.
    const isUnit = found?.meaning.per !== undefined && (found.length > 1 || isOpen || found.meaning.alone);
    if (found && (found.meaning.per === undefined || isUnit)) {
      const { opens, alone, ...meaning } = found.meaning;
      if (meaning.per && (isOpen || alone)) isOpened = true;
      said = { ...meaning, ...said };
      isOpen = opens ?? (isOpen && !meaning.per && !meaning.currency);
      at += found.length;
      continue;
    }
    const word = /[a-z0-9]+|./y;
    word.lastIndex = at;
    const [one] = word.exec(plain) ?? [plain[at]!];
    rest.push(one);
    isOpen = false;
    at += one.length;
  }
  return { said, rest, isOpened };
}

/** The longest word or sign that begins there. */
function tokenAt(plain: string, at: number): { readonly meaning: Meaning; readonly length: number } | null {
  let best: { meaning: Meaning; length: number } | null = null;
  for (const { meaning, pattern } of TOKENS) {
    pattern.lastIndex = at;
    const length = pattern.exec(plain)?.[0].trimEnd().length ?? 0;
    if (length > (best?.length ?? 0)) best = { meaning, length };
  }
  return best;
}
