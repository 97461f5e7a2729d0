import { useEffect, useState } from 'react';
import type { Finish } from '../../model/project';
import { finishFacts, knownFacts } from './finish-facts';

/** Works out the facts of finishes a few at a time, so that the list scrolls meanwhile; renders again as they come. */
export function useFacts(finishes: readonly Finish[]): void {
  const [, setDone] = useState(0);
  useEffect(() => {
    const missing = finishes.filter((finish) => knownFacts(finish) === null);
    let timer = 0;
    const next = () => {
      const until = performance.now() + 8;
      while (missing.length > 0 && performance.now() < until) finishFacts(missing.shift()!);
      setDone((done) => done + 1);
      if (missing.length > 0) timer = window.setTimeout(next, 16);
    };
    if (missing.length > 0) timer = window.setTimeout(next, 0);
    return () => window.clearTimeout(timer);
  }, [finishes]);
}
