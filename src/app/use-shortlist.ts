import { useEffect, useMemo, useRef, useState } from 'react';
import type { ShortlistOutline, ShortlistRow } from '../engine/judge/shortlist/types';
import type { Wish } from '../engine/judge/shortlist/wish';
import type { SurfaceId } from '../engine/surface';
import { isSameOrder, orderOf, type ShortlistOrder } from '../ui/drawer/shortlist-order';
import type { ShortlistView } from '../ui/drawer/shortlist-view';
import type { ShortlistAnswer } from '../workers/questions';
import { useApp, useAppState } from './context';
import { shelfOf } from './offered';
import { followShortlist } from './shortlist-follower';
import { type AppState, projectOf, shownOption, shownSetting } from './state';

/** A list as far as it was told. */
interface ToldList extends ShortlistOutline {
  /** The worker's number of it. */
  readonly number: number;
  /** How many finishes it leaves out as yet. */
  readonly pending: number;
  readonly orderNow: ShortlistOrder;
  /** What is said of its finishes, as it comes; of the list before it until then. */
  readonly rows: Map<string, ShortlistRow>;
  readonly rowsBefore: ReadonlyMap<string, ShortlistRow>;
  readonly askedFor: Set<string>;
}

interface Found {
  /** Which opening of which drawer it is of. */
  readonly key: string;
  /** Null: nothing can be told for now. */
  readonly list: ToldList | null;
  readonly wishes: readonly Wish[];
  readonly order: ShortlistOrder;
  /** When the first of it was there. */
  readonly since: number;
  /** Many came after the order was there: they stand behind the others. */
  readonly isFilled: boolean;
  readonly isJudging: boolean;
}

/** Nobody has begun to look through a list that is younger than this, ms. */
const NEW_MS = 1000;
/** From so many on it is not one that somebody typed in, but a library. */
const MANY = 20;

/** What changes as the workers get on. */
const FROM_WORKERS: readonly (keyof AppState)[] = ['room', 'light', 'looks', 'assessments', 'told'];

/**
 * The shortlist of a surface: as samples at once, then with the best judged in their place, the setting on screen first. Its order
 * is that of the opening until one asks for it anew or wishes something else. Null until it is there, and where none is wanted; `untold`
 * where there can be none.
 */
export function useShortlist(
  surface: SurfaceId,
  opened: number,
  wishes: readonly Wish[],
  isWanted: boolean,
): ShortlistView | 'untold' | null {
  const { store, readShortlist, readRows, readWhy } = useApp();
  const project = useAppState(projectOf);
  const shelf = useAppState(shelfOf);
  const option = useAppState(shownOption).id;
  const setting = useAppState(shownSetting).id;
  const key = `${surface}|${opened}|${option}`;
  const [found, setFound] = useState<Found | null>(null);
  const [, setRowsRead] = useState(0);
  const last = useRef<ToldList | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: what is offered has changed: the worker has it
  useEffect(() => {
    if (!isWanted) return;
    let isCurrent = true;
    let stop = () => {};
    const read = async (where: string | null, isWhole: boolean): Promise<ToldList | null> => {
      const known = last.current?.surface === surface ? last.current.number : null;
      const answer = await readShortlist({ option, surface, wishes, setting: where, known, isWhole });
      if (answer) last.current = toldOf(answer, last.current);
      return answer && last.current;
    };
    void followShortlist({
      read,
      settings: [setting, ...project.settings.map(({ id }) => id).filter((id) => id !== setting)],
      changed: () =>
        new Promise((resolve) => {
          stop();
          stop = store.subscribe((state, before) => {
            if (FROM_WORKERS.every((part) => state[part] === before[part])) return;
            stop();
            resolve();
          });
        }),
      isWanted: () => isCurrent,
      take: (list, isJudging) =>
        setFound((before) => {
          const now = { key, list, wishes, isJudging };
          const anew = { ...now, order: list?.orderNow ?? [], since: performance.now(), isFilled: false };
          const isSame = before?.key === key && before.wishes === wishes && before.list !== null;
          if (!before || (list && !isSame)) return anew;
          const { order, since } = before;
          if (!list) return { ...before, ...now };
          // A list that moves under the finger cannot be gone back in.
          const isFilling = newIn(order, list.orderNow) >= MANY;
          if (isFilling && performance.now() - since < NEW_MS) return { ...anew, since };
          return { ...before, ...now, isFilled: before.isFilled || isFilling };
        }),
    });
    return () => {
      isCurrent = false;
      stop();
    };
  }, [store, readShortlist, surface, option, setting, project, shelf, wishes, key, isWanted]);
  const current = found?.key === key ? found : null;
  const isOrderOld = useMemo(
    () =>
      current?.list != null &&
      !current.isJudging &&
      (current.isFilled || !isSameOrder(current.order, current.list.orderNow)),
    [current],
  );
  if (!isWanted || !current) return null;
  const { list, order, isJudging } = current;
  if (!list) return 'untold';
  return {
    list,
    order,
    orderNow: list.orderNow,
    pending: list.pending,
    isOrderOld,
    isFilled: current.isFilled,
    isJudging,
    onOrderAgain: () => setFound({ ...current, order: list.orderNow, isFilled: false }),
    rowOf: (finish) => list.rows.get(finish) ?? list.rowsBefore.get(finish) ?? null,
    askRows: (finishes) => {
      const missing = finishes.filter((id) => !list.rows.has(id) && !list.askedFor.has(id));
      if (missing.length === 0) return;
      for (const id of missing) list.askedFor.add(id);
      void readRows({ option, surface, wishes: current.wishes, known: null, finishes: missing }).then((rows) => {
        for (const row of rows ?? []) list.rows.set(row.finish, row);
        setRowsRead((count) => count + 1);
      });
    },
    readWhy: (finish) => readWhy(option, surface, finish),
  };
}

function newIn(before: ShortlistOrder, now: ShortlistOrder): number {
  const known = new Set(before.map(({ finish }) => finish));
  return now.filter(({ finish }) => !known.has(finish)).length;
}

/** The list of an answer; the same object where it says that it is the one known already. */
function toldOf({ list: number, outline, pending, rows }: ShortlistAnswer, before: ToldList | null): ToldList | null {
  if (!outline) return before;
  return {
    ...outline,
    number,
    pending,
    orderNow: orderOf(outline),
    rows: new Map(rows.map((row) => [row.finish, row])),
    rowsBefore: before?.surface === outline.surface ? new Map([...before.rowsBefore, ...before.rows]) : new Map(),
    askedFor: new Set(),
  };
}
