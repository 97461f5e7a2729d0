import type { ColorColumns } from './color-columns';
import { type HeadingMeaning, LEAST_WAVELENGTHS, meaningOfHeading } from './field-of-heading';
import { fieldOfPrices } from './price-column';
import type { Field, SheetColumn } from './types';

/** What is found out by cells counts less than a name. */
const OTHERWISE = 999;

const HEX_CELL = /^#?[0-9a-f]{6}$/i;

/**
 * What each column was taken for by its heading, its neighbors and, where a column called "color" holds nothing but hex codes or one called
 * price nothing but bands, by its cells. Each field stands once: of several columns for it the best named one.
 */
export function nameColumns(
  headings: readonly string[],
  rows: readonly (readonly string[])[],
  { fields: letters, left }: Pick<ColorColumns, 'fields' | 'left'>,
): readonly SheetColumn[] {
  const meanings = headings.map((heading, i): HeadingMeaning | null => {
    if (left.has(i)) return null;
    const triple = letters.get(i);
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

const cellsOf = (rows: readonly (readonly string[])[], column: number): readonly string[] =>
  rows.map((row) => row[column] ?? '').filter((cell) => cell !== '');

function isHexColumn(rows: readonly (readonly string[])[], column: number): boolean {
  const cells = cellsOf(rows, column);
  return cells.length > 0 && cells.every((cell) => HEX_CELL.test(cell));
}
