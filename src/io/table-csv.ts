import Papa from 'papaparse';
import { guardedText } from './sheet/cell-text';

/**
 * A table as CSV: UTF-8 with a byte order mark where `mark` asks for it, CRLF, commas, decimal points; text that a spreadsheet would take
 * for a formula stands behind an apostrophe.
 */
export function tableCsv(
  headings: readonly string[],
  rows: readonly (readonly (string | number | null)[])[],
  mark = false,
): string {
  const written = rows.map((row) =>
    row.map((cell) => (cell === null ? '' : typeof cell === 'number' ? String(cell) : guardedText(cell))),
  );
  return `${mark ? '\uFEFF' : ''}${Papa.unparse([[...headings], ...written], { newline: '\r\n' })}\r\n`;
}
