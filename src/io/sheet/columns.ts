import { numberInCell } from './cell-number';
import { type PriceColumn, priceColumn } from './price-column';
import type { Field, ImportChoices, Sheet, SheetColumn, SheetRow } from './types';

/** Where each field stands, with what the person who imports said of the columns, and how numbers are written. */
export interface Columns {
  readonly at: ReadonlyMap<Field, number>;
  /** Rising wavelengths. */
  readonly bands: readonly { readonly nm: number; readonly at: number }[];
  readonly headings: readonly SheetColumn[];
  readonly comma: boolean;
  /** Our own table: texts and numbers stand as we write them. */
  readonly isOurs: boolean;
  readonly price: PriceColumn;
}

/** Rows that are looked at for how prices are written. */
const LOOKED_AT = 500;

/** The columns of a sheet as chosen; of two for one field the chosen one counts, then the first. */
export function columnsOf({ columns, rows, decimalComma, format }: Sheet, { fields = {} }: ImportChoices): Columns {
  const at = new Map<Field, number>();
  const chosen = Object.entries(fields).filter(([column]) => columns[Number(column)]);
  for (const [column, field] of chosen) if (field && !at.has(field)) at.set(field, Number(column));
  for (const [i, { field }] of columns.entries()) {
    if (field && !(i in fields) && !at.has(field)) at.set(field, i);
  }
  const bands = [...at]
    .filter(([field]) => field.startsWith('nm:'))
    .map(([field, column]) => ({ nm: Number(field.slice(3)), at: column }))
    .sort((a, b) => a.nm - b.nm);
  const prices = at.get('price') ?? -1;
  return {
    at,
    bands,
    headings: columns,
    comma: decimalComma ?? format !== 'csv',
    isOurs: columns.some(({ heading }) => /^schema$/i.test(heading)),
    price: priceColumn(
      columns[prices]?.heading ?? '',
      prices < 0 ? [] : rows.slice(0, LOOKED_AT).map(({ cells }) => cells[prices] ?? ''),
    ),
  };
}

/** The cell of a field, '' where it is empty or there is no such column. */
export const cellOf = ({ at }: Columns, row: SheetRow, field: Field): string => row.cells[at.get(field) ?? -1] ?? '';

/** What a column is called, for messages. */
export const headingOf = ({ at, headings }: Columns, field: Field): string =>
  headings[at.get(field) ?? -1]?.heading || field;

/** The greatest number in some columns of all rows; -Infinity where there is none. */
export function greatestIn({ comma }: Columns, rows: readonly SheetRow[], columns: readonly number[]): number {
  let most = Number.NEGATIVE_INFINITY;
  for (const { cells } of rows) {
    for (const column of columns) {
      const value = numberInCell(cells[column] ?? '', comma);
      if (value > most) most = value;
    }
  }
  return most;
}
