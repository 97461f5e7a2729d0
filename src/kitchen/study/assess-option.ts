import type { Assessment } from '../../engine/judge/assessment';
import { holdsIn } from '../../engine/judge/holds';
import { judge } from '../../engine/judge/judge';
import { failure, type Result, success } from '../../engine/result';
import { SURFACES } from '../../engine/surface';
import { GROUPS, type Project, type Setting } from '../../model/project';
import { judgeInput } from './readings';
import { findRepairs } from './repairs/find-repairs';
import type { JudgedOption } from './repairs/judged-option';
import { otherSettings, skiesOf } from './repairs/other-settings';
import { type RoomStudy, studyRoomNow } from './room-study';
import { layScheme } from './scheme';
import { type SettingLight, settingLight } from './setting-light';
import { beginScheme, type SolvedScheme, solveSchemeGroup } from './solved-scheme';
import { tintsOf } from './tints';

/** An option solved under a setting, everything at once. */
export interface OptionStudy {
  readonly study: RoomStudy;
  readonly solved: SolvedScheme;
  readonly setting: SettingLight;
}

/** Solves an option of a project under one of its settings in one go; for the command line and tests. */
export function studyOption(project: Project, optionId: string, settingId: string): Result<OptionStudy> {
  const setting = findSetting(project, settingId);
  if (!setting.ok) return setting;
  const light = settingLight(project, setting.value);
  if (!light.ok) return light;
  const scheme = layScheme(project, optionId, SURFACES);
  if (!scheme.ok) return scheme;
  const study = studyRoomNow(project, light.value.daylight);
  const solved = beginScheme(scheme.value, GROUPS.length);
  GROUPS.forEach((_, group) => {
    if (light.value.levels[group]! > 0) solveSchemeGroup(study, solved, group);
  });
  return success({ study, solved, setting: light.value });
}

/** The assessment of an option under a setting with how firmly its findings stand, without what would help: status "held". */
export function heldOption(project: Project, optionId: string, settingId: string): Result<JudgedOption> {
  const found = studyOption(project, optionId, settingId);
  if (!found.ok) return found;
  const { study, solved, setting } = found.value;
  const input = judgeInput(project, study, solved, setting, tintsOf(study, solved, setting));
  const option = project.options.find(({ id }) => id === optionId)!;
  return success({ project, option, study, solved, setting, input, held: holdsIn(input, judge(input)) });
}

/** The assessment of an option under a setting, complete: status "done". */
export function assessOption(project: Project, optionId: string, settingId: string): Result<Assessment> {
  const judged = heldOption(project, optionId, settingId);
  if (!judged.ok) return judged;
  const steps = findRepairs(judged.value, otherSettings(project, settingId, skiesOf(judged.value.study)));
  for (;;) {
    const step = steps.next();
    if (step.done) return success(step.value);
  }
}

export function findSetting(project: Project, id: string): Result<Setting> {
  const setting = project.settings.find((candidate) => candidate.id === id);
  return setting
    ? success(setting)
    : failure({
        code: 'unknown-setting',
        text: `There is no setting ${id} in this project.`,
        at: { path: 'settings' },
        remedy: `Choose one of: ${project.settings.map((candidate) => candidate.id).join(', ')}.`,
      });
}
