import type { StoreApi } from 'zustand/vanilla';
import type { Problem } from '../../engine/result';
import { projectText } from '../../io/project-file';
import { record, startHistory } from '../../model/history';
import type { Project } from '../../model/project';
import { problemTold, refusalTold } from '../../ui/parts/told';
import { DOCUMENT_NOTICES, KEEPING, notKeptYet, openElsewhere } from '../../ui/words/keeping';
import { type AppState, documentOf, isUnsaved } from '../state';
import type { OpenDatabase } from './database';
import { freeId } from './free-id';
import { putBack, readJournal, removeJournal, type StoredProject } from './journal';
import { keepCopy } from './keep-copy';
import type { Keeper, Shown } from './keeper';
import type { News } from './news';
import { openKept } from './open-kept';
import { restore } from './restore';
import type { ProjectShelf } from './shelf';
import { isLocked } from './tab-lock';
import type { KeepingNotice } from './types';

export interface ShelfParts {
  readonly store: StoreApi<AppState>;
  readonly open: OpenDatabase;
  readonly news: News;
  readonly keeper: Keeper;
  readonly holder: string;
  readonly demo: Project;
  /** Tells what the browser refused, once. */
  readonly fail: (error: unknown) => void;
  /** The same of what somebody has just asked for. */
  readonly refuse: (error: unknown) => void;
}

