import type { Problem } from '../../engine/result';
import { placeIn } from '../place-problem';

/** A problem or a notice of a file of finishes, with its place. */
export const sheetProblem = (code: string, text: string, remedy: string, file?: string, line?: number): Problem => ({
  code,
  text,
  at: placeIn(file, line),
  remedy,
});

/** A cell in a message: shortened, and without what would turn or break the line. */
export function quoted(cell: string): string {
  const plain = cell.replace(/[\p{C}\p{Z}]+/gu, ' ').trim();
  return `"${plain.length > 40 ? `${plain.slice(0, 37)}...` : plain}"`;
}

/** "3 rows", "1 row". */
export const counted = (count: number, one: string, many = `${one}s`): string => `${count} ${count === 1 ? one : many}`;

export const IF_RIGHT = 'Nothing to do if that is right.';
