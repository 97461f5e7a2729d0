import type { SheetColumn, SheetRow } from './types';

/**
 * More cells are no file that can be read here (64 MB hold 16 million values at most), but one made to fill the memory: many
 * different columns for many rows.
 */
export const MOST_CELLS = 16e6;

/** A part of a sheet with columns of its own. */
export interface PartOfSheet {
  readonly columns: readonly SheetColumn[];
  readonly rows: readonly SheetRow[];
}

/**
 * One after the other with the columns of all: alike are those of one field, and of one heading where nothing is known. Null where that makes
 * more than `MOST_CELLS`.
 */
export function mergeTables(parts: readonly PartOfSheet[]): PartOfSheet | null {
  if (parts.length === 1) return parts[0]!;
  const columns: SheetColumn[] = [];
  const places = new Map<string, number>();
  const maps = parts.map((part) =>
    part.columns.map((column) => {
      const key = column.field ?? `?${column.heading}`;
      const at = places.get(key) ?? columns.push(column) - 1;
      places.set(key, at);
      return at;
    }),
  );
  if (columns.length * parts.reduce((sum, { rows }) => sum + rows.length, 0) > MOST_CELLS) return null;
  const rows = parts.flatMap((part, p) =>
    part.rows.map(({ row, line, cells }) => {
      const merged = columns.map(() => '');
      cells.forEach((cell, i) => {
        merged[maps[p]![i]!] = cell;
      });
      return { ...(row !== undefined && { row }), line, cells: merged };
    }),
  );
  return { columns, rows };
}
