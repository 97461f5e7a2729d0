import { useEffect, useState } from 'react';
import type { Assessment } from '../engine/judge/assessment';
import type { Narrowing } from '../kitchen/study/narrowing';
import type { Project } from '../model/project';
import { useApp } from './context';

/**
 * What is left of the library for open surfaces; null until it is counted for this option. While a change is worked out, the counts
 * before it stay.
 */
export function useNarrowings(
  project: Project,
  option: string,
  assessment: Assessment | null,
): readonly Narrowing[] | null {
  const { readNarrowings } = useApp();
  const [known, setKnown] = useState<{ project: string; option: string; found: readonly Narrowing[] } | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new assessment means that the worker has the document
  useEffect(() => {
    let isWanted = true;
    void readNarrowings(option).then((found) => {
      if (isWanted && found) setKnown({ project: project.id, option, found });
    });
    return () => {
      isWanted = false;
    };
  }, [readNarrowings, project, option, assessment]);
  return known?.project === project.id && known.option === option ? known.found : null;
}
