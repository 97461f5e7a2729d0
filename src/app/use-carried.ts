import { useEffect, useState } from 'react';
import type { Problem } from '../engine/result';
import type { CarriedLook } from '../kitchen/carry/carry-over';
import type { CopiedLook } from '../model/look';
import { useApp, useAppState } from './context';
import { projectOf, shownOption } from './state';

type Carried = CarriedLook | Problem | 'waiting' | null;

/** What was shown anew in between is asked for again, this much later and so often; then it cannot be told. */
const AGAIN_MS = 1000;
const MOST_TIMES = 4;

/**
 * A look carried to the option on screen; `waiting` while it is worked out, null where it cannot be told, or what is wrong. Asked for
 * once the findings are held, when the workers have the document it belongs to; what would help comes later and is not waited for.
 */
export function useCarried(look: CopiedLook | string | null, asIs: boolean): Carried {
  const { carryLook } = useApp();
  const option = useAppState((state) => shownOption(state).id);
  const project = useAppState(projectOf);
  const setting = useAppState((state) => state.setting);
  const isReady = useAppState((state) => {
    const { status = 'pending' } = state.assessments[option] ?? {};
    return status !== 'pending' && !state.stale.includes(option);
  });
  const [answer, setAnswer] = useState<{ readonly to: object; readonly carried: CarriedLook | Problem | null } | null>(
    null,
  );
  const [asked, setAsked] = useState<object | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another document or setting makes another answer
  useEffect(() => {
    if (look === null || !isReady) return setAsked(null);
    const question = {};
    setAsked(question);
    let isWanted = true;
    let timer = 0;
    const ask = (times: number) =>
      void carryLook({ option, look, asIs }).then((found) => {
        if (!isWanted) return;
        if (found) setAnswer({ to: question, carried: found.ok ? found.value : found.problem });
        else if (times < MOST_TIMES) timer = window.setTimeout(ask, AGAIN_MS, times + 1);
        else setAnswer({ to: question, carried: null });
      });
    ask(1);
    return () => {
      isWanted = false;
      clearTimeout(timer);
    };
  }, [carryLook, look, option, asIs, isReady, project, setting]);
  return asked !== null && answer?.to === asked ? answer.carried : 'waiting';
}
