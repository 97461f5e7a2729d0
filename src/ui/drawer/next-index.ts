/** As many lines as one sees at once, about. */
const PAGE_LINES = 6;

/** The option to move to on a key, or null when the key moves nothing. */
export function nextIndex(key: string, at: number, count: number, columns: number): number | null {
  const inRange = (index: number) => Math.max(0, Math.min(count - 1, index));
  switch (key) {
    case 'ArrowRight':
      return inRange(at + 1);
    case 'ArrowLeft':
      return inRange(at - 1);
    case 'ArrowDown':
      return at + columns < count ? at + columns : at;
    case 'ArrowUp':
      return at - columns >= 0 ? at - columns : at;
    case 'PageDown':
      return Math.min(at + PAGE_LINES * columns, lastOfColumn(at, count, columns));
    case 'PageUp':
      return at - Math.min(PAGE_LINES, Math.floor(at / columns)) * columns;
    case 'Home':
      return 0;
    case 'End':
      return count - 1;
    default:
      return null;
  }
}

const lastOfColumn = (at: number, count: number, columns: number): number =>
  at + Math.floor((count - 1 - at) / columns) * columns;
