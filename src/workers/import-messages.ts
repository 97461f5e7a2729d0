import type { Problem } from '../engine/result';
import type { ImportProgress, SheetHead } from '../io/sheet/sheet-head';
import type { ImportChoices, ImportOutcome, RefusedRow } from '../io/sheet/types';
import type { Library } from '../model/library';

/** What the page asks of the import worker; one file for the life of a worker. */
export type ToImport =
  | { readonly kind: 'read'; readonly file: File }
  | { readonly kind: 'make'; readonly run: number; readonly choices: ImportChoices };

/** A large outcome comes in parts, so that the page takes each in without a stop; the last has the rest. */
export type FromImport =
  | { readonly kind: 'progress'; readonly progress: ImportProgress }
  | { readonly kind: 'sheet'; readonly head: SheetHead }
  | {
      readonly kind: 'library';
      /** Without what was refused. */
      readonly library: Library;
      readonly refused: readonly RefusedRow[];
      readonly notices: readonly Problem[];
    }
  | { readonly kind: 'failed'; readonly problem: Problem; readonly more: readonly Problem[] }
  | {
      readonly kind: 'part';
      readonly run: number;
      readonly part: Pick<ImportOutcome, 'kept' | 'refused'>;
    }
  | { readonly kind: 'made'; readonly run: number; readonly rest: Omit<ImportOutcome, 'kept' | 'refused'> };
