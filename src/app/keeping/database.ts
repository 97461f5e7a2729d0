import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { Library } from '../../model/library';
import type { Project } from '../../model/project';

/** What is told of a project in the list of those kept in the browser. */
export interface KeptProject {
  readonly id: string;
  readonly name: string;
  /** When it was changed last, ms since 1970. */
  readonly changed: number;
}

/** A project as it was after the step `seq`; later steps lead to its present. */
export interface Checkpoint {
  readonly project: string;
  readonly seq: number;
  readonly document: Project;
}

/** One step of a history: differences there and back (see model/difference.ts). */
export interface KeptStep {
  readonly project: string;
  readonly seq: number;
  readonly label: string;
  readonly forward: unknown;
  readonly back: unknown;
}

interface Tables extends DBSchema {
  readonly projects: { key: string; value: KeptProject };
  readonly checkpoints: { key: string; value: Checkpoint };
  readonly steps: { key: [project: string, seq: number]; value: KeptStep };
  readonly libraries: { key: string; value: Library };
  /** Which project is open, and the like, by name. */
  readonly notes: { key: string; value: unknown };
}

export type Database = IDBPDatabase<Tables>;

const NAME = 'upstand';
const VERSION = 1;

/** Opens the browser's store of projects and libraries; rejects where the browser gives none (some private windows). */
export const openDatabase = (): Promise<Database> =>
  openDB<Tables>(NAME, VERSION, {
    upgrade(database) {
      database.createObjectStore('projects', { keyPath: 'id' });
      database.createObjectStore('checkpoints', { keyPath: 'project' });
      database.createObjectStore('steps', { keyPath: ['project', 'seq'] });
      database.createObjectStore('libraries', { keyPath: 'id' });
      database.createObjectStore('notes');
    },
  });
