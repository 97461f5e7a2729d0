import { useEffect, useLayoutEffect, useState, useSyncExternalStore } from 'react';
import { sourceOf } from '../../model/offered-finishes';
import type { Finish } from '../../model/project';
import { finishFacts } from './finish-facts';
import { factsVersion, foundFacts, listenToFacts } from './known-facts';

/**
 * Works out the facts of a project's own finishes a few at a time, so that the list scrolls meanwhile; those of libraries come from a
 * worker. Renders again as they come.
 * @returns a number that grows with what is known
 */
export function useFacts(finishes: readonly Finish[]): number {
  const [done, setDone] = useState(0);
  const told = useSyncExternalStore(listenToFacts, factsVersion);
  useEffect(() => {
    const missing = finishes.filter((finish) => sourceOf(finish) === finish && !foundFacts(finish)).reverse();
    let timer = 0;
    const next = () => {
      const until = performance.now() + 8;
      while (missing.length > 0 && performance.now() < until) finishFacts(missing.pop()!);
      setDone((before) => before + 1);
      if (missing.length > 0) timer = window.setTimeout(next, 16);
    };
    if (missing.length > 0) timer = window.setTimeout(next, 0);
    return () => window.clearTimeout(timer);
  }, [finishes]);
  return done + told;
}

/** So long the finishes in sight hold up a frame at most, ms: the rest of them follow with the next. */
const AT_ONCE_MS = 6;

/**
 * Works out the facts of finishes that are in sight and that nobody worked out yet, in the frame that shows them; renders again as facts
 * come, from wherever.
 */
export function useFactsInSight(finishes: readonly Finish[]): void {
  const [, setDone] = useState(0);
  useSyncExternalStore(listenToFacts, factsVersion);
  useLayoutEffect(() => {
    const missing = finishes.filter((finish) => !foundFacts(finish));
    if (missing.length === 0) return;
    const until = performance.now() + AT_ONCE_MS;
    do finishFacts(missing.pop()!);
    while (missing.length > 0 && performance.now() < until);
    if (missing.length === 0) return setDone((before) => before + 1);
    const next = requestAnimationFrame(() => setDone((before) => before + 1));
    return () => cancelAnimationFrame(next);
  });
}

/** Whether facts of some finishes are still to come, from a worker or bit by bit from here; false where nobody wants to know. */
export function useNear(finishes: readonly Finish[], isAsked: boolean): boolean {
  useFacts(isAsked ? finishes : NONE);
  return isAsked && finishes.some((finish) => !foundFacts(finish));
}

const NONE: readonly Finish[] = [];
