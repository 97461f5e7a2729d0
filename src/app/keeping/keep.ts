import { layOutJson } from '../../io/json-layout';
import { record } from '../../model/history';
import { KEEPING } from '../../ui/words/keeping';
import { saveBlob } from '../save-blob';
import { documentOf } from '../state';
import { readJournal } from './journal';
import { copyIdentity } from './keep-copy';
import { createKeeper, type Shown } from './keeper';
import { createLibraryShelf } from './library-shelf';
import { openNews } from './news';
import { openKept } from './open-kept';
import { createProjectShelf, type ShelfParts } from './project-shelf';
import { renamed } from './renamed';
import { rawDocument } from './restore';
import { takeLock } from './tab-lock';
import { tellUnkept } from './tell-unkept';

/** What one can do where a project is open in two tabs, or cannot be read. */
export interface KeepingActions {
  /** Takes the project from the tab that has it; what was changed here meanwhile is one step on what that one kept. */
  readonly goOnHere: () => Promise<void>;
  /** Goes on with what is on this page, and all its steps, as a project of its own. */
  readonly goOnWithCopy: () => Promise<void>;
  /** Hands a project that cannot be opened to the browser as a file, as it is. */
  readonly saveUnreadable: (id: string) => Promise<void>;
}

export type KeepParts = Pick<ShelfParts, 'store' | 'open' | 'holder' | 'demo'>;

/** Starts to keep the open project, as it came to the page. */
export function keep(
  { store, open, holder, demo }: KeepParts,
  start: Pick<Shown, 'kept' | 'lock' | 'isWanted' | 'isOwn'>,
) {
  const news = openNews();
  const fail = (error: unknown) => tellUnkept(store, error);
  const refuse = (error: unknown) => tellUnkept(store, error, true);
  const attempt = async (act: () => Promise<void>): Promise<void> => act().catch(refuse);
  const keeper = createKeeper(store, open, news, holder, start);

  const actions: KeepingActions = {
    goOnHere: () =>
      attempt(async () => {
        const { id } = documentOf(store.getState());
        const opened = await openKept(await open(), holder, id, true);
        const theirs = opened ? null : await takeLock(id, true);
        // Only now, for one may have gone on meanwhile.
        const { history, keeping } = store.getState();
        const { present } = history;
        if (present.id !== id) {
          theirs?.release();
          if (opened && 'shown' in opened) opened.shown.lock?.release();
          return;
        }
        if (opened && 'unreadable' in opened) {
          return store.setState({ keeping: { ...keeping, notice: opened.unreadable } });
        }
        if (!opened) {
          return keeper.show(
            { ...keeper.shown(), history, kept: null, lock: theirs, isWanted: true, notice: null },
            true,
          );
        }
        const own = present !== keeping.document;
        const gone = own ? record(opened.shown.history, present, KEEPING.goOnLabel) : opened.shown.history;
        keeper.show({ ...opened.shown, history: gone, notice: null }, true);
      }),
    goOnWithCopy: () =>
      attempt(async () => {
        const { history } = store.getState();
        const identity = await copyIdentity(await open(), history.present);
        const copy = renamed(history, history.present.id, identity);
        keeper.show({ history: copy, kept: null, lock: null, isWanted: true, saved: null, notice: null }, true);
      }),
    saveUnreadable: (id) =>
      attempt(async () => {
        const stored = await readJournal(await open(), id);
        if (!stored) return;
        // Where there is no document to be made of it, all there is.
        const text = layOutJson(rawDocument(stored) ?? stored);
        saveBlob(new Blob([text], { type: 'application/json' }), `${id}.project.json`);
      }),
  };
  const projects = createProjectShelf({ store, open, news, keeper, holder, demo, fail, refuse });
  return { keeper, actions, projects, libraries: createLibraryShelf(open, news, fail) };
}
