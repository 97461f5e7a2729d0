import { EACH_WORDS, UNIT_WORDS } from '../unit-vocabulary';
import type { Measure } from './measures';

// Words of packs beside those of units; common practice of price lists, no source.

/** In these a number alone counts pieces: "box of 25", "set of 4". */
export const COUNTING_CONTAINERS = `${UNIT_WORDS.pack}|sets?|bundles?|bunde?|cases?|crates?`;

/** What things are sold in. */
export const CONTAINER_WORDS =
  `${COUNTING_CONTAINERS}|cans?|tins?|dosen?|eimer|buckets?|pails?|tubs?|drums?|pots?|bidons?|latas?|botes?|barattol[oi]|latt[ae]|` +
  'bags?|sacks?|sack|sacke|sacs?|sacos?|sacch[io]|rolls?|rollen?|rouleaux?|rollos?|rotol[oi]|lengths?|strips?|bars?|bottles?|cartridges?|tubes?|' +
  `boards?|panels?|sheets?|${UNIT_WORDS.slab}|pieces?|tiles?`;

/** Words between a pack and what is in it. */
export const JOINING_WORDS: readonly string[] =
  'of a an the per by with sold in and or about approx ca x us je pro zu mit von de da di du par por con al avec whole full nominal'.split(
    ' ',
  );

/** One of what the words name, in the measure. */
export interface UnitOfWords {
  readonly measure: Measure;
  readonly factor: number;
  readonly words: string;
}

/** Of words equally long the first counts: `ml` are millilitres here. */
export const PACK_UNITS: readonly UnitOfWords[] = [
  { measure: 'L', factor: 0.001, words: 'ml|millilit(?:er|re)s?' },
  { measure: 'gal', factor: 1 / 4, words: 'qts?|quarts?' },
  { measure: 'gal', factor: 1 / 8, words: 'pts?|pints?' },
  { measure: 'kg', factor: 0.001, words: 'g|gr|gram(?:m|me)?s?' },
  { measure: 'lb', factor: 1, words: 'lbs?|pounds?' },
  { measure: 'm', factor: 0.001, words: 'mm' },
  { measure: 'm', factor: 0.01, words: 'cm' },
  ...(['m2', 'ft2', 'm', 'ft', 'L', 'gal', 'kg', 'slab'] as const).map((measure) => ({
    measure,
    factor: 1,
    words: UNIT_WORDS[measure],
  })),
  { measure: 'piece', factor: 1, words: `${UNIT_WORDS.piece}|${EACH_WORDS}|units?` },
  { measure: 'piece', factor: 2, words: 'pairs?|paar' },
  { measure: 'sheet', factor: 1, words: 'sheets?|bogen|feuilles?|hojas?|fogli[o]?' },
];
