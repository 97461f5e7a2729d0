import type { Finish } from '../../model/project';

/** Finishes of a library that are kept as one record. What is in it never changes: another content has another name. */
export interface LibraryPart {
  readonly name: string;
  readonly finishes: readonly Finish[];
}

/** So many finishes are kept in one record: an edit of one writes little, and ten thousand are read in a hundred. */
export const PART_SIZE = 100;

/** Names of records, of which no two are the same in any tab or at any time. */
export function partNamer(): () => string {
  const base = `${Date.now().toString(36)}-${Math.random().toString(36).slice(2)}`;
  let count = 0;
  return () => `${base}-${(++count).toString(36)}`;
}

/** A library as parts that nothing is kept of yet. */
export function cutIntoParts(finishes: readonly Finish[], newName: () => string): readonly LibraryPart[] {
  const parts: LibraryPart[] = [];
  for (let from = 0; from < finishes.length; from += PART_SIZE) {
    parts.push({ name: newName(), finishes: finishes.slice(from, from + PART_SIZE) });
  }
  return parts;
}

/**
 * The parts of a library after a change. Where a part has the very same finishes it is that part; a finish stays in the part it was in as far
 * as their order allows, so that little is new.
 */
export function partsAfter(
  before: readonly LibraryPart[],
  finishes: readonly Finish[],
  newName: () => string,
): readonly LibraryPart[] {
  const home = new Map(before.flatMap((part, place) => part.finishes.map(({ id }) => [id, place] as const)));
  const groups: Finish[][] = Array.from({ length: Math.max(1, before.length) }, () => []);
  let place = 0;
  for (const finish of finishes) {
    place = Math.max(place, home.get(finish.id) ?? 0);
    groups[place]!.push(finish);
  }
  return groups.flatMap((group, i) => {
    const part = before[i];
    if (part && isSame(part.finishes, group)) return [part];
    return cutIntoParts(group, newName);
  });
}

const isSame = (one: readonly Finish[], other: readonly Finish[]): boolean =>
  one.length === other.length && one.every((finish, i) => finish === other[i]);
