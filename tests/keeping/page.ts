import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { createStore, type StoreApi } from 'zustand/vanilla';
import { type Actions, createActions } from '../../src/app/actions';
import { databaseOpener, type OpenDatabase } from '../../src/app/keeping/database';
import { keep } from '../../src/app/keeping/keep';
import { openDemo, openKept } from '../../src/app/keeping/open-kept';
import { type AppState, initialState } from '../../src/app/state';
import type { Project } from '../../src/model/project';
import { terrace } from '../ui/terrace';

export const demo = terrace();

/** A browser's store of its own, empty. */
export function emptyStore(): void {
  globalThis.indexedDB = new IDBFactory();
}

export interface Page extends Omit<ReturnType<typeof keep>, 'actions'> {
  readonly store: StoreApi<AppState>;
  readonly actions: Actions;
  readonly keeping: ReturnType<typeof keep>['actions'];
  readonly open: OpenDatabase;
  /** Waits until everything is written. */
  readonly flush: () => Promise<void>;
  /** The tab is gone, with nothing said. */
  readonly kill: () => void;
}

let pages = 0;

/** A page as it starts, in a tab of its own: with the kept project of that id and its history, or the demo. */
export async function openPage(id: string | null = null, first: Project = demo): Promise<Page> {
  const open = databaseOpener();
  const holder = `page-${++pages}`;
  const opened = id === null ? null : await openKept(await open(), holder, id);
  const shown = !opened ? null : 'shown' in opened ? opened.shown : await openDemo(await open(), holder, demo);
  const store = createStore<AppState>(() => {
    const state = initialState(shown?.history.present ?? first, 'system');
    if (!shown) return state;
    const { history, saved, kept } = shown;
    const notice = opened && 'unreadable' in opened ? opened.unreadable : shown.notice;
    const isElsewhere = notice?.kind === 'elsewhere';
    const document = kept || isElsewhere ? history.present : null;
    return {
      ...state,
      history,
      saved,
      keeping: { ...state.keeping, state: isElsewhere ? 'elsewhere' : 'nothing', document, notice },
    };
  });
  const kept = keep({ store, open, holder, demo }, shown ?? { kept: null, lock: null, isWanted: false });
  return {
    ...kept,
    store,
    actions: createActions(store),
    keeping: kept.actions,
    open,
    flush: () => kept.keeper.flush(),
    kill: () => kept.keeper.stop(),
  };
}
