import type { Library } from '../../model/library';
import type { OpenDatabase } from './database';
import { createLibraryRecords } from './library-records';
import type { News } from './news';

/** What became of a change: it is kept; nothing was changed, for what is kept is not what was to be changed; or it failed, which was told. */
export type LibraryChanged = 'kept' | 'is-another' | 'failed';

/**
 * The libraries kept in this browser. What fails is told on the page by the shelf itself: nobody who uses it has to. All of it works in
 * every tab at once.
 */
export interface LibraryShelf {
  /** All of them by name, what did not change as the very objects of before; empty where nothing can be read. */
  readonly list: () => Promise<readonly Library[]>;
  /** Puts a library in the place of what is kept of it: `instead`, or nothing for null. */
  readonly put: (library: Library, instead: Library | null) => Promise<LibraryChanged>;
  readonly remove: (library: Library) => Promise<LibraryChanged>;
  /** Called whenever a library came, changed or went, here or in another tab; returns how to stop. */
  readonly onChange: (listener: () => void) => () => void;
}

/** `fail` tells what went wrong. */
export function createLibraryShelf(open: OpenDatabase, news: News, fail: (error: unknown) => void): LibraryShelf {
  const records = createLibraryRecords(open);
  const change = async (id: string, before: Library | null, after: Library | null): Promise<LibraryChanged> => {
    try {
      if (!(await records.replace(id, before, after))) return 'is-another';
      news.tell('libraries');
      return 'kept';
    } catch (error) {
      fail(error);
      return 'failed';
    }
  };
  return {
    list: async () => {
      try {
        return [...(await records.read())].sort((a, b) => a.name.localeCompare(b.name));
      } catch (error) {
        fail(error);
        return [];
      }
    },
    put: (library, instead) => change(library.id, instead, library),
    remove: (library) => change(library.id, library, null),
    onChange: (listener) => news.listen('libraries', listener),
  };
}
