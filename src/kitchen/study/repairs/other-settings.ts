import type { Project } from '../../../model/project';
import type { DaylightState } from '../daylight-of';
import { basisUnder, type RoomStudy, studyReadings } from '../room-study';
import { settingLight } from '../setting-light';
import type { OtherSetting } from './judged-option';

/** What gives the room under the sky of a setting. */
type StudyUnder = (setting: string, sky: DaylightState | null) => Generator<unknown, RoomStudy | null>;

/** The settings of a project but the one on screen; those with a light unknown are left out. */
export const otherSettings = (project: Project, shown: string, studyUnder: StudyUnder): OtherSetting[] =>
  project.settings.flatMap((setting): OtherSetting[] => {
    const light = setting.id === shown ? null : settingLight(project, setting);
    return light?.ok ? [{ setting: light.value, study: () => studyUnder(setting.id, light.value.daylight) }] : [];
  });

/** Rooms under other skies from one that is studied; each sky is worked out once. */
export function skiesOf(study: RoomStudy): StudyUnder {
  const known = new Map<string, RoomStudy>([[study.outdoors, study]]);
  return function* (_, sky) {
    const before = known.get(sky?.key ?? study.outdoors);
    if (before || !sky) return before ?? study;
    const under = studyReadings(yield* basisUnder(study, sky), study);
    known.set(sky.key, under);
    return under;
  };
}
