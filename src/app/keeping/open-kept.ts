import type { Problem, Result } from '../../engine/result';
import { startHistory } from '../../model/history';
import type { Project } from '../../model/project';
import type { Database } from './database';
import { freeId } from './free-id';
import { readJournal, type StoredProject, takeJournal } from './journal';
import type { Shown } from './keeper';
import { type Restored, restore } from './restore';
import { takeLock } from './tab-lock';
import type { KeepingNotice } from './types';

/** A kept project ready to be shown, or why it cannot be. */
export type Opened =
  | { readonly shown: Shown }
  | { readonly unreadable: KeepingNotice & { readonly kind: 'unreadable' } };

/**
 * Opens a kept project with its history, for this tab alone; null where none of that id is kept. One that another tab has is shown as it
 * is kept, and nothing of it kept from here; with `isStolen` it is taken from that tab.
 */
export async function openKept(
  database: Database,
  holder: string,
  id: string,
  isStolen = false,
): Promise<Opened | null> {
  // What cannot be read is not taken from a tab that may still keep it.
  const seen = isStolen ? await readJournal(database, id) : null;
  const readable = seen && restore(seen);
  if (readable && !readable.ok) return unreadable(seen, readable.problem);
  const lock = await takeLock(id, isStolen);
  let restored: Result<Restored> | null = null;
  const isSound = (stored: StoredProject): boolean => {
    restored = restore(stored);
    return restored.ok;
  };
  const stored = lock ? await takeJournal(database, id, holder, isSound) : await readJournal(database, id);
  if (!stored) {
    lock?.release();
    return null;
  }
  const read = (restored as Result<Restored> | null) ?? restore(stored);
  if (!read.ok) {
    lock?.release();
    return unreadable(stored, read.problem);
  }
  const notice = lock ? null : ({ kind: 'elsewhere', wasHere: false } as const);
  return { shown: { ...read.value, lock, isWanted: true, notice, isOwn: lock !== null } };
}

const unreadable = ({ project }: StoredProject, problem: Problem): Opened => ({
  unreadable: { kind: 'unreadable', project: project.id, name: project.name, problem },
});

/** The demo as it is kept, or else as it always begins, under an id that nothing is kept by. */
export async function openDemo(database: Database, holder: string, demo: Project): Promise<Shown> {
  const opened = await openKept(database, holder, demo.id);
  if (opened && 'shown' in opened) return opened.shown;
  const ids = opened ? await database.getAllKeys('projects') : [];
  const project = opened ? { ...demo, id: freeId(ids, demo.id) } : demo;
  return { history: startHistory(project), kept: null, lock: null, isWanted: false, saved: project, notice: null };
}
