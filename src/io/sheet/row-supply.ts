import type { Problem } from '../../engine/result';
import type { Supply } from '../../model/project';
import { SHEEN_GU, type SheenId } from '../../model/sheens';
import { isBlank, numberInCell } from './cell-number';
import { plainWords } from './plain-words';
import { quoted, sheetProblem } from './sheet-problem';

// What words and signs of the trade mean. A cell that is not understood is null and told; it never refuses a row.

const BAND_WORDS: readonly (readonly [NonNullable<Supply['price_band']>, RegExp])[] = [
  [
    '$',
    /^(?:[$€£]|1|i|low|cheap|budget|economy|entry|niedrig|gunstig|guenstig|bas|economique|bajo|economico|basso|basic)$/,
  ],
  ['$$', /^(?:\${2}|€{2}|£{2}|2|ii|mid|middle|medium|standard|mittel|moyen|medio|media)$/],
  [
    '$$$',
    /^(?:\${3}|€{3}|£{3}|3|iii|high|premium|luxury|expensive|hoch|teuer|haut|eleve|cher|alto|caro|lujo|lusso|luxe)$/,
  ],
];

/** "$$", "2", "mid"; null for prices and other words. */
export const bandInCell = (cell: string): Supply['price_band'] | null =>
  BAND_WORDS.find(([, words]) => words.test(plainWords(cell).replace(/\s/g, '')))?.[0] ?? null;

const WEEKS: readonly (readonly [RegExp, number])[] = [
  [/\b(?:d|days?|tage?n?|jours?|dias?|giorn[oi]|workingdays?|werktage?|wd)\b/, 1 / 7],
  [/\b(?:w|wks?|weeks?|wochen?|kw|semaines?|sem|semanas?|settiman[ae])\b/, 1],
  [/\b(?:m|months?|monate?n?|mois|mes|meses|mes[ei])\b/, 52 / 12],
];

/** How many weeks the unit of time named in words is; null where they name none. */
export const weeksOfUnit = (words: string): number | null =>
  WEEKS.find(([pattern]) => pattern.test(plainWords(words.replace(/_/g, ' '))))?.[1] ?? null;

/** Weeks in "4 weeks", "2-3 Wochen" (the longer), "10 days", "in stock" (0); a bare number is in the unit of the heading, else weeks. */
export function weeksInCell(cell: string, heading: string, comma: boolean): number | null {
  const words = plainWords(cell.replace(/,(?=\d)/g, comma ? '.' : ',').replace(/(\d)\.(\d)/g, '$1point$2'));
  if (/^(?:in )?stock$|^auf lager$|^en stock$|^immediate|^sofort/.test(words)) return 0;
  const found =
    /^(?:(?:ca|about|approx|max|up to|bis)?\s*)(?:(\d+(?:point\d+)?)\s*(?:to|bis|a)?\s+)?(\d+(?:point\d+)?)\s*([a-z]*(?: [a-z]+)?)$/.exec(
      words,
    );
  if (!found) return null;
  const number = Number(found[2]!.replace('point', '.'));
  const unit = found[3] === '' ? (weeksOfUnit(heading) ?? 1) : weeksOfUnit(found[3]!);
  return unit === null || number * unit > 200 ? null : Number((number * unit).toFixed(2));
}

/** More is the number of an article (our judgment). */
const MOST_IN_PACK = 1_000_000;

/** The number of a pack: "12", "12 pcs", "box of 1.2 m2". */
export function packInCell(cell: string, comma: boolean): number | null {
  const digits = /(?<![\d.,])\d+(?:[.,]\d+)?/.exec(cell)?.[0];
  const number = digits === undefined ? Number.NaN : numberInCell(digits, comma);
  return number > 0 && number <= MOST_IN_PACK ? number : null;
}

const SHEEN_WORDS: readonly (readonly [SheenId, RegExp])[] = [
  [
    'semi-gloss',
    /\b(?:semi ?gloss|semi ?gloss[iy]|halbglanz\w*|seidenglanz\w*|semi ?brillant\w*|semi ?brillo|semi ?lucid[oa])\b/,
  ],
  ['low-sheen', /\b(?:low sheen|eggshell|velvet|velours)\b/],
  ['satin', /\b(?:satin\w*|silk\w*|seidenmatt|pearl|saten\w*|seta)\b/],
  [
    'gloss',
    /\b(?:gloss\w*|high gloss|polished|poliert\w*|hochglanz\w*|glanzend\w*|glaenzend\w*|brillant\w*|poli|pulid[oa]|brillante|lucid[oa]|levigat[oa])\b/,
  ],
  ['matte', /\b(?:mat|matte?|honed|geschliffen|mate|opac[oa]|adouci|apomazado|stumpfmatt|smooth)\b/],
  ['flat', /\b(?:flat|dead ?matt?)\b/],
];

/** Gloss units that a word for a sheen stands for; null for other words. */
export function sheenInCell(cell: string): number | null {
  const found = SHEEN_WORDS.find(([, words]) => words.test(plainWords(cell)))?.[0];
  return found ? SHEEN_GU[found] : null;
}

/** A cell that was left out because it was not understood. */
export const leftOut = (what: string, cell: string, remedy: string, line: number): Problem =>
  sheetProblem(
    'cell-left-out',
    `${what}: ${quoted(cell)} was not understood and was left out.`,
    remedy,
    undefined,
    line,
  );

/** Words between ; , or |, each once. */
export const tagsInCell = (cell: string): readonly string[] => [
  ...new Set(
    cell
      .split(/[;,|]/)
      .map((tag) => tag.trim())
      .filter((tag) => !isBlank(tag)),
  ),
];
