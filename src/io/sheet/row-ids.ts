import { isEmpty } from '../../model/empty-surface';
import type { SheetRow } from './types';

/** Longest id; codes of the trade are far shorter. */
const MOST_LETTERS = 60;

/** Ids of the finishes of one sheet, each once, and the codes that were seen. */
export interface RowIds {
  readonly taken: Set<string>;
  /** The number to try next behind an id that is taken: without it many alike would each try all before them. */
  readonly next: Map<string, number>;
  /** Line of the row that has a code. */
  readonly lines: Map<string, number>;
}

export const noIds = (): RowIds => ({ taken: new Set(), next: new Map(), lines: new Map() });

/** An id from a code: letters and digits of any script, . _ + / -; '' where nothing is left. */
export function idOfCode(code: string): string {
  const id = code
    .normalize('NFC')
    .replace(/[^\p{L}\p{N}._+/-]+/gu, '-')
    .replace(/^[-+.]+|-+$/g, '')
    .slice(0, MOST_LETTERS);
  return isEmpty({ finish: id }) ? `${id}-1` : id;
}

/** The id itself where it is free, else with a number after it. It is taken then. */
export function takeId({ taken, next }: RowIds, wanted: string): string {
  let id = wanted;
  let number = next.get(wanted) ?? 2;
  for (; taken.has(id); number++) id = `${wanted}-${number}`;
  if (id !== wanted) next.set(wanted, number);
  taken.add(id);
  return id;
}

/** The id of a row without a code. */
export const numberedId = ({ row }: SheetRow, index: number): string => `ROW-${row ?? index + 1}`;
