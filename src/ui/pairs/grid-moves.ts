/** A square of the upper triangle: `row` before `column`. */
export interface Square {
  readonly row: number;
  readonly column: number;
}

/**
 * Where a key moves to in the upper triangle of `count` rows; null for other keys. At an edge the square stays, down from the
 * diagonal goes on along it, so that every square can be reached with any one pair of arrows.
 */
export function movedSquare({ row, column }: Square, key: string, count: number): Square | null {
  switch (key) {
    case 'ArrowRight':
      return { row, column: Math.min(count - 1, column + 1) };
    case 'ArrowLeft':
      return { row, column: Math.max(row + 1, column - 1) };
    case 'ArrowUp':
      return { row: Math.max(0, row - 1), column };
    case 'ArrowDown': {
      const down = Math.min(count - 2, row + 1);
      return { row: down, column: Math.max(down + 1, column) };
    }
    case 'Home':
      return { row, column: row + 1 };
    case 'End':
      return { row, column: count - 1 };
    default:
      return null;
  }
}
