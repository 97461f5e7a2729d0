import type { Finish } from './project';

/** What becomes of a finish whose code is there already. */
export type OnSame = 'both' | 'replace' | 'skip';

export interface Merged {
  readonly finishes: readonly Finish[];
  readonly added: number;
  readonly replaced: number;
  readonly skipped: number;
}

/** What one orders it by; its id where nobody gave a code. */
export const codeOf = ({ id, supply }: Finish): string => supply?.code ?? id;

const keyOf = (finish: Finish): string => codeOf(finish).trim().toLowerCase();

/** How many of the incoming finishes have a code that is there already. */
export function countSame(present: readonly Finish[], incoming: readonly Finish[]): number {
  const taken = new Set(present.map(keyOf));
  return incoming.filter((finish) => taken.has(keyOf(finish))).length;
}

/**
 * The finishes of a library with others put to them, at the end, in their order. What replaces one takes its place and id, so that what
 * refers to it still finds it, and keeps its tags as well as its own. Codes that the incoming finishes share among themselves are no matter:
 * both stay. Ids are unique afterwards if those present were.
 */
export function mergeFinishes(present: readonly Finish[], incoming: readonly Finish[], onSame: OnSame): Merged {
  const at = new Map<string, number>();
  present.forEach((finish, i) => {
    if (!at.has(keyOf(finish))) at.set(keyOf(finish), i);
  });
  const finishes = [...present];
  const ids = new Set(present.map(({ id }) => id));
  const count = { added: 0, replaced: 0, skipped: 0 };
  for (const finish of incoming) {
    const same = at.get(keyOf(finish));
    if (same !== undefined && onSame === 'skip') {
      count.skipped++;
    } else if (same !== undefined && onSame === 'replace') {
      finishes[same] = inPlaceOf(present[same]!, finish);
      count.replaced++;
    } else {
      const id = freeFinishId(ids, finish.id);
      ids.add(id);
      finishes.push(withId(finish, id));
      count.added++;
    }
  }
  return { finishes, ...count };
}

function inPlaceOf(before: Finish, finish: Finish): Finish {
  const tags = [...new Set([...(before.tags ?? []), ...(finish.tags ?? [])])];
  return { ...withId(finish, before.id), ...(tags.length > 0 && { tags }) };
}

/** The same finish under another id, which its label ends with where it ended with the old one. */
function withId(finish: Finish, id: string): Finish {
  if (finish.id === id) return finish;
  const tail = `, ${finish.id}`;
  const label = finish.label.endsWith(tail) ? `${finish.label.slice(0, -tail.length)}, ${id}` : finish.label;
  return { ...finish, id, label };
}

/** The id itself, or the next of its kind that is free: A, A-2, A-3 ... */
function freeFinishId(taken: ReadonlySet<string>, wanted: string): string {
  for (let n = 1; ; n++) {
    const id = n === 1 ? wanted : `${wanted}-${n}`;
    if (!taken.has(id)) return id;
  }
}
