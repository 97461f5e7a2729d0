import { useEffect, useState } from 'react';
import type { Assessment } from '../engine/judge/assessment';
import type { SurfaceId } from '../engine/surface';
import type { FinishInLights } from '../kitchen/study/finish-in-lights';
import { useApp } from './context';

/**
 * The finish on a surface in each light of the project, alone or beside that of another; null until it is worked out.
 * Asked for again with every new assessment, when the workers have the finishes and lamps it was made from.
 */
export function useInLights(
  assessment: Assessment,
  surface: SurfaceId,
  beside: SurfaceId | null,
): FinishInLights | null {
  const { readLights } = useApp();
  const { option } = assessment;
  const key = `${option}|${surface}|${beside}`;
  const [answer, setAnswer] = useState<{ readonly key: string; readonly found: FinishInLights | null } | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new assessment means new finishes or lamps
  useEffect(() => {
    let isWanted = true;
    void readLights(option, surface, beside).then((found) => {
      if (isWanted) setAnswer({ key, found });
    });
    return () => {
      isWanted = false;
    };
  }, [readLights, option, surface, beside, key, assessment]);
  return answer?.key === key ? answer.found : null;
}
