import { useEffect, useState } from 'react';
import type { Shortlist } from '../engine/judge/shortlist/types';
import type { Wish } from '../engine/judge/shortlist/wish';
import type { SurfaceId } from '../engine/surface';
import { isSameOrder, orderOf, type ShortlistOrder } from '../ui/drawer/shortlist-order';
import type { ShortlistView } from '../ui/drawer/shortlist-view';
import { useApp, useAppState } from './context';
import { followShortlist } from './shortlist-follower';
import { type AppState, projectOf, shownOption, shownSetting } from './state';

interface Found {
  /** Which opening of which drawer it is of. */
  readonly key: string;
  /** Null: nothing can be told for now. */
  readonly list: Shortlist | null;
  readonly wishes: readonly Wish[];
  readonly order: ShortlistOrder;
  readonly isJudging: boolean;
}

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
  const { store, readShortlist, readWhy } = useApp();
  const project = useAppState(projectOf);
  const option = useAppState(shownOption).id;
  const setting = useAppState(shownSetting).id;
  const key = `${surface}|${opened}|${option}`;
  const [found, setFound] = useState<Found | null>(null);
  useEffect(() => {
    if (!isWanted) return;
    let isCurrent = true;
    let stop = () => {};
    void followShortlist({
      read: (where) => readShortlist({ option, surface, wishes, setting: where }),
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
          const isSame = before?.key === key && before.wishes === wishes && before.list !== null;
          return { key, list, wishes, order: isSame || !list ? (before?.order ?? []) : orderOf(list), isJudging };
        }),
    });
    return () => {
      isCurrent = false;
      stop();
    };
  }, [store, readShortlist, surface, option, setting, project, wishes, key, isWanted]);
  if (!isWanted || found?.key !== key) return null;
  const { list, order, isJudging } = found;
  if (!list) return 'untold';
  const now = orderOf(list);
  return {
    list,
    order,
    isOrderOld: !isJudging && !isSameOrder(order, now),
    isJudging,
    onOrderAgain: () => setFound({ ...found, order: now }),
    readWhy: (finish) => readWhy(option, surface, finish),
  };
}
