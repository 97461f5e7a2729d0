import type { IDBPTransaction } from 'idb';
import type { JournalChange } from './chain';
import {
  type Checkpoint,
  type Database,
  type Journal,
  type KeptProject,
  type KeptStep,
  stepsOf,
  type Tables,
} from './database';
import { freeId } from './free-id';

/** All that is kept of a project. */
export interface StoredProject {
  readonly project: KeptProject;
  readonly journal: Journal;
  readonly checkpoint: Checkpoint;
  readonly steps: readonly KeptStep[];
}

const TABLES = ['projects', 'journals', 'checkpoints', 'steps'] as const;

interface Present {
  readonly name: string;
  /** ms since 1970. */
  readonly changed: number;
  /** Number of the document that is in a file; null: none, or one that is no longer in the history. */
  readonly filed: number | null;
  /** What the store holds under this id was read or written by this page: a new history may come in its place. */
  readonly isOwn?: boolean;
}

/**
 * Writes a change, wholly or not at all. Nothing is written where another tab has the project since (`taken`), where the store holds
 * nothing to go on from (`gone`), and where it holds a project of that id which this page neither read nor wrote (`occupied`, as long as
 * `isOwn` is not said): that would be lost. Rejects where the browser refuses.
 */
export async function writeJournal(
  database: Database,
  holder: string,
  { isNew, journal, steps, checkpoint }: JournalChange,
  { name, changed, filed, isOwn = false }: Present,
): Promise<'kept' | 'taken' | 'gone' | 'occupied'> {
  const change = database.transaction(TABLES, 'readwrite');
  const { project, first, last } = journal;
  const before = await change.objectStore('journals').get(project);
  if (before && isNew && !isOwn) return 'occupied';
  if (before && before.holder !== holder) return 'taken';
  if (!before && !isNew) return 'gone';
  const store = change.objectStore('steps');
  const writes: Promise<unknown>[] = [change.done];
  try {
    if (isNew) writes.push(store.delete(stepsOf(project)));
    else if (before) {
      if (before.first < first) writes.push(store.delete(IDBKeyRange.bound([project, 0], [project, first])));
      if (before.last > last) writes.push(store.delete(IDBKeyRange.bound([project, last + 1], [project, Infinity])));
    }
    for (const step of steps) writes.push(store.put(step));
    if (checkpoint) writes.push(change.objectStore('checkpoints').put(checkpoint));
    writes.push(change.objectStore('journals').put({ ...journal, holder, filed }));
    writes.push(change.objectStore('projects').put({ id: project, name, changed }));
    await Promise.all(writes);
  } catch (error) {
    abort(change);
    // What else fails of it fails for the same reason.
    await Promise.allSettled(writes);
    throw error;
  }
  return 'kept';
}

/** What was written so far is not to stay. */
function abort(change: { readonly abort: () => void }): void {
  try {
    change.abort();
  } catch {
    // The browser has done so already.
  }
}

/** Reads all of a project; null where there is none. What is missing of one is read as nothing, which is no document. */
export async function readJournal(database: Database, id: string): Promise<StoredProject | null> {
  const read = database.transaction(TABLES);
  const stored = await readAll(read, id);
  await read.done;
  return stored;
}

/**
 * Reads all of a project and, where `isSound` says so, takes it for a tab in the same breath, so that no other tab can write in between.
 * What is not sound stays as it is, and nobody's.
 */
export async function takeJournal(
  database: Database,
  id: string,
  holder: string,
  isSound: (stored: StoredProject) => boolean,
): Promise<StoredProject | null> {
  const change = database.transaction(TABLES, 'readwrite');
  const stored = await readAll(change, id);
  if (stored && isSound(stored)) await change.objectStore('journals').put({ ...stored.journal, holder });
  await change.done;
  return stored;
}

async function readAll(
  read: IDBPTransaction<Tables, typeof TABLES, 'readonly' | 'readwrite'>,
  id: string,
): Promise<StoredProject | null> {
  const [project, journal, checkpoint, steps] = await Promise.all([
    read.objectStore('projects').get(id),
    read.objectStore('journals').get(id),
    read.objectStore('checkpoints').get(id),
    read.objectStore('steps').getAll(stepsOf(id)),
  ]);
  return (
    (project && {
      project,
      journal: journal ?? { project: id, first: 0, position: 0, last: 0, holder: '', filed: null },
      checkpoint: checkpoint ?? { project: id, seq: 0, document: null },
      steps,
    }) ??
    null
  );
}

/** Removes all of a project; what was there, or null. */
export async function removeJournal(database: Database, id: string): Promise<StoredProject | null> {
  const change = database.transaction(TABLES, 'readwrite');
  const stored = await readAll(change, id);
  await Promise.all([
    change.objectStore('projects').delete(id),
    change.objectStore('journals').delete(id),
    change.objectStore('checkpoints').delete(id),
    change.objectStore('steps').delete(stepsOf(id)),
    change.done,
  ]);
  return stored;
}

/**
 * Puts a project as it was read back into the store, under a free id where another has come under its own since; the id. Rejects where the
 * browser refuses.
 */
export async function putBack(database: Database, stored: StoredProject): Promise<string> {
  const change = database.transaction(TABLES, 'readwrite');
  const ids = await change.objectStore('projects').getAllKeys();
  const { id } = stored.project;
  const { project, journal, checkpoint, steps } = ids.includes(id) ? underId(stored, freeId(ids, id)) : stored;
  await Promise.all([
    change.objectStore('projects').put(project),
    change.objectStore('journals').put(journal),
    change.objectStore('checkpoints').put(checkpoint),
    ...steps.map((step) => change.objectStore('steps').put(step)),
    change.done,
  ]);
  return project.id;
}

/** The same project under another id. No step changes an id, so that it stands in the whole document alone. */
function underId({ project, journal, checkpoint, steps }: StoredProject, id: string): StoredProject {
  const { document } = checkpoint;
  return {
    project: { ...project, id },
    journal: { ...journal, project: id },
    checkpoint: {
      ...checkpoint,
      project: id,
      document: typeof document === 'object' && document !== null ? { ...document, id } : document,
    },
    steps: steps.map((step) => ({ ...step, project: id })),
  };
}
