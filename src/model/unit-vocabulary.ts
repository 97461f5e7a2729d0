import type { PriceUnit } from './price';

/*
 * What units and packs are called in English, German, French, Spanish and Italian, as parts of regular expressions over plain text (lower
 * case, no accents); a blank stands for any or none. Common practice of price lists, no source.
 */

export const UNIT_WORDS: { readonly [U in PriceUnit]: string } = {
  m2: String.raw`m ?\^? ?2|qm|mq|sq ?m|square met(?:er|re)s?|quadratmetern?|metres? carres?|metros? cuadrados?|metr[oi] quadrat[oi]`,
  ft2: String.raw`ft ?\^? ?2|sq ?ft|s ?f|square (?:foot|feet)|quadratfuss|pieds? carres?|pies? cuadrados?|pied[ei] quadrat[oi]`,
  m:
    'lfd ?m|lfm|lfdm|lm|ml|m|(?:linear|running) met(?:er|re)s?|laufmetern?|laufende[nr]? meter|metres? lineaires?|metros? lineal(?:es)?|' +
    'metr[oi] linear[ei]|met(?:er|re)s?|metros?|metri',
  ft: 'lin ?ft|lnft|lf|(?:linear|lineal|running) (?:foot|feet)|ft|foot|feet',
  L: 'l|lt|ltr|lit(?:er|re)s?|litros?|litri',
  gal: '(?:us ?)?gal(?:l?ons?|ones)?',
  kg: 'kg|kilos?|kilogram(?:m|me|mo|o)?s?',
  piece: 'pcs?|pce|pieces?|stk|stck|stucke?|stuecke?|st|piezas?|pza|pz|pezz[oi]|tiles?|fliesen?|carreaux?|baldosas?',
  pack:
    'packs?|pkgs?|packages?|packung(?:en)?|packe?te?|pakete?|pkt|ve|box(?:es)?|cartons?|ctn|kartons?|boites?|colis|paquetes?|cajas?|' +
    'confezion[ei]|conf|scatol[ae]|gebinde',
  slab: 'slabs?|platten?|tafeln?|tranches?|tablas?|lastr[ae]',
};

/** One of each and each alone. */
export const EACH_WORDS = 'each|ea|cadauno|cad';

/** A pattern that finds one of the words where it is set: a word ends where no letter follows; a sign ends by itself. */
export const wordsPattern = (words: string): RegExp =>
  new RegExp(`(?:${words.replaceAll(' ', ' ?')})(?:(?<![a-z0-9])|(?![a-z0-9]))`, 'y');

/** Lower case, without accents, points of abbreviations and double blanks; ² is 2. */
export const plainUnits = (text: string): string =>
  text
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replaceAll('ß', 'ss')
    .replace(/(?<=[a-z])\.(?=\s|[a-z]|\/|\)|$)/g, ' ')
    .replace(/[\s_]+/g, ' ')
    .trim();
