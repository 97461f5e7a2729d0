import { HEADING_WORDS } from './heading-words';
import { priceHeading } from './price-heading';
import type { Field } from './types';

/** What a heading may stand for, and how good the word is: less is better. */
export interface HeadingMeaning {
  readonly field: Field;
  readonly rank: number;
}

const MEANINGS: ReadonlyMap<string, HeadingMeaning> = new Map(
  Object.entries(HEADING_WORDS).flatMap(([field, words]) =>
    (words ?? '').split(' ').map((word, rank) => [word, { field: field as Field, rank }] as const),
  ),
);

/** Fewer columns named by numbers are no spectrum. */
export const LEAST_WAVELENGTHS = 5;

/** Wavelengths of headings, nm. */
const NM = { from: 300, to: 900 };

/** Names that wavelengths have before them in files of instruments and of ours. */
const BEFORE_NM = /^(?:spd|r|refl|reflectance|reflexion|spec|spectral(?:nm|dec|pct)?|nm|wl|wavelength|lambda|w|s|q)?$/;

/** No heading is longer; longer ones are titles. */
const MOST_LETTERS = 60;

/** "Gloss 60° (GU)", "L* (D65/10°)", "L_SCI": light, observer and mirror reflection say nothing of which column it is. */
const CONDITIONS =
  /(?<![A-Z0-9])(?:(?:D\d\d|FL?\d\d?|TL8[34]|CWF)(?:\s*[/,_-]?\s*(?:2|10)(?![A-Z0-9])\s*°?)?|[ACE]\s*\/\s*(?:2|10)\s*°?|SCI|SCE|SPIN|SPEX)(?![A-Z0-9])|\bM[0123]\b/gi;

const IN_BRACKETS = /[([{][^)\]}]*[)\]}]/g;

/** A heading without the conditions that it states and without brackets. */
export const bareHeading = (heading: string): string => heading.replace(CONDITIONS, ' ').replace(IN_BRACKETS, ' ');

/** Angles of gloss meters (ISO 2813: 20, 60, 85; ASTM D523 and ISO 7668 know 45 and 75 as well). */
const GLOSS_ANGLES = /(?<![\d.,])(20|45|60|75|85)(?![\d.,]*\d)/g;

/** The angle at which the gloss of a heading or a cell was read, where it states another one than 60 degrees; else null. */
function otherGlossAngle(words: string): number | null {
  const angles = [...words.matchAll(GLOSS_ANGLES)].map(([, angle]) => Number(angle));
  return angles.includes(60) ? null : (angles[0] ?? null);
}

/** The field that a heading of a column names, if it is known. Case, accents, spaces and marks do not count. */
export function meaningOfHeading(heading: string): HeadingMeaning | null {
  if (heading.length > MOST_LETTERS) return null;
  const whole = wavelengthOfHeading(heading);
  if (whole !== null) return { field: `nm:${whole}`, rank: 0 };
  // Most cells that are looked at are values.
  if (/^[-+\d.,%\s]*$/.test(heading)) return null;
  if (/^\s*#\s*$/.test(heading)) return MEANINGS.get('no') ?? null;
  const bare = heading.replace(CONDITIONS, ' ');
  const nm = wavelengthOfHeading(bare);
  if (nm !== null) return { field: `nm:${nm}`, rank: 0 };
  const found =
    MEANINGS.get(headingKey(heading)) ??
    // Before conditions are taken out: square meters would be a measurement condition (M2).
    meaningOfPrice(heading) ??
    MEANINGS.get(headingKey(bare)) ??
    MEANINGS.get(headingKey(bare.replace(IN_BRACKETS, ' '))) ??
    null;
  return found?.field === 'gloss_60' && otherGlossAngle(heading) !== null ? null : found;
}

const meaningOfPrice = (heading: string): HeadingMeaning | null => {
  const found = priceHeading(heading);
  return found && { field: 'price', rank: found.rank };
};

/** Whether a heading means gloss at another angle than 60 degrees, "Gloss (20°)", "Glanz 85". */
export const isOtherGloss = (heading: string): boolean =>
  heading.length <= MOST_LETTERS &&
  otherGlossAngle(heading) !== null &&
  meaningOfHeading(heading.replace(GLOSS_ANGLES, ' '))?.field === 'gloss_60';

/** Lower case letters and digits only. */
export const headingKey = (heading: string): string =>
  heading
    .normalize('NFKD')
    .toLowerCase()
    .replaceAll('ß', 'ss')
    .replace(/[^a-z0-9]/g, '');

/** "400", "400 nm", "spd_400", "R_400nm", "nm400", "SPECTRAL_NM400.5" in nm; null for what names no wavelength. */
function wavelengthOfHeading(heading: string): number | null {
  const found = /^([^\d]*)(\d{3}(?:[.,]\d+)?)\s*\]?\)?\s*(?:nm)?\s*\]?\)?$/i.exec(heading.trim());
  if (!found || !BEFORE_NM.test(headingKey(found[1]!))) return null;
  const nm = Number(found[2]!.replace(',', '.'));
  return nm >= NM.from && nm <= NM.to ? nm : null;
}
