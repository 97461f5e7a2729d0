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
    case 'Home':
      return 0;
    case 'End':
      return count - 1;
    default:
      return null;
  }
}
