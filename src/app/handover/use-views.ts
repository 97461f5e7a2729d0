import { useCallback, useEffect, useRef, useState } from 'react';
import { useApp } from '../context';
import { type GatheredView, gatherView, type WantedView } from './gather-views';
import { showForSet } from './show-for-set';

const keyOf = ({ option, setting }: WantedView): string => `${option} ${setting}`;

export interface Views {
  readonly of: (option: string, setting: string) => GatheredView | null;
  /** The one being gathered, null once all are there. */
  readonly next: WantedView | null;
  readonly done: number;
  readonly isStopped: boolean;
  readonly stop: () => void;
  readonly goOn: () => void;
}

/** Gathers views one after the other; what is there already is kept for as long as the set is open. */
export function useViews(wanted: readonly WantedView[]): Views {
  const { store } = useApp();
  const [views, setViews] = useState<ReadonlyMap<string, GatheredView>>(new Map());
  const [isStopped, setStopped] = useState(false);
  const gathered = useRef(views);
  gathered.current = views;

  useEffect(() => {
    const restore = showForSet(store);
    return () => {
      restore();
      for (const { picture } of gathered.current.values()) if (picture) URL.revokeObjectURL(picture);
    };
  }, [store]);

  const next = wanted.find((one) => !views.has(keyOf(one))) ?? null;
  const { option = null, setting = null } = next ?? {};
  useEffect(() => {
    if (option === null || setting === null || isStopped) return;
    const stop = new AbortController();
    const view = { option, setting };
    gatherView(store, view, stop.signal).then(
      (got) => {
        if (!stop.signal.aborted) setViews((before) => new Map(before).set(keyOf(view), got));
      },
      (reason) => {
        if (!stop.signal.aborted) throw reason;
      },
    );
    return () => stop.abort();
  }, [store, option, setting, isStopped]);

  return {
    of: (option, setting) => views.get(keyOf({ option, setting })) ?? null,
    next,
    done: wanted.filter((one) => views.has(keyOf(one))).length,
    isStopped,
    stop: useCallback(() => setStopped(true), []),
    goOn: useCallback(() => setStopped(false), []),
  };
}
