/**
 * What became of a row of a batch: one byte per row. Every number of a row that is not `ok` is NaN (0 in whole-number
 * columns), so that nothing can be taken for a colour by mistake.
 */
export const ROW = {
  ok: 0,
  /** A number is missing, infinite, or too large to compute with. */
  notANumber: 1,
  /** No surface can have the colour. */
  outsideSolid: 2,
  /** What was given is no colour; its problem says why. */
  notMade: 3,
} as const;

/** Number of rows of a column of triples; a length that is no multiple of 3 is a bug in the caller and throws. */
export function rowsOfTriples(column: Float64Array): number {
  if (column.length % 3 !== 0) throw new RangeError(`${column.length} numbers are no triples`);
  return column.length / 3;
}
