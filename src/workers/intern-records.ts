interface Named {
  readonly id: string;
}

/** Copies that cross into a worker are new objects each time; unchanged records are swapped for the ones known already. */
export function createInterner<T extends Named>(): (records: readonly T[]) => readonly T[] {
  let known = new Map<string, { text: string; record: T }>();
  let last: readonly T[] = [];
  return (records) => {
    const next = new Map<string, { text: string; record: T }>();
    for (const record of records) {
      const text = JSON.stringify(record);
      const before = known.get(record.id);
      next.set(record.id, before?.text === text ? before : { text, record });
    }
    known = next;
    const interned = records.map(({ id }) => next.get(id)!.record);
    const same = interned.length === last.length && interned.every((record, i) => record === last[i]);
    if (!same) last = interned;
    return last;
  };
}
