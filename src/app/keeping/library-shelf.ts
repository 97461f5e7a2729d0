import { type Library, libraryOfNow } from '../../model/library';
import type { OpenDatabase } from './database';
import type { News } from './news';

/**
 * The libraries kept in this browser. What fails is told on the page by the shelf itself: nobody who uses it has to. All of it works in
 * every tab at once.
 */
export interface LibraryShelf {
  /** All of them by name; empty where nothing can be read. */
  readonly list: () => Promise<readonly Library[]>;
  /** Takes a library in, or puts it in the place of the one with its id; false where it could not be kept. */
  readonly put: (library: Library) => Promise<boolean>;
  /** Removes it, and gives back what brings it back as it was; null where that failed or there is none of that id. */
  readonly remove: (id: string) => Promise<(() => Promise<boolean>) | null>;
  /** Called whenever a library came, changed or went, here or in another tab; returns how to stop. */
  readonly onChange: (listener: () => void) => () => void;
}

/** `fail` tells what went wrong. */
export function createLibraryShelf(open: OpenDatabase, news: News, fail: (error: unknown) => void): LibraryShelf {
  const attempt = async <T>(act: () => Promise<T>, otherwise: T): Promise<T> => {
    try {
      return await act();
    } catch (error) {
      fail(error);
      return otherwise;
    }
  };
  const put = (library: Library) =>
    attempt(async () => {
      await (await open()).put('libraries', library);
      news.tell('libraries');
      return true;
    }, false);
  return {
    list: () =>
      attempt(async () => {
        const all = await (await open()).getAll('libraries');
        return all.map(libraryOfNow).sort((a, b) => a.name.localeCompare(b.name));
      }, []),
    put,
    remove: (id) =>
      attempt(async () => {
        const change = (await open()).transaction('libraries', 'readwrite');
        const library = await change.store.get(id);
        await change.store.delete(id);
        await change.done;
        if (!library) return null;
        news.tell('libraries');
        return () => put(libraryOfNow(library));
      }, null),
    onChange: (listener) => news.listen('libraries', listener),
  };
}
