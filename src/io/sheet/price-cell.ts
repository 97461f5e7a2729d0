import { isBlank } from './cell-number';
import { type PriceSaid, plainPrice, readPriceWords } from './price-words';

/** What a cell of a price says: an amount with what stands beside it, or that there is none to be had. */
export type PriceCell =
  | { readonly is: 'price'; readonly amount: number; readonly said: PriceSaid; readonly mark: DecimalMark }
  | { readonly is: 'none' };

/** The decimal mark of an amount; 'either' where what stands in it could part thousands as well; null where it has none. */
export type DecimalMark = '.' | ',' | 'either' | null;

/** How prices of a column are to be read where a cell leaves it open. */
export interface PriceStyle {
  /** Null: unknown, so that what could part thousands does. */
  readonly mark: '.' | ',' | null;
  /** Its heading or another column says the currency. */
  readonly hasCurrency: boolean;
}

/** Longer cells are no prices. */
const MOST_LETTERS = 60;

const NONE =
  /^(?:(?:price|prix|preis|precio|prezzo) ?)?(?:(?:up)?on (?:request|application|enquiry|inquiry)|p ?o ?[ar]|(?:auf )?anfrage|a ?a|nach aufwand|sur (?:demande|devis)|nous consulter|(?:a|bajo) (?:consultar|consulta|pedido)|consultar|(?:su|a) richiesta|tb[ad]|n ?\/? ?[ad]|k ?a|ask|call(?: for price)?|quote)$/;

const NUMBER = /(?:\d{1,3}(?:([ .,'\u2019])\d{3})(?:\1\d{3})*|\d+)(?:[.,]\d+)?(?!\d)|[.,]\d+(?!\d)/;

/** Null where it is not understood: words, ranges ("40-60"), "from 40", negative amounts. */
export function priceInCell(cell: string, { mark, hasCurrency }: PriceStyle): PriceCell | null {
  if (isBlank(cell)) return { is: 'none' };
  if (cell.length > MOST_LETTERS) return null;
  const plain = plainPrice(cell);
  if (NONE.test(plain)) return { is: 'none' };
  const found = NUMBER.exec(plain);
  if (!found) return null;
  const before = plain.slice(0, found.index);
  const after = plain.slice(found.index + found[0].length).replace(/^[.,]?[-\u2012-\u2015]{1,2}(?!\d)/, '');
  if (/[-\u2212\u2013]\s*$/.test(before) || /\d/.test(before)) return null;
  const amount = amountOf(found[0], found[1] ?? '', mark);
  if (!amount) return null;
  const read = readPriceWords(`${before} ${after}`.trim());
  if (read.rest.length > 0) return null;
  // "12 kg" under a price is a weight.
  if (read.said.per && !read.isOpened && !read.said.currency && !hasCurrency) return null;
  return { is: 'price', ...amount, said: read.said };
}

/** Digits with their marks, and the mark that parts their thousands if there is one. */
function amountOf(
  digits: string,
  parts: string,
  known: PriceStyle['mark'],
): { readonly amount: number; readonly mark: DecimalMark } | null {
  const marks = digits.replace(/\d/g, '');
  const last = marks.at(-1) ?? '';
  const isOpen = marks.length === 1 && parts !== '' && /[.,]/.test(parts);
  if (isOpen) {
    // "0.125" has no thousands.
    const isDecimal = digits.startsWith('0') || known === parts;
    const plain = isDecimal ? digits.replace(',', '.') : digits.replace(/[.,]/, '');
    return { amount: Number(plain), mark: isDecimal ? (parts as '.' | ',') : known === null ? 'either' : null };
  }
  const hasDecimals = last !== '' && (parts === '' || marks.length > digits.split(parts).length - 1);
  if (!hasDecimals) return { amount: Number(digits.replace(/\D/g, '')), mark: null };
  if (last === parts) return null;
  const at = digits.lastIndexOf(last);
  const amount = Number(`${digits.slice(0, at).replace(/\D/g, '') || '0'}.${digits.slice(at + 1)}`);
  return { amount, mark: last as '.' | ',' };
}
