/** Equal as JSON values, whatever the order of members; one that is undefined counts as absent. */
export function isSameValue(one: unknown, other: unknown): boolean {
  if (one === other) return true;
  if (Array.isArray(one) && Array.isArray(other)) {
    return one.length === other.length && one.every((item, i) => isSameValue(item, other[i]));
  }
  if (!isRecord(one) || !isRecord(other)) return false;
  const names = new Set([...Object.keys(one), ...Object.keys(other)]);
  return [...names].every((name) => isSameValue(one[name], other[name]));
}

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
