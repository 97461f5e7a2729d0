/** Are two pieces of plain data alike? Fields that are undefined count as absent. */
export function sameData(x: unknown, y: unknown): boolean {
  if (x === y) return true;
  if (typeof x !== 'object' || typeof y !== 'object' || x === null || y === null) return false;
  if (Array.isArray(x) || Array.isArray(y)) {
    return Array.isArray(x) && Array.isArray(y) && x.length === y.length && x.every((one, i) => sameData(one, y[i]));
  }
  const [a, b] = [x as Record<string, unknown>, y as Record<string, unknown>];
  for (const key in a) if (!sameData(a[key], b[key])) return false;
  for (const key in b) if (b[key] !== undefined && a[key] === undefined) return false;
  return true;
}
