import type { FinishClass, Provenance } from '../../engine/finish/types';
import type { FinishPattern, Variation } from '../../engine/pattern/types';
import type { Problem } from '../../engine/result';
import { mostGloss, THICKNESS_MM } from '../../model/check-finish';
import type { Finish, Supply } from '../../model/project';
import { availabilityInCell } from './availability-words';
import { isBlank, numberInCell } from './cell-number';
import { plainText } from './cell-text';
import { cellOf, headingOf } from './columns';
import { plainWords } from './plain-words';
import { priceOf } from './row-price';
import type { RowReading } from './row-reading';
import { lengthInCell, sizeInCell, thicknessInCell } from './row-sizes';
import { leftOut, packInCell, sheenInCell, tagsInCell, weeksInCell } from './row-supply';
import { sheetProblem } from './sheet-problem';
import type { Field } from './types';

/** Letters that a name, a note and any other text may have; the rest is cut off and told. */
const MOST_LETTERS = { name: 200, note: 2000, tags: 500, other: 120 };

/** Cells that mean something by single words are short; longer ones are not looked at. */
const MOST_OF_WORD = 80;

const MOST_TAGS = 20;

/** The text of a field as it is kept: one line, nothing unseen, never a formula; '' where it is empty. */
export function textOf({ columns, row, notices }: RowReading, field: Field): string {
  const cell = cellOf(columns, row, field);
  if (cell === '') return '';
  const { text, isFormula, isCleaned } = plainText(cell);
  const heading = headingOf(columns, field);
  const tell = (code: string, words: string, remedy: string) =>
    notices.push(sheetProblem(code, words, remedy, undefined, row.line));
  if (isFormula && !isBlank(cell)) {
    tell('formula-as-text', `${heading} begins as a formula does; it was kept as plain text.`, 'Check the cell.');
  }
  if (isCleaned)
    tell('unseen-characters', `${heading} had characters that cannot be seen; they were taken out.`, 'Check the cell.');
  const most = MOST_LETTERS[field === 'name' || field === 'note' || field === 'tags' ? field : 'other'];
  if (text.length <= most) return isBlank(text) ? '' : text;
  tell('text-cut', `${heading} has ${text.length} letters; ${most} were kept.`, 'Shorten it.');
  return [...text].slice(0, most).join('').trim();
}

/** What one needs to order it; undefined where the row says nothing of it. */
export function supplyOf(reading: RowReading, orderCode: string): Supply | undefined {
  const { columns, row, notices } = reading;
  const read = <T>(field: Field, what: string, remedy: string, of: (cell: string) => T | null | undefined) => {
    const cell = cellOf(columns, row, field);
    if (isBlank(cell)) return undefined;
    const value = cell.length > MOST_OF_WORD ? undefined : (of(cell) ?? undefined);
    if (value === undefined) notices.push(leftOut(what, cell, remedy, row.line));
    return value;
  };
  const supplier = textOf(reading, 'supplier');
  const unit = textOf(reading, 'unit');
  const availability = availabilityOf(reading);
  const pack = read('pack', 'Pack', 'Write a number.', (cell) => packInCell(cell, columns.comma));
  const weeks = read('lead_time_weeks', 'Lead time', 'Write it like "4 weeks" or "10 days".', (cell) =>
    weeksInCell(cell, headingOf(columns, 'lead_time_weeks'), columns.comma),
  );
  const supply: Supply = {
    ...(supplier && { supplier }),
    ...(orderCode && { code: orderCode }),
    ...(unit && { unit }),
    ...(pack !== undefined && { pack }),
    ...(weeks !== undefined && { lead_time_weeks: weeks }),
    ...priceOf(reading),
    ...(availability && { availability }),
  };
  return Object.keys(supply).length > 0 ? supply : undefined;
}

/** One plain word for what is understood, else the text as it stands. */
function availabilityOf(reading: RowReading): string {
  const { columns, row } = reading;
  const text = textOf(reading, 'availability');
  if (columns.isOurs || text === '' || text.length > MOST_OF_WORD) return text;
  return availabilityInCell(cellOf(columns, row, 'availability'), headingOf(columns, 'availability')) ?? text;
}

