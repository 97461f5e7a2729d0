import type { StoreApi } from 'zustand/vanilla';
import type { Project } from '../../model/project';
import { type AppState, documentOf } from '../state';
import type { OpenDatabase } from './database';
import type { KeepingActions } from './keep';
import type { Shown } from './keeper';
import type { LibraryShelf } from './library-shelf';
import { notedOpen } from './open-note';
import type { ProjectShelf } from './shelf';
import { showUnkept } from './show-unkept';
import { tellUnkept } from './tell-unkept';
import type { KeepingNotice } from './types';

/** A store that takes longer to answer does not hold the page up any more, ms. */
const MOST_WAIT_MS = 4000;

/** What keeps projects and libraries; its code is fetched after the page has begun, unless a kept project has to be read first. */
export interface Kept {
  readonly projects: ProjectShelf;
  readonly libraries: LibraryShelf;
  readonly keeping: KeepingActions;
}

/** What the page starts with. */
export interface Start {
  /** Null: the demo as it always begins. */
  readonly shown: Shown | null;
  readonly notice: KeepingNotice | null;
  /** Why nothing could be read; null where that went well. */
  readonly error: unknown;
  /** What the store gives in the end where it took too long; absent where it did not. */
  readonly late?: Promise<Shown | null>;
}

export const AT_FIRST: Start = { shown: null, notice: null, error: null };

/** Marks what this page writes, so that no other page of the browser can go on from it unnoticed. */
const holder = `${Date.now().toString(36)}-${Math.random().toString(36).slice(2)}`;

/** The project that was open last with its history, or the demo; at once where nothing was kept. */
export async function readStart(open: OpenDatabase, demo: () => Project, mostWait_ms = MOST_WAIT_MS): Promise<Start> {
  const id = notedOpen();
  if (id === null) return AT_FIRST;
  const reading = (async (): Promise<Start> => {
    const [{ openKept, openDemo }, database] = await Promise.all([import('./open-kept'), open()]);
    const opened = await openKept(database, holder, id);
    if (!opened) return AT_FIRST;
    const shown = 'shown' in opened ? opened.shown : await openDemo(database, holder, demo());
    return { shown, notice: 'shown' in opened ? shown.notice : opened.unreadable, error: null };
  })().catch((error: unknown) => ({ ...AT_FIRST, error }));
  const late = new Promise<Start>((resolve) =>
    setTimeout(
      () =>
        resolve({
          ...AT_FIRST,
          error: new DOMException('', 'TimeoutError'),
          late: reading.then(({ shown }) => shown),
        }),
      mostWait_ms,
    ),
  );
  return Promise.race([reading, late]);
}

/** Keeps the open project from now on. */
export function startKeeping(
  store: StoreApi<AppState>,
  open: OpenDatabase,
  { shown, late }: Start,
  demo: Project,
): Kept {
  const loading = import('./keep').then(({ keep }) =>
    keep({ store, open, holder, demo }, shown ?? { kept: null, lock: null, isWanted: false }),
  );
  loading.catch((error: unknown) => tellUnkept(store, error));
  void late
    ?.then(async (found) => {
      const { keeper } = await loading;
      if (!found) return;
      // What was done meanwhile stays, as a project of its own.
      if (documentOf(store.getState()) === demo) keeper.show(found);
      else found.lock?.release();
    })
    .catch(() => undefined);
  const projects = loading.then((kept) => kept.projects);
  let shelf: ProjectShelf | null = null;
  projects.then(
    (there) => {
      shelf = there;
    },
    () => undefined,
  );
  const libraries = loading.then((kept) => kept.libraries);
  const actions = loading.then((kept) => kept.actions);
  return {
    projects: {
      list: async () => (await projects).list(),
      open: async (id) => (await projects).open(id),
      openDocument: async (project, from) => {
        const shelf = await projects.catch(() => null);
        if (shelf) return shelf.openDocument(project, from);
        showUnkept(store, project, from);
      },
      copy: async (id) => (await projects).copy(id),
      remove: async (id) => (await projects).remove(id),
      removed: () => shelf?.removed() ?? [],
      bringBack: async (id) => (await projects).bringBack(id),
      openDemo: async () => (await projects).openDemo(),
      onChange: (listener) => onceThere(projects, (shelf) => shelf.onChange(listener)),
    },
    libraries: {
      list: async () => (await libraries).list(),
      put: async (library, instead) => (await libraries).put(library, instead),
      remove: async (library) => (await libraries).remove(library),
      onChange: (listener) => onceThere(libraries, (shelf) => shelf.onChange(listener)),
    },
    keeping: {
      goOnHere: async () => (await actions).goOnHere(),
      goOnWithCopy: async () => (await actions).goOnWithCopy(),
      saveUnreadable: async (id) => (await actions).saveUnreadable(id),
    },
  };
}

/** Begins to listen once there is somebody to listen to; returns how to stop. */
function onceThere<T>(coming: Promise<T>, listen: (to: T) => () => void): () => void {
  let stop = () => {};
  let isStopped = false;
  coming.then(
    (to) => {
      if (!isStopped) stop = listen(to);
    },
    () => undefined,
  );
  return () => {
    isStopped = true;
    stop();
  };
}
