import { useEffect, useState } from 'react';
import type { Shortlist } from '../engine/judge/shortlist/types';
import type { SurfaceId } from '../engine/surface';
import type { ShortlistView } from '../ui/drawer/ShortlistList';
import { isSameOrder, orderOf, type ShortlistOrder } from '../ui/drawer/shortlist-order';
import { useApp, useAppState } from './context';
import { projectOf, shownOption, shownSetting } from './state';

/** While the worker has nothing to answer from. */
const ASK_AGAIN_MS = 400;

interface Found {
  /** Which opening of which drawer it is of. */
  readonly key: string;
  readonly list: Shortlist;
  readonly order: ShortlistOrder;
  readonly isJudging: boolean;
}

/**
 * The shortlist of a surface: as samples at once, then with the best judged in their place, the setting on screen first. Its order
 * is that of the opening until one asks for it anew. Null until it is there, and where none is wanted.
 */
export function useShortlist(surface: SurfaceId, opened: number, isWanted: boolean): ShortlistView | null {
  const { readShortlist, readWhy } = useApp();
  const project = useAppState(projectOf);
  const option = useAppState(shownOption).id;
  const setting = useAppState(shownSetting).id;
  const key = `${surface}|${opened}|${option}`;
  const [found, setFound] = useState<Found | null>(null);
  useEffect(() => {
    if (!isWanted) return;
    let isCurrent = true;
    let timer = 0;
    const settings = [setting, ...project.settings.map(({ id }) => id).filter((id) => id !== setting)];
    const take = (list: Shortlist, isJudging: boolean) =>
      setFound((before) => ({
        key,
        list,
        order: before?.key === key ? before.order : orderOf(list),
        isJudging,
      }));
    const ask = async (next: number): Promise<void> => {
      const list = await readShortlist(option, surface, next < 0 ? null : settings[next]!);
      if (!isCurrent) return;
      if (!list) {
        timer = window.setTimeout(() => void ask(next), ASK_AGAIN_MS);
        return;
      }
      const hasMore = list.held_against.length > 0 && next + 1 < settings.length;
      take(list, hasMore);
      if (hasMore) await ask(next + 1);
    };
    void ask(-1);
    return () => {
      isCurrent = false;
      window.clearTimeout(timer);
    };
  }, [readShortlist, surface, option, setting, project, key, isWanted]);
  if (!isWanted || found?.key !== key) return null;
  const { list, order, isJudging } = found;
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