/** Sizes of piece and slab and the thickness of either, mm: that of its own column before the third number of a size. */
export function sizesOf({ columns, row, notices }: RowReading): Pick<Finish, 'piece_mm' | 'slab_mm' | 'thickness_mm'> {
  let third: number | null = null;
  const read = (first: Field, second: Field, what: string, [least, most]: readonly [number, number]) => {
    const [a, b] = [cellOf(columns, row, first), cellOf(columns, row, second)];
    if (isBlank(a) && isBlank(b)) return undefined;
    const single = () => [lengthInCell(a, headingOf(columns, first)), lengthInCell(b, headingOf(columns, second))];
    const isLong = Math.max(a.length, b.length) > MOST_OF_WORD;
    const size = isLong ? null : isBlank(b) ? sizeInCell(a, headingOf(columns, first)) : single();
    const [x, y, z] = size ?? [null, null];
    if (x && y && [x, y].every((mm) => mm >= least && mm <= most)) {
      third ??= z ?? null;
      return [x, y] as const;
    }
    const remedy = `Write it with its unit, like "300 x 600 mm" or "12 x 24 in", from ${least} to ${most} mm.`;
    notices.push(leftOut(what, [a, b].filter((cell) => !isBlank(cell)).join(' x '), remedy, row.line));
    return undefined;
  };
  const piece_mm = read('piece_width_mm', 'piece_length_mm', 'Size', [5, 5000]);
  const slab_mm = read('slab_length_mm', 'slab_width_mm', 'Slab', [500, 4000]);
  const cell = cellOf(columns, row, 'thickness_mm');
  const own =
    isBlank(cell) || cell.length > MOST_OF_WORD ? null : thicknessInCell(cell, headingOf(columns, 'thickness_mm'));
  const thickness_mm = isBlank(cell) ? third : own;
  const isThickness = thickness_mm !== null && thickness_mm >= THICKNESS_MM[0] && thickness_mm <= THICKNESS_MM[1];
  if (!isThickness && (thickness_mm !== null || !isBlank(cell))) {
    const remedy = `Write it with its unit, like "9 mm" or "3/8 in", from ${THICKNESS_MM[0]} to ${THICKNESS_MM[1]} mm.`;
    notices.push(leftOut('Thickness', isBlank(cell) ? `${thickness_mm} mm` : cell, remedy, row.line));
  }
  return { ...(piece_mm && { piece_mm }), ...(slab_mm && { slab_mm }), ...(isThickness && { thickness_mm }) };
}

/** "72 GU (60°)", "72 @ 60°". */
const withoutAngle = (cell: string): string =>
  cell.length > MOST_OF_WORD ? cell : cell.replace(/\s*(?:[(@]|at)\s*60\s*(?:°|º|deg\w*)\s*\)?\s*$/i, '');

/** "4 GU @ 85°", "20°: 45". */
const otherAngleIn = (cell: string): boolean => /(?<![\d.,])(?:20|45|75|85)\s*(?:°|º|deg)/i.test(cell);

/** ISO 2813: what black glass reads. */
const BLACK_GLASS_GU = 100;

const moreThanGlass = (gloss: number, line: number): Problem =>
  sheetProblem(
    'gloss-over-glass',
    `Its gloss is ${gloss}: more than black glass (100) mirrors, as clear glass with two faces and some glazes do.`,
    'Look whether it was read at 60°: at 20° a high gloss reads otherwise.',
    undefined,
    line,
  );

