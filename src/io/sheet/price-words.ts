import type { PriceUnit } from '../../model/price';

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
  [
    { per: 'm2' },
    String.raw`m ?\^? ?2|qm|mq|sq ?m|square met(?:er|re)s?|quadratmetern?|metres? carres?|metros? cuadrados?|metr[oi] quadrat[oi]`,
  ],
  [
    { per: 'ft2' },
    String.raw`ft ?\^? ?2|sq ?ft|s ?f|square (?:foot|feet)|quadratfuss|pieds? carres?|pies? cuadrados?|pied[ei] quadrat[oi]`,
  ],
  [{ per: 'ft2', alone: true }, 'psf'],
  [
    { per: 'm' },
    'lfd ?m|lfm|lfdm|lm|ml|m|(?:linear|running) met(?:er|re)s?|laufmetern?|laufende[nr]? meter|metres? lineaires?|metros? lineal(?:es)?|' +
      'metr[oi] linear[ei]|met(?:er|re)s?|metros?|metri',
  ],
  [{ per: 'ft' }, 'lin ?ft|lnft|lf|(?:linear|lineal|running) (?:foot|feet)|ft|foot|feet'],
  [{ per: 'L' }, 'l|lt|ltr|lit(?:er|re)s?|litros?|litri'],
  [{ per: 'gal' }, '(?:us ?)?gal(?:l?ons?|ones)?'],
  [{ per: 'kg' }, 'kg|kilos?|kilogram(?:m|me|mo|o)?s?'],
  [{ per: 'piece', alone: true }, 'each|ea|cadauno|cad'],
  [
    { per: 'piece' },
    'pcs?|pce|pieces?|stk|stck|stucke?|stuecke?|st|piezas?|pza|pz|pezz[oi]|tiles?|fliesen?|carreaux?|baldosas?',
  ],
  [
    { per: 'pack' },
    'packs?|pkgs?|packages?|packung(?:en)?|packe?te?|pakete?|pkt|ve|box(?:es)?|cartons?|ctn|kartons?|boites?|colis|paquetes?|cajas?|' +
      'confezion[ei]|conf|scatol[ae]|gebinde',
  ],
  [{ per: 'slab' }, 'slabs?|platten?|tafeln?|tranches?|tablas?|lastr[ae]'],
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

const TOKENS = WORDS.map(([meaning, words]) => ({
  meaning,
  // A word ends where no letter follows; a sign ends by itself.
  pattern: new RegExp(`(?:${words.replaceAll(' ', ' ?')})(?:(?<![a-z0-9])|(?![a-z0-9]))`, 'y'),
}));

/** Nothing longer is a price or a heading of one. */
const MOST_LETTERS = 100;

/** Lower case, without accents, points of abbreviations and double blanks; ² is 2. */
export const plainPrice = (text: string): string =>
  text
    .slice(0, MOST_LETTERS)
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replaceAll('ß', 'ss')
    .replace(/(?<=[a-z])\.(?=\s|[a-z]|\/|\)|$)/g, ' ')
    .replace(/[\s_]+/g, ' ')
    .trim();

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
