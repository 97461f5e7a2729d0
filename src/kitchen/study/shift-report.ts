import { type Result, success } from '../../engine/result';
import type { Project } from '../../model/project';
import { type FinishInLights, finishInLights } from './finish-in-lights';
import { laidSample } from './lay-sample';
import { studyBasisNow } from './room-study';
import { worktopLights } from './worktop-lights';

/** A finish of a project's library under each of its settings, for `upstand shift`. */
export interface ShiftReport extends FinishInLights {
  readonly project: string;
}

/** Builds the room for what falls on its worktop; the finish is taken as it is, without a joint. */
export function shiftReport(project: Project, finishId: string, besideId: string | null): Result<ShiftReport> {
  const finish = laidSample(project, finishId);
  if (!finish.ok) return finish;
  const beside = besideId === null ? success(null) : laidSample(project, besideId);
  if (!beside.ok) return beside;
  const lights = worktopLights(project, studyBasisNow(project, null));
  if (!lights.ok) return lights;
  return success({ project: project.id, ...finishInLights(finish.value, lights.value, beside.value) });
}
