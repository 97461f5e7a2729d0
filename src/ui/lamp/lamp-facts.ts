import { type LampRecord, lampRecord } from '../../engine/lamp/lamp-record';
import type { LampGroup } from '../../model/fixture';
import { LAMP_GROUPS, type Project, type Setting } from '../../model/project';
import { lightOfProject } from '../../model/project-lights';

/** One kind of lamp of a setting: its light, where it hangs, and its figures (null where the light is not known). */
export interface LampFacts {
  readonly light: string;
  readonly groups: readonly LampGroup[];
  readonly record: LampRecord | null;
}

/** The lamps of a setting in groups of the room, each kind once, the one of the ceiling first. */
export function lampsOfSetting(
  project: Pick<Project, 'lamps'>,
  setting: Setting,
  present: readonly LampGroup[] = LAMP_GROUPS,
): readonly LampFacts[] {
  const lights = [...new Set(present.map((group) => setting.lamps[group].light))];
  return lights.map((light) => {
    const spd = lightOfProject(project, light);
    const groups = present.filter((group) => setting.lamps[group].light === light);
    return { light, groups, record: spd.ok ? lampRecord(spd.value) : null };
  });
}