/** The shelf over the browser's store. */
export function createProjectShelf({
  store,
  open,
  news,
  keeper,
  holder,
  demo,
  fail,
  refuse,
}: ShelfParts): ProjectShelf {
  const refuseTo = (problem: Problem) => store.setState({ told: refusalTold(problem) });
  const tell = (problem: Problem) => store.setState({ told: problemTold(problem) });
  let last: Promise<unknown> = Promise.resolve();
  /** One after the other: a project that is opened waits for the one before to be kept. */
  const inTurn = <T>(act: () => Promise<T>, otherwise: T, failed = refuse): Promise<T> => {
    const turn = last.then(async () => {
      try {
        return await act();
      } catch (error) {
        failed(error);
        return otherwise;
      }
    });
    last = turn;
    return turn;
  };
  const tellOf = (notice: KeepingNotice | null) =>
    store.setState(({ keeping }) => ({ keeping: { ...keeping, notice } }));
  const here = () => documentOf(store.getState());
  const switched = (to: string): KeepingNotice => ({
    kind: 'switched',
    to,
    from: keeper.isDemo() ? null : { id: here().id, name: here().name },
  });
  /** What was removed while the page is open, the last first. */
  let removed: readonly (StoredProject & { readonly isHere: boolean })[] = [];

  const showKept = async (id: string): Promise<boolean> => {
    const opened = await openKept(await open(), holder, id);
    if (!opened) return false;
    if ('unreadable' in opened) {
      tellOf(opened.unreadable);
      return false;
    }
    keeper.show({ ...opened.shown, notice: opened.shown.notice ?? switched(opened.shown.history.present.name) });
    return true;
  };

  /** The open project is kept, or the demo: another can come. */
  const isFree = async (): Promise<boolean> => {
    await keeper.flush();
    if (!isUnsaved(store.getState())) return true;
    tell(notKeptYet(here().name));
    return false;
  };

  const openId = async (id: string): Promise<boolean> => id === here().id || ((await isFree()) && showKept(id));

  /** The demo as it always opens, under an id that neither is kept nor may be brought back. */
  const showDemo = async (notice: KeepingNotice | null): Promise<void> => {
    const kept = await (await open()).getAllKeys('projects');
    const taken = [...kept, ...removed.map(({ project }) => project.id)];
    const project = taken.includes(demo.id) ? { ...demo, id: freeId(taken, demo.id) } : demo;
    keeper.show({ history: startHistory(project), kept: null, lock: null, isWanted: false, saved: project, notice });
  };

  return {
    list: () =>
      inTurn(
        async () => {
          const all = await (await open()).getAll('projects');
          return all.sort((a, b) => b.changed - a.changed);
        },
        [],
        fail,
      ),
    open: (id) => inTurn(() => openId(id), false),
    openDocument: (project, { label, notices = [], isInFile = false }) =>
      inTurn(async () => {
        await keeper.flush();
        const fresh: Shown = {
          history: startHistory(project),
          kept: null,
          lock: null,
          isWanted: true,
          saved: isInFile ? project : null,
          notice: null,
          told: notices,
        };
        const { history, keeping } = store.getState();
        if (isUnsaved(store.getState())) {
          // What is on the page is kept nowhere: it stays one step back.
          return keeper.show({ ...fresh, history: record(history, project, label) });
        }
        if (keeping.state === 'closed') return keeper.show(fresh);
        keeper.show(await besideKept(fresh, project, label));
      }, undefined),
    copy: (id) =>
      inTurn(async () => {
        const database = await open();
        await keeper.flush();
        const stored = id === here().id ? null : await readJournal(database, id);
        const read = stored && restore(stored);
        if (read && !read.ok) {
          refuseTo(read.problem);
          return null;
        }
        const copy = await keepCopy(database, read?.value.history.present ?? here());
        news.tell('projects');
        return copy;
      }, null),
    remove: (id) =>
      inTurn(async () => {
        const isHere = id === here().id;
        const database = await open();
        if (isHere ? store.getState().keeping.state === 'elsewhere' : await isLocked(id)) {
          refuseTo(openElsewhere((await database.get('projects', id))?.name ?? here().name));
          return false;
        }
        if (isHere) await keeper.flush();
        const { name } = here();
        // While it goes nothing of it is written; where it could not go it is kept on.
        const goOn = isHere ? keeper.forget() : null;
        const stored = await removeJournal(database, id).catch((error: unknown) => {
          goOn?.();
          throw error;
        });
        if (stored) removed = [{ ...stored, isHere }, ...removed];
        if (isHere) {
          const left = await database.getAll('projects');
          const [next] = left.sort((a, b) => b.changed - a.changed);
          const isNext = next !== undefined && (await showKept(next.id));
          if (!isNext) await showDemo(null);
          const { notice } = store.getState().keeping;
          const to = keeper.isDemo() ? null : here().name;
          if (notice?.kind !== 'elsewhere') tellOf({ kind: 'removed', id, name, to });
        }
        news.tell('projects');
        return stored !== null;
      }, false),
    removed: () => removed.map(({ project }) => project),
    bringBack: (id) =>
      inTurn(async () => {
        const one = removed.find(({ project }) => project.id === id);
        if (!one) return false;
        const back = await putBack(await open(), one);
        removed = removed.filter((other) => other !== one);
        if (one.isHere) await openId(back);
        const { notice } = store.getState().keeping;
        if (notice?.kind === 'removed' && notice.id === id) tellOf(null);
        news.tell('projects');
        return true;
      }, false),
    openDemo: () =>
      inTurn(async () => {
        if (keeper.isDemo() || !(await isFree())) return;
        await showDemo({ kind: 'switched', to: demo.name, from: { id: here().id, name: here().name } });
      }, undefined),
    onChange: (listener) => news.listen('projects', listener),
  };

  /** A document that comes in, where its project may be kept already. */
  async function besideKept(fresh: Shown, project: Project, label: string): Promise<Shown> {
    const database = await open();
    const state = store.getState();
    const isHere = project.id === here().id;
    const { name } = project;
    if (!(await database.get('projects', project.id))) return { ...fresh, notice: isHere ? null : switched(name) };
    const opened = isHere ? null : await openKept(database, holder, project.id);
    const kept =
      opened && 'shown' in opened ? opened.shown : isHere ? { ...keeper.shown(), notice: state.keeping.notice } : null;
    const notices = fresh.told ?? [];
    if (kept && kept.notice?.kind !== 'elsewhere') {
      const notice = isHere ? null : switched(name);
      const { present } = kept.history;
      if (projectText(present) === projectText(project)) {
        const saved = fresh.saved ? present : kept.saved;
        return { ...kept, saved, notice, told: [...notices, DOCUMENT_NOTICES.same(name)] };
      }
      // As it is kept it is in a file as well: nothing is lost when what comes in is its next step.
      if (kept.saved === present) {
        const history = record(kept.history, project, label);
        return { ...kept, history, saved: fresh.saved, notice, told: [...notices, DOCUMENT_NOTICES.wentOn(name)] };
      }
    }
    if (!isHere) kept?.lock?.release();
    const all = await database.getAll('projects');
    const copyName = KEEPING.copyOf(
      name,
      all.map((one) => one.name),
    );
    const copy = {
      ...project,
      id: freeId(
        all.map(({ id }) => id),
        project.id,
      ),
      name: copyName,
    };
    const told = [...notices, DOCUMENT_NOTICES.beside(name, copyName)];
    return { ...fresh, history: startHistory(copy), saved: null, notice: switched(copyName), told };
  }
}
