import type { DBSchema, IDBPDatabase } from 'idb';
import type { Library } from '../../model/library';

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

export interface Tables extends DBSchema {
  readonly projects: { key: string; value: KeptProject };
  readonly journals: { key: string; value: Journal };
  readonly checkpoints: { key: string; value: Checkpoint };
  readonly steps: { key: [project: string, seq: number]; value: KeptStep };
  readonly libraries: { key: string; value: Library };
  /** Single records, by name. */
  readonly notes: { key: string; value: unknown };
}

export type Database = IDBPDatabase<Tables>;

/** Gives the browser's store, opened at the first call; rejects where the browser gives none (some private windows). */
export type OpenDatabase = () => Promise<Database>;

const NAME = 'upstand';
const VERSION = 1;

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
    upgrade(database) {
      database.createObjectStore('projects', { keyPath: 'id' });
      database.createObjectStore('journals', { keyPath: 'project' });
      database.createObjectStore('checkpoints', { keyPath: 'project' });
      database.createObjectStore('steps', { keyPath: ['project', 'seq'] });
      database.createObjectStore('libraries', { keyPath: 'id' });
      database.createObjectStore('notes');
    },
    // A newer program in another tab is not to wait for this one.
    blocking(_version, _blocked, event) {
      onClosed();
      (event.target as IDBDatabase).close();
    },
    terminated: onClosed,
  });
}

/** The keys of all steps of a project. */
export const stepsOf = (project: string): IDBKeyRange => IDBKeyRange.bound([project, 0], [project, Infinity]);
