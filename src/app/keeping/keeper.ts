import type { StoreApi } from 'zustand/vanilla';
import type { Problem } from '../../engine/result';
import type { History } from '../../model/history';
import type { Project } from '../../model/project';
import { noticeTold } from '../../ui/parts/told';
import { DOCUMENT_NOTICES } from '../../ui/words/keeping';
import { withProject } from '../other-project';
import { type AppState, documentOf, withHistory } from '../state';
import { chainOf, type KeptChain, planChange, stepsAway } from './chain';
import type { OpenDatabase } from './database';
import { writeJournal } from './journal';
import { copyIdentity } from './keep-copy';
import type { News } from './news';
import { noteOpen } from './open-note';
import { renamed } from './renamed';
import { whyUnkept } from './store-error';
import { type TabLock, takeLock } from './tab-lock';
import { keptAgain, tellUnkept } from './tell-unkept';
import type { Keeping, KeepingNotice } from './types';

/** A project as it comes onto the page. */
export interface Shown {
  readonly history: History<Project>;
  /** As the store holds it; null where it does not, or where it is to be written anew. */
  readonly kept: KeptChain | null;
  readonly lock: TabLock | null;
  /** It is kept even if nothing changes. */
  readonly isWanted: boolean;
  /** The document that is in a file, too. */
  readonly saved: Project | null;
  readonly notice: KeepingNotice | null;
  readonly told?: readonly Problem[];
  /** What the store holds under its id was read by this page, even where it has to be written anew; absent where `kept` says so. */
  readonly isOwn?: boolean;
}

/** Keeps the open project, change by change. */
export interface Keeper {
  /** Waits until the present is kept, or is known not to be. The demo is kept once it is changed. */
  readonly flush: () => Promise<void>;
  /** The open project is the demo as it always opens: not one's own yet. */
  readonly isDemo: () => boolean;
  /** The open project as it could be shown again. */
  readonly shown: () => Omit<Shown, 'notice'>;
  /**
   * Shows another project in the place of the open one, and keeps that from then on. With `isSame` it is the open one as another tab has
   * left it: what is looked at stays.
   */
  readonly show: (shown: Shown, isSame?: boolean) => void;
  /** Writes nothing of the open project any more, until another is shown or what it gives back is called. */
  readonly forget: () => () => void;
  readonly stop: () => void;
}

interface Current {
  readonly id: string;
  kept: KeptChain | null;
  lock: TabLock | null;
  /** The document that is in a file, as the store knows it. */
  saved: Project | null;
  isWanted: boolean;
  isElsewhere: boolean;
  /** What the store holds under its id was read or written by this page. */
  isOwn: boolean;
}

/** A write that takes longer is spoken of, ms. */
const LONG_MS = 400;
/** After a rest this long the whole document is kept, if this many steps lie between it and the one kept whole. */
const REST_MS = 2000;
const STEPS_AT_REST = 16;
/** Lists of projects hear of changes this often, ms. */
const NEWS_MS = 500;

