import type { PartOfSheet } from './merge-tables';
import type { SheetColumn } from './types';

/** Colors in numbers hold for the light of their own table only. */
const COLOR_IN_NUMBERS = /^(lab|lch|xyz)_/;

/**
 * Tables that hold the same samples, by their codes and in the same order, as one: a file may give colors in one table and spectra in
 * the next, or the same under several measurement conditions. The first goes before the others where two give the same. Null where
 * they do not hold the same samples. `isAlike`: all say the same of light and observer.
 */
export function joinTables(parts: readonly PartOfSheet[], isAlike: boolean): PartOfSheet | null {
  const [first, ...others] = parts;
  const codes = parts.map(codesOf);
  if (!first || others.length === 0 || codes.some((one) => one === null || !isSame(one, codes[0]!))) return null;
  const columns: SheetColumn[] = [...first.columns];
  const from: { readonly part: number; readonly column: number }[] = first.columns.map((_, column) => ({
    part: 0,
    column,
  }));
  others.forEach((part, i) => {
    for (const [column, named] of part.columns.entries()) {
      const { field, heading } = named;
      const isThere = columns.some((one) => (field ? one.field === field : one.heading === heading));
      if (isThere || (!isAlike && field && COLOR_IN_NUMBERS.test(field))) continue;
      columns.push(named);
      from.push({ part: i + 1, column });
    }
  });
  const rows = first.rows.map(({ line }, i) => ({
    row: i + 1,
    line,
    cells: from.map(({ part, column }) => parts[part]!.rows[i]!.cells[column]!),
  }));
  return { columns, rows };
}

/** The codes of a table; null where it has none, or one twice. */
function codesOf({ columns, rows }: PartOfSheet): readonly string[] | null {
  const at = columns.findIndex(({ field }) => field === 'code');
  const codes = rows.map(({ cells }) => cells[at] ?? '');
  return at >= 0 && rows.length > 0 && !codes.includes('') && new Set(codes).size === codes.length ? codes : null;
}

const isSame = (some: readonly string[], others: readonly string[]): boolean =>
  some.length === others.length && some.every((code, i) => code === others[i]);
