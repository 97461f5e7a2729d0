import { useEffect, useState } from 'react';
import type { CarriedLook } from '../kitchen/carry/carry-over';
import type { CopiedLook } from '../model/look';
import { useApp, useAppState } from './context';
import { projectOf, shownOption } from './state';

type Carried = CarriedLook | 'waiting' | null;

/**
 * A look carried to the option on screen; `waiting` while it is worked out, null where it cannot be told. Asked for once the findings
 * are held, when the workers have the document it belongs to; what would help comes later and is not waited for.
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
  const [answer, setAnswer] = useState<{ readonly to: object; readonly carried: CarriedLook | null } | null>(null);
  const [asked, setAsked] = useState<object | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another document or setting makes another answer
  useEffect(() => {
    if (look === null || !isReady) return setAsked(null);
    const question = {};
    setAsked(question);
    let isWanted = true;
    void carryLook({ option, look, asIs }).then((carried) => {
      if (isWanted) setAnswer({ to: question, carried });
    });
    return () => {
      isWanted = false;
    };
  }, [carryLook, look, option, asIs, isReady, project, setting]);
  return asked !== null && answer?.to === asked ? answer.carried : 'waiting';
}
