import type { Assessment } from '../../../engine/judge/assessment';
import type { JudgeInput } from '../../../engine/judge/input';
import type { Option, Project } from '../../../model/project';
import type { RoomStudy } from '../room-study';
import type { SettingLight } from '../setting-light';
import type { SolvedScheme } from '../solved-scheme';

/** What the search starts from: an option that is judged completely, in a room under a setting. */
export interface JudgedOption {
  readonly project: Project;
  readonly option: Option;
  readonly study: RoomStudy;
  readonly setting: SettingLight;
  readonly solved: SolvedScheme;
  readonly input: JudgeInput;
  /** With how firmly its findings stand. */
  readonly held: Assessment;
}

/** Another setting of the project, and how one comes by its room; null where that is no longer wanted. */
export interface OtherSetting {
  readonly setting: SettingLight;
  readonly study: () => Generator<unknown, RoomStudy | null>;
}