export function createKeeper(
  store: StoreApi<AppState>,
  open: OpenDatabase,
  news: News,
  holder: string,
  start: Pick<Shown, 'kept' | 'lock' | 'isWanted' | 'isOwn'>,
): Keeper {
  let current: Current = {
    ...start,
    id: documentOf(store.getState()).id,
    saved: store.getState().saved,
    isElsewhere: isElsewhere(store.getState()),
    isOwn: start.isOwn ?? start.kept !== null,
  };
  /** Projects one step away in the same history, each with its lock and what the store holds of it. */
  const aside = new Map<string, Current>();
  let running: Promise<void> | null = null;
  let isAgain = false;
  let isAsked = false;
  let resting: ReturnType<typeof setTimeout> | undefined;
  let telling: ReturnType<typeof setTimeout> | undefined;

  const sayKept = (document: Project) => store.setState(({ keeping }) => ({ keeping: keptAgain(keeping, document) }));
  const say = (keeping: Partial<Keeping>) => store.setState((state) => ({ keeping: { ...state.keeping, ...keeping } }));

  const lose = (one: Current, wasHere: boolean) => {
    one.isElsewhere = true;
    one.lock?.release();
    one.lock = null;
    if (one === current) say({ state: 'elsewhere', notice: { kind: 'elsewhere', wasHere } });
  };

  const adopt = (one: Current) => {
    void one.lock?.lost.then(() => lose(one, true));
    return one;
  };

  /** Writes what differs from the store; with `whole` the present document is kept whole. */
  const write = async (whole: boolean): Promise<void> => {
    const { history, saved, keeping, showroom } = store.getState();
    // What a customer of a showroom does is kept nowhere.
    if (showroom) return;
    const present = history.present;
    if (present.id !== current.id) {
      aside.set(current.id, current);
      // Where another tab had it, it may have let go of it since.
      current = aside.get(present.id) ?? newcomer(present.id);
      current.isElsewhere = false;
      aside.delete(present.id);
    }
    const one = current;
    if (one.isElsewhere) return;
    const chain = chainOf(history);
    if (!one.kept && !one.isWanted && chain.documents.length === 1) return;
    askToPersist();
    if (!one.lock) {
      const lock = await takeLock(one.id);
      if (one !== current) return lock?.release();
      if (!lock) return lose(one, false);
      one.lock = lock;
      adopt(one);
    }
    const change = planChange(one.kept, chain, whole);
    if (change.isNothing && one.saved === saved) return sayKept(present);
    const { first, documents } = change.kept;
    const filed = saved ? documents.indexOf(saved) : -1;
    const outcome = await writeJournal(await open(), holder, change, {
      name: present.name,
      changed: Date.now(),
      filed: filed < 0 ? null : first + filed,
      isOwn: one.isOwn,
    });
    if (outcome === 'occupied') return goOnAside(one, present);
    if (outcome === 'taken') return lose(one, keeping.document !== null);
    if (outcome === 'gone') {
      // The browser, or its user, has cleared the store: what is on the page is all there is.
      one.kept = null;
      one.isOwn = false;
      isAgain = true;
      return;
    }
    one.kept = change.kept;
    one.isOwn = true;
    one.saved = saved;
    noteOpen(one.id);
    one.isWanted = true;
    if (one !== current) return;
    sayKept(present);
    telling ??= setTimeout(() => {
      telling = undefined;
      news.tell('projects');
    }, NEWS_MS);
  };

  /** The store has another project of that id, which this page knows nothing of: what is here goes on under an id of its own. */
  const goOnAside = async (one: Current, { id, name }: Project): Promise<void> => {
    const identity = await copyIdentity(await open(), { id, name });
    one.lock?.release();
    if (one !== current) return;
    current = newcomer(identity.id);
    store.setState((state) => ({
      ...withHistory(state, renamed(state.history, id, identity)),
      saved: state.saved?.id === id ? null : state.saved,
      told: noticeTold([DOCUMENT_NOTICES.beside(name, identity.name)]),
    }));
  };

  const letGo = (one: Current, lock: TabLock | null) => {
    if (one.lock !== lock) one.lock?.release();
  };

  const fail = (error: unknown) => {
    say({ state: whyUnkept(error) });
    tellUnkept(store, error);
  };

  const askToPersist = () => {
    if (isAsked) return;
    isAsked = true;
    globalThis.navigator?.storage?.persist?.().catch(() => undefined);
  };

  const run = (whole = false): Promise<void> => {
    isAgain = true;
    running ??= (async () => {
      const long = setTimeout(() => say({ state: 'keeping' }), LONG_MS);
      try {
        while (isAgain) {
          isAgain = false;
          await write(whole);
        }
      } catch (error) {
        fail(error);
      } finally {
        clearTimeout(long);
        running = null;
      }
    })();
    return running;
  };

  const rest = () => {
    if (current.kept && !current.isElsewhere && stepsAway(current.kept) >= STEPS_AT_REST) void run(true);
  };

  const unfollow = store.subscribe((state, before) => {
    if (state.history === before.history && state.saved === before.saved) return;
    const { notice } = state.keeping;
    const isDone = notice?.kind === 'switched' || notice?.kind === 'removed';
    if (isDone && notice === before.keeping.notice) say({ notice: null });
    clearTimeout(resting);
    resting = setTimeout(rest, REST_MS);
    void run();
  });
  const leave = () => {
    if (document.visibilityState === 'hidden') void run();
  };
  const leavePage = () => void run();
  globalThis.document?.addEventListener('visibilitychange', leave);
  globalThis.window?.addEventListener('pagehide', leavePage);
  adopt(current);
  void run();

  return {
    flush: () => run(),
    isDemo: () => !current.kept && !current.isWanted && chainOf(store.getState().history).documents.length === 1,
    shown: () => {
      const { history, saved } = store.getState();
      const { kept, lock, isWanted, isOwn } = current;
      return { history, kept, lock, isWanted, saved, isOwn };
    },
    show: ({ history, kept, lock, isWanted, saved, notice, told, isOwn = kept !== null }, isSame = false) => {
      const { id } = history.present;
      const isElsewhere = notice?.kind === 'elsewhere';
      const remains = new Set([...history.past, ...history.future].map(({ document }) => document.id));
      if (current.id !== id && remains.has(current.id)) aside.set(current.id, current);
      else letGo(current, lock);
      for (const [other, one] of aside) {
        if (other !== id && remains.has(other)) continue;
        letGo(one, lock);
        aside.delete(other);
      }
      current = adopt({ id, kept, lock, saved, isWanted, isElsewhere, isOwn });
      noteOpen(current.id);
      store.setState((state) => ({
        ...(isSame ? withHistory(state, history) : withProject(state, history)),
        saved,
        told: noticeTold(told),
        keeping: {
          ...state.keeping,
          state: isElsewhere ? 'elsewhere' : kept ? 'kept' : 'nothing',
          document: kept?.documents[kept.position] ?? (isElsewhere ? history.present : null),
          notice,
        },
      }));
    },
    forget: () => {
      const before = current;
      current = { ...current, kept: null, isWanted: false, isElsewhere: true, isOwn: false };
      return () => {
        current = before;
        void run();
      };
    },
    stop: () => {
      unfollow();
      clearTimeout(resting);
      clearTimeout(telling);
      for (const one of [current, ...aside.values()]) one.lock?.release();
      globalThis.document?.removeEventListener('visibilitychange', leave);
      globalThis.window?.removeEventListener('pagehide', leavePage);
    },
  };
}

/** A project that came by a step of the history. */
const newcomer = (id: string): Current => ({
  id,
  kept: null,
  lock: null,
  saved: null,
  isWanted: true,
  isElsewhere: false,
  isOwn: false,
});

const isElsewhere = ({ keeping }: AppState): boolean => keeping.state === 'elsewhere';
