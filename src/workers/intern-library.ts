import type { Finish } from '../model/project';

/** Copies that cross into a worker are new objects each time; unchanged finishes are swapped for the ones known already. */
export function createInterner(): (library: readonly Finish[]) => readonly Finish[] {
  let known = new Map<string, { text: string; finish: Finish }>();
  let last: readonly Finish[] = [];
  return (library) => {
    const next = new Map<string, { text: string; finish: Finish }>();
    for (const finish of library) {
      const text = JSON.stringify(finish);
      const before = known.get(finish.id);
      next.set(finish.id, before?.text === text ? before : { text, finish });
    }
    known = next;
    const interned = library.map(({ id }) => next.get(id)!.finish);
    const same = interned.length === last.length && interned.every((finish, i) => finish === last[i]);
    if (!same) last = interned;
    return last;
  };
}