/** Gloss units of a row: a number, or a word for a sheen (told); null where it says none, a problem where it says nonsense. */
export function glossOf({ columns, row, notices }: RowReading, kind: FinishClass): number | null | Problem {
  const cell = cellOf(columns, row, 'gloss_60');
  if (isBlank(cell)) return null;
  const read = numberInCell(withoutAngle(cell), columns.comma);
  if (Number.isNaN(read) && cell.length <= MOST_OF_WORD && /\d/.test(cell) && otherAngleIn(cell)) {
    const words = `Gloss "${plainText(cell).text}" is of another angle than 60°; it was left out.`;
    notices.push(sheetProblem('gloss-other-angle', words, 'Give gloss units at 60°.', undefined, row.line));
    return null;
  }
  const most = mostGloss(kind);
  if (read >= 0 && read <= most) {
    if (kind !== 'metal' && read > BLACK_GLASS_GU) notices.push(moreThanGlass(read, row.line));
    return read;
  }
  if (!Number.isNaN(read)) {
    const words = `The gloss is ${read}, outside 0 to ${most}.`;
    const remedy = 'Give gloss units at 60° (ISO 2813); what mirrors more is a metal, or a mirror of one.';
    return sheetProblem('out-of-range', words, remedy, undefined, row.line);
  }
  const word = cell.length > MOST_OF_WORD ? null : sheenInCell(cell);
  if (word === null) {
    const words = `${headingOf(columns, 'gloss_60')}: "${plainText(cell).text.slice(0, 40)}" is neither a number nor a word for a sheen.`;
    return sheetProblem(
      'not-a-number',
      words,
      'Give gloss units at 60°, or flat, matte, satin, gloss.',
      undefined,
      row.line,
    );
  }
  const words = `"${plainText(cell).text}" was read as ${word} gloss units.`;
  notices.push(
    sheetProblem('gloss-from-word', words, 'Give gloss units at 60° if you have them.', undefined, row.line),
  );
  return word;
}

const PATTERNS: readonly (readonly [FinishPattern, RegExp])[] = [
  [{ kind: 'brushed' }, /\b(?:brushed|geburstet|gebuerstet|brosse|cepillad[oa]|spazzolat[oa])\b/],
];

/** A row tells one color, so there are no veins or flecks to draw: metals may be brushed, all else is plain. */
export function patternOf({ columns, row }: RowReading, kind: FinishClass): FinishPattern {
  const words = kind === 'metal' ? plainWords(cellOf(columns, row, 'texture')) : '';
  return PATTERNS.find(([, pattern]) => pattern.test(words))?.[0] ?? { kind: 'plain' };
}

/** "V2", "2", "low"; null where the row says none or nothing that is known. */
export function variationOf({ columns, row, notices }: RowReading): Variation | null {
  const cell = cellOf(columns, row, 'variation');
  if (isBlank(cell)) return null;
  const digit = /^\s*V?\s*([0-4])\s*$/i.exec(cell)?.[1];
  if (digit) return `V${digit}` as Variation;
  notices.push(leftOut('Variation', cell, 'Write V0 to V4 (ANSI A137.1).', row.line));
  return null;
}

const PROVENANCES: readonly (readonly [Provenance, RegExp])[] = [
  ['photo-with-card', /photo.*(?:card|karte|carte|charte|tarjeta|cartolina)/],
  ['photo', /photo|foto/],
  ['by-eye', /\beye\b|auge|oeil|\bojo\b|occhio|visual/],
  ['screen', /screen|monitor|bildschirm|ecran|pantalla|schermo/],
  ['measured', /measur|gemessen|messung|mesur|medid|misurat|spectro|spektro|instrument/],
  ['declared', /declar|angabe|angegeben|nominal|data sheet|datenblatt|fiche|ficha|scheda/],
];

/** How the color of a row is known; null where it does not say. */
export function provenanceOf({ columns, row, notices }: RowReading): Provenance | null {
  const cell = cellOf(columns, row, 'provenance');
  if (isBlank(cell)) return null;
  const words = plainWords(cell.slice(0, MOST_OF_WORD));
  const found = PROVENANCES.find(([, pattern]) => pattern.test(words))?.[0];
  if (found) return found;
  notices.push(
    leftOut('Provenance', cell, 'Write measured, declared, photo with card, photo, by eye or screen.', row.line),
  );
  return null;
}

/** Words to find it by, and its note with where it comes from. */
export function wordsOf(reading: RowReading): { readonly note?: string; readonly tags?: readonly string[] } {
  const tags = tagsInCell(textOf(reading, 'tags')).slice(0, MOST_TAGS);
  const note = textOf(reading, 'note');
  const source = textOf(reading, 'source');
  const whole = [note, ...(source ? [`${SOURCE}${source}`] : [])].filter((part) => part !== '').join(' ');
  return { ...(whole && { note: whole }), ...(tags.length > 0 && { tags }) };
}

/** How a note says where a finish comes from. */
export const SOURCE = 'Source: ';
