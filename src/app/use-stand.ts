import { useEffect, useState } from 'react';
import type { Assessment } from '../engine/judge/assessment';
import type { StandReading } from '../kitchen/study/stand-reading';
import { useApp } from './context';

/**
 * A finish as a sample flat and upright on the worktop; undefined until it is worked out, null where it cannot be told.
 * Asked for again with every new assessment, when the workers have the room and light it was made from.
 */
export function useStand(assessment: Assessment, finish: string): StandReading | null | undefined {
  const { readStand } = useApp();
  const { option } = assessment;
  const [answer, setAnswer] = useState<{ readonly finish: string; readonly stand: StandReading | null }>();
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new assessment means new light
  useEffect(() => {
    let isWanted = true;
    void readStand(option, finish).then((stand) => {
      if (isWanted) setAnswer({ finish, stand });
    });
    return () => {
      isWanted = false;
    };
  }, [readStand, option, finish, assessment]);
  return answer?.finish === finish ? answer.stand : undefined;
}
