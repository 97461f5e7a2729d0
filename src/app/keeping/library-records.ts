import type { IDBPTransaction } from 'idb';
import { LIBRARY_VERSION, type Library } from '../../model/library';
import { sameData } from '../../model/same-data';
import { type KeptLibrary, type OpenDatabase, partsOf, type Tables } from './database';
import { type LibraryPart, partNamer, partsAfter } from './library-parts';
import { sameWhereAlike } from './same-where-alike';

/** A library as this tab knows that it is kept. */
interface Known {
  readonly library: Library;
  readonly parts: readonly LibraryPart[];
}

export interface LibraryRecords {
  readonly read: () => Promise<readonly Library[]>;
  /** Puts `after` in the place of `before`, null for none; false, and nothing is changed, where what is kept is not `before`. */
  readonly replace: (id: string, before: Library | null, after: Library | null) => Promise<boolean>;
}

type Stores = ('libraries' | 'library-parts')[];
type Reading = IDBPTransaction<Tables, Stores, 'readonly' | 'readwrite'>;
const STORES: Stores = ['libraries', 'library-parts'];

/** Reads and writes libraries in the store, only what of them is new. */
export function createLibraryRecords(open: OpenDatabase): LibraryRecords {
  const known = new Map<string, Known>();
  const newName = partNamer();

  /** The library of a record; what is known of it is not read again. */
  async function libraryOf(record: KeptLibrary, change: Reading): Promise<Known> {
    // An older program may have kept it: what it lacked is optional.
    const kept: KeptLibrary = { ...record, version: LIBRARY_VERSION };
    const { parts: names, ...rest } = kept;
    const before = known.get(kept.id);
    if (before && sameData(recordOf(before), kept)) return before;
    const there = new Map(before?.parts.map((part) => [part.name, part]));
    const missing = names.filter((name) => !there.has(name));
    const store = change.objectStore('library-parts');
    const got =
      missing.length === names.length
        ? await store.getAll(partsOf(kept.id))
        : await Promise.all(missing.map((name) => store.get([kept.id, name])));
    for (const part of got) if (part) there.set(part.name, { name: part.name, finishes: part.finishes });
    const parts = names.flatMap((name) => there.get(name) ?? []);
    const read: Library = { ...rest, finishes: parts.flatMap(({ finishes }) => finishes) };
    const library = before ? sameWhereAlike(before.library, read) : read;
    const now = { library, parts: withFinishesOf(library, parts) };
    known.set(kept.id, now);
    return now;
  }

  return {
    async read() {
      const change = (await open()).transaction(STORES);
      const kept = await change.objectStore('libraries').getAll();
      const ids = new Set(kept.map(({ id }) => id));
      for (const id of known.keys()) if (!ids.has(id)) known.delete(id);
      const libraries: Library[] = [];
      for (const one of kept) if (isLibrary(one)) libraries.push((await libraryOf(one, change)).library);
      return libraries;
    },

    async replace(id, before, after) {
      const change = (await open()).transaction(STORES, 'readwrite');
      const kept = await change.objectStore('libraries').get(id);
      const now = kept ? await libraryOf(kept, change) : null;
      if (!isAlike(now?.library ?? null, before)) return false;
      const parts = after ? partsAfter(now?.parts ?? [], after.finishes, newName) : [];
      const store = change.objectStore('library-parts');
      const [old, next] = [now?.parts ?? [], parts].map((all) => new Set(all.map(({ name }) => name))) as [
        Set<string>,
        Set<string>,
      ];
      const writing: Promise<unknown>[] = [change.done];
      try {
        for (const name of old) if (!next.has(name)) writing.push(store.delete([id, name]));
        for (const { name, finishes } of parts) {
          if (!old.has(name)) writing.push(store.put({ library: id, name, finishes }));
        }
        const libraries = change.objectStore('libraries');
        writing.push(after ? libraries.put(recordOf({ library: after, parts })) : libraries.delete(id));
      } catch (error) {
        // What cannot be kept at all is refused at once: nothing of it may be there by half.
        change.abort();
        await Promise.allSettled(writing);
        throw error;
      }
      await Promise.all(writing);
      if (after) known.set(id, { library: after, parts });
      else known.delete(id);
      return true;
    },
  };
}

/** What an unknown program may have put there is left alone, and hides no other. */
const isLibrary = (record: KeptLibrary): boolean =>
  typeof record.id === 'string' && typeof record.name === 'string' && Array.isArray(record.parts);

const isAlike = (one: Library | null, other: Library | null): boolean =>
  one === other || (one !== null && other !== null && sameData(one, other));

function recordOf({ library: { finishes: _, ...rest }, parts }: Known): KeptLibrary {
  return { ...rest, parts: parts.map(({ name }) => name) };
}

/** The same parts with the very finishes of the library. */
function withFinishesOf({ finishes }: Library, parts: readonly LibraryPart[]): readonly LibraryPart[] {
  let from = 0;
  return parts.map((part) => {
    const its = finishes.slice(from, from + part.finishes.length);
    from += part.finishes.length;
    return its.every((finish, i) => finish === part.finishes[i]) ? part : { name: part.name, finishes: its };
  });
}
