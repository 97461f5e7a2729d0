import { useMemo } from 'react';
import type { PlanEye } from '../ui/room/PlanView';
import { useAppState } from './context';

const MM_PER_M = 1000;

/** The chosen viewpoint on the plan, mm. */
export function usePlanEye(): PlanEye | null {
  const viewpoint = useAppState((state) => state.room?.viewpoints.find((one) => one.id === state.viewpoint) ?? null);
  return useMemo(
    () =>
      viewpoint && {
        eye: [viewpoint.eye[0] * MM_PER_M, viewpoint.eye[1] * MM_PER_M],
        target: [viewpoint.target[0] * MM_PER_M, viewpoint.target[1] * MM_PER_M],
      },
    [viewpoint],
  );
}
