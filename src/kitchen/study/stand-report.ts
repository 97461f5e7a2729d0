import { type Result, success } from '../../engine/result';
import type { Project } from '../../model/project';
import { studyOption } from './assess-option';
import { laidSample } from './lay-sample';
import { lightOf, type SurfaceInLight } from './light-report';
import { adoptedWhite, settingTemperature } from './setting-light';
import { readStand, type StandReading } from './stand-reading';

/** A finish flat against upright in an option's room, for `upstand light --stand`. */
export interface StandReport {
  readonly project: string;
  readonly option: string;
  readonly setting: { readonly id: string; readonly cct_k: number | null; readonly duv: number | null };
  /** Null where the worktop is dark. */
  readonly stand: StandReading | null;
  /** As `upstand light` gives them without a sample; where they were asked for. */
  readonly surfaces?: readonly SurfaceInLight[];
}

/** Solves the option under the setting and reads a finish of the library on its worktop. */
export function standReport(
  project: Project,
  optionId: string,
  settingId: string,
  finishId: string,
  withSurfaces: boolean,
): Result<StandReport> {
  const finish = laidSample(project, finishId);
  if (!finish.ok) return finish;
  const found = studyOption(project, optionId, settingId);
  if (!found.ok) return found;
  const { study, solved, setting } = found.value;
  return success({
    project: project.id,
    option: optionId,
    setting: { id: settingId, ...settingTemperature(adoptedWhite(setting, study.worktopLight)) },
    stand: readStand(study, { solved }, setting, finish.value),
    ...(withSurfaces ? { surfaces: lightOf(project, found.value).surfaces } : {}),
  });
}
