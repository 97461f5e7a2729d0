import type { JudgeInput } from '../../engine/judge/input';
import { type Result, success } from '../../engine/result';
import type { Project } from '../../model/project';
import { judgeInput } from './readings';
import type { RoomStudy } from './room-study';
import { layScheme } from './scheme';
import type { SettingLight } from './setting-light';
import { solveBurning } from './solve-burning';

/**
 * What an option would read in a room that is studied already: its light is solved anew for the groups that burn, all of it, so that
 * a change is judged as it would be once made. `study` must be under the setting's own outdoors. Without tint sources,
 * which take longer; with what plausible curves read if `curves` says so, for `holdsIn`. Fails where a finish cannot be laid.
 */
export function judgeTried(
  project: Project,
  option: string,
  study: RoomStudy,
  setting: SettingLight,
  curves = false,
): Result<JudgeInput> {
  const scheme = layScheme(project, option, study.room.surfaces);
  if (!scheme.ok) return scheme;
  const noTints = curves ? study.surfaceLights.map(() => []) : null;
  return success(judgeInput(project, study, solveBurning(study, scheme.value, setting), setting, noTints));
}
