import { useEffect, useState, useSyncExternalStore } from 'react';
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
