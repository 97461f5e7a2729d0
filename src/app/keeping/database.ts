import type { DBSchema, IDBPDatabase, IDBPTransaction, StoreNames } from 'idb';
import type { Library } from '../../model/library';
import type { Finish } from '../../model/project';
import { cutIntoParts, partNamer } from './library-parts';

/** What is told of a project in the list of those kept in the browser. */
export interface KeptProject {
  readonly id: string;
  readonly name: string;
  /** When it was changed last, ms since 1970. */
  readonly changed: number;
}

/**
 * Where the history of a project stands. Its documents are numbered: `first` is the oldest that can still be gone back to, `position` the
 * present one, `last` the newest that can be gone forward to. Step n leads from document n - 1 to document n.
 */
export interface Journal {
  readonly project: string;
  readonly first: number;
  readonly position: number;
  readonly last: number;
  /** The tab that may write: what another one writes would mix two histories. */
  readonly holder: string;
  /** Number of the document that is in a file, too; null: none that can still be gone to. */
  readonly filed: number | null;
}

/** The whole document of a number. */
export interface Checkpoint {
  readonly project: string;
  readonly seq: number;
  readonly document: unknown;
}

/** One step of a history: differences there and back (see model/difference.ts). */
export interface KeptStep {
  readonly project: string;
  readonly seq: number;
  readonly label: string;
  readonly forward: unknown;
  readonly back: unknown;
}

/** A library without its finishes, which stand in records of their own: in this order, by these names. */
export interface KeptLibrary extends Omit<Library, 'finishes'> {
  readonly parts: readonly string[];
}

/** Some finishes of a library, one after the other. */
export interface KeptPart {
  readonly library: string;
  readonly name: string;
  readonly finishes: readonly Finish[];
}

export interface Tables extends DBSchema {
  readonly projects: { key: string; value: KeptProject };
  readonly journals: { key: string; value: Journal };
  readonly checkpoints: { key: string; value: Checkpoint };
  readonly steps: { key: [project: string, seq: number]; value: KeptStep };
  readonly libraries: { key: string; value: KeptLibrary };
  readonly 'library-parts': { key: [library: string, name: string]; value: KeptPart };
  /** Single records, by name. */
  readonly notes: { key: string; value: unknown };
}

export type Database = IDBPDatabase<Tables>;

/** Gives the browser's store, opened at the first call; rejects where the browser gives none (some private windows). */
export type OpenDatabase = () => Promise<Database>;

const NAME = 'upstand';
/** 2: finishes of libraries in parts; a library was one record before. */
const VERSION = 2;

/** Opens the store once for all who ask, and anew when the browser has closed it. The code that does so is fetched when it is needed. */
export function databaseOpener(): OpenDatabase {
  let opening: Promise<Database> | null = null;
  const forget = () => {
    opening = null;
  };
  return () => {
    opening ??= open(forget).catch((error: unknown) => {
      forget();
      throw error;
    });
    return opening;
  };
}

async function open(onClosed: () => void): Promise<Database> {
  const { openDB } = await import('idb');
  return openDB<Tables>(NAME, VERSION, {
    async upgrade(database, before, _version, change) {
      if (before < 1) {
        database.createObjectStore('projects', { keyPath: 'id' });
        database.createObjectStore('journals', { keyPath: 'project' });
        database.createObjectStore('checkpoints', { keyPath: 'project' });
        database.createObjectStore('steps', { keyPath: ['project', 'seq'] });
        database.createObjectStore('libraries', { keyPath: 'id' });
        database.createObjectStore('notes');
      }
      if (before < 2) {
        database.createObjectStore('library-parts', { keyPath: ['library', 'name'] });
        await putInParts(change);
      }
    },
    // A newer program in another tab is not to wait for this one.
    blocking(_version, _blocked, event) {
      onClosed();
      (event.target as IDBDatabase).close();
    },
    terminated: onClosed,
  });
}

/** Libraries that were kept whole. Where that fails the store stays as it was, with all of them in it. */
async function putInParts(change: IDBPTransaction<Tables, StoreNames<Tables>[], 'versionchange'>): Promise<void> {
  const newName = partNamer();
  const [libraries, parts] = [change.objectStore('libraries'), change.objectStore('library-parts')];
  for (let at = await libraries.openCursor(); at; at = await at.continue()) {
    const { finishes, ...library } = at.value as unknown as Library;
    const cut = cutIntoParts(finishes, newName);
    for (const { name, finishes: its } of cut) await parts.put({ library: library.id, name, finishes: its });
    await at.update({ ...library, parts: cut.map(({ name }) => name) });
  }
}

/** The keys of all parts of a library. */
export const partsOf = (library: string): IDBKeyRange => IDBKeyRange.bound([library], [library, []]);

/** The keys of all steps of a project. */
export const stepsOf = (project: string): IDBKeyRange => IDBKeyRange.bound([project, 0], [project, Infinity]);
