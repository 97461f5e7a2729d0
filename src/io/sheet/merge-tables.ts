import type { SheetColumn, SheetRow } from './types';

/** A part of a sheet with columns of its own. */
export interface PartOfSheet {
  readonly columns: readonly SheetColumn[];
  readonly rows: readonly SheetRow[];
}

/** One after the other with the columns of all: alike are those of one field, and of one heading where nothing is known. */
export function mergeTables(parts: readonly PartOfSheet[]): PartOfSheet {
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
