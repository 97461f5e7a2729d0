import { type HeadingMeaning, headingKey, LEAST_WAVELENGTHS, meaningOfHeading } from './field-of-heading';
import { fieldOfPrices } from './price-column';
import type { Field, SheetColumn } from './types';

/** Three columns that make a color together; a letter alone means nothing. */
const TRIPLES: readonly (readonly [letters: readonly string[], fields: readonly Field[]])[] = [
  [
    ['r', 'g', 'b'],
    ['rgb_r', 'rgb_g', 'rgb_b'],
  ],
  [
    ['x', 'y', 'z'],
    ['xyz_x', 'xyz_y', 'xyz_z'],
  ],
  [
    ['l', 'a', 'b'],
    ['lab_l', 'lab_a', 'lab_b'],
  ],
  [
    ['l', 'c', 'h'],
    ['lch_l', 'lch_c', 'lch_h'],
  ],
];

/** What is found out by cells counts less than a name. */
const OTHERWISE = 999;

const HEX_CELL = /^#?[0-9a-f]{6}$/i;

/**
 * What each column was taken for by its heading, its neighbors and, where a column called "color" holds nothing but hex codes or one called
 * price nothing but bands, by its cells. Each field stands once: of several columns for it the best named one.
 */
export function nameColumns(headings: readonly string[], rows: readonly (readonly string[])[]): readonly SheetColumn[] {
  const triples = tripleFields(headings.map(headingKey));
  const meanings = headings.map((heading, i): HeadingMeaning | null => {
    const triple = triples.get(i);
    const meaning = triple ? { field: triple, rank: 0 } : meaningOfHeading(heading);
    if (meaning?.field === 'price' || meaning?.field === 'price_band') {
      const field = fieldOfPrices(meaning.field, heading, cellsOf(rows, i));
      return field === meaning.field ? meaning : { field, rank: OTHERWISE };
    }
    return meaning?.field === 'name' && isHexColumn(rows, i) ? { field: 'hex', rank: OTHERWISE } : meaning;
  });
  const spectral = meanings.filter((meaning) => meaning?.field.startsWith('nm:')).length;
  const best = new Map<Field, { readonly rank: number; readonly at: number }>();
  for (const [at, meaning] of meanings.entries()) {
    if (!meaning || (meaning.field.startsWith('nm:') && spectral < LEAST_WAVELENGTHS)) continue;
    const before = best.get(meaning.field);
    if (!before || meaning.rank < before.rank) best.set(meaning.field, { rank: meaning.rank, at });
  }
  const fields = new Map([...best].map(([field, { at }]) => [at, field]));
  // Of "No." and "Article" one is the code; the other is then the name, if there is none.
  const spare = best.has('name')
    ? -1
    : meanings.findIndex((meaning, at) => meaning?.field === 'code' && !fields.has(at));
  if (spare >= 0) fields.set(spare, 'name');
  return headings.map((heading, i) => ({ heading, field: fields.get(i) ?? null }));
}

/** Columns called by single letters, where all three of a triple follow each other. */
function tripleFields(keys: readonly string[]): ReadonlyMap<number, Field> {
  const found = new Map<number, Field>();
  for (const [letters, fields] of TRIPLES) {
    for (let at = 0; at + 2 < keys.length; at++) {
      if (!letters.every((letter, k) => keys[at + k] === letter) || found.has(at)) continue;
      fields.forEach((field, k) => {
        found.set(at + k, field);
      });
      break;
    }
  }
  return found;
}

const cellsOf = (rows: readonly (readonly string[])[], column: number): readonly string[] =>
  rows.map((row) => row[column] ?? '').filter((cell) => cell !== '');

function isHexColumn(rows: readonly (readonly string[])[], column: number): boolean {
  const cells = cellsOf(rows, column);
  return cells.length > 0 && cells.every((cell) => HEX_CELL.test(cell));
}
