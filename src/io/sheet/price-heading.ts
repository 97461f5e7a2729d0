import { plainPrice, type ReadWords, readPriceWords } from './price-words';

/** Words for a price one pays; where several columns have one, the word that stands first counts: what customers pay before what a shop pays. */
const PRICE_WORDS = (
  'price listprice rrp retailprice recommendedretailprice recommendedprice msrp srp sellingprice salesprice unitprice cost rate preis uvp ' +
  'listenpreis verkaufspreis vk vkpreis bruttopreis nettopreis einzelpreis richtpreis katalogpreis endpreis prix prixpublic prixconseille ' +
  'prixdevente prixcatalogue prixunitaire tarif precio pvp preciodeventa preciodelista preciounitario tarifa prezzo prezzodilistino listino ' +
  'prezzodivendita prezzoalpubblico prezzounitario coste costo'
).split(' ');

const PURCHASE_WORDS =
  'tradeprice purchaseprice buyingprice costprice einkaufspreis ek ekpreis hek prixdachat preciodecompra preciodecoste prezzodiacquisto'.split(
    ' ',
  );

/** What stands in one word in German: "Quadratmeterpreis". */
const JOINED: readonly (readonly [RegExp, string])[] = [
  [/\b(?:quadratmeter|qm|m2)-?preis\b/g, 'preis je m2'],
  [/\b(?:laufmeter|meter|lfm)-?preis\b/g, 'preis je m'],
  [/\bst(?:u|ue)ck-?preis\b/g, 'preis je stuck'],
  [/\b(?:paket|packungs?|ve)-?preis\b/g, 'preis je packung'],
  [/\b(?:platten?|tafel)-?preis\b/g, 'preis je platte'],
];

/** Most headings and cells are looked at no longer than that. */
const LOOKS_LIKE_ONE = /pr[eiz]|tarif|cost|listino|rate|\b(?:rrp|uvp|pvp|m?srp|vk|h?ek)|[$€£]|\b(?:eur|usd|gbp|chf)\b/i;

/** What a heading of prices says. */
export interface PriceHeading extends ReadWords {
  /** Less is better. */
  readonly rank: number;
  /** It names what a shop pays, not its customers. */
  readonly isPurchase: boolean;
}

/** Null for headings of anything else. "Preis €/m²", "Price (USD/ft2)", "Prix TTC au m²", "EK netto", "€/m²". */
export function priceHeading(heading: string): PriceHeading | null {
  if (!LOOKS_LIKE_ONE.test(heading)) return null;
  const plain = JOINED.reduce((text, [words, apart]) => text.replace(words, apart), plainPrice(heading));
  const read = readPriceWords(plain);
  // A year, and the signs between words, say nothing.
  const key = read.rest.filter((word) => !/^(?:20\d\d|[^a-z0-9])$/.test(word)).join('');
  const { currency, per } = read.said;
  const rank = key === '' && currency && per ? PRICE_WORDS.length : PRICE_WORDS.indexOf(key);
  if (rank >= 0) return { ...read, rank, isPurchase: false };
  const purchase = PURCHASE_WORDS.indexOf(key);
  return purchase < 0 ? null : { ...read, rank: PRICE_WORDS.length + 1 + purchase, isPurchase: true };
}
