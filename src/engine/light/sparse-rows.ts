import type { SparseRows } from './types';

/** Rows as the kernel takes them: entries of 0 are left out. */
export function sparseRowsOf(rows: readonly ArrayLike<number>[]): SparseRows {
  const start = new Uint32Array(rows.length + 1);
  rows.forEach((row, i) => {
    let filled = 0;
    for (let k = 0; k < row.length; k++) if (row[k] !== 0) filled++;
    start[i + 1] = start[i]! + filled;
  });
  const column = new Uint32Array(start[rows.length]!);
  const value = new Float32Array(column.length);
  let at = 0;
  for (const row of rows) {
    for (let k = 0; k < row.length; k++) {
      if (row[k] === 0) continue;
      column[at] = k;
      value[at++] = row[k]!;
    }
  }
  return { count: rows.length, start, column, value };
}
