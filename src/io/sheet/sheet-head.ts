import type { Problem } from '../../engine/result';
import type { Library } from '../../model/library';
import type {
  ImportChoices,
  ImportOutcome,
  RefusedRow,
  Sheet,
  SheetColumn,
  SheetConditions,
  SheetFormat,
} from './types';

/** What is told of a sheet before anything is made of it; its rows stay where it was read. */
export interface SheetHead {
  readonly format: SheetFormat;
  readonly file: string;
  readonly columns: readonly (SheetColumn & { readonly example: string })[];
  /** Of the whole file, with those that cannot be read. */
  readonly rows: number;
  readonly said: SheetConditions;
  readonly notices: readonly Problem[];
}

/** How far the reading of a file is: its bytes, its rows, the colors of its rows; the share is null where it cannot be told. */
export interface ImportProgress {
  readonly stage: 'bytes' | 'rows' | 'colors';
  readonly share: number | null;
}

/** What is told while a file is read. */
export interface ImportEvents {
  readonly progress: (progress: ImportProgress) => void;
  readonly sheet: (head: SheetHead) => void;
  /** It is a kept library of this program: nothing is to be said about it. What was refused of it is not in it. */
  readonly library: (library: Library, refused: readonly RefusedRow[], notices: readonly Problem[]) => void;
  readonly failed: (problem: Problem, more?: readonly Problem[]) => void;
  /** Of the choices given last. */
  readonly outcome: (outcome: ImportOutcome) => void;
}

/** A file that is read elsewhere; the page goes on meanwhile. */
export interface ImportDesk {
  readonly make: (choices: ImportChoices) => void;
  /** Ends the reading, whatever it is at. */
  readonly close: () => void;
}

/** Rows looked through for an example of a column. */
const LOOKED_AT = 50;

export const headOf = ({ format, file, columns, rows, refused, said, notices }: Sheet): SheetHead => ({
  format,
  file,
  said,
  notices,
  rows: rows.length + refused.length,
  columns: columns.map((column, i) => ({
    ...column,
    example: rows.slice(0, LOOKED_AT).find(({ cells }) => cells[i]?.trim())?.cells[i] ?? '',
  })),
});

/** Whether bytes look like JSON: the first sign that is no blank and no byte order mark is a brace. */
export function looksLikeJson(bytes: Uint8Array): boolean {
  const start = new TextDecoder().decode(bytes.subarray(0, 200)).replace(/^\uFEFF/, '');
  return start.trimStart().startsWith('{');
}
