import type { Project } from '../../../model/project';
import type { DaylightState } from '../daylight-of';
import { basisUnder, type RoomStudy, studyReadings } from '../room-study';
import { settingLight } from '../setting-light';
import type { OtherSetting } from './judged-option';

/** The rooms of a kitchen's other skies; each is worked out once. */
export type SkyStudies = Map<string, RoomStudy>;

/** The settings of a project but the one on screen, in a room that is studied under some sky; those with a light unknown are left out. */
export function otherSettings(project: Project, shown: string, study: RoomStudy, known: SkyStudies): OtherSetting[] {
  return project.settings.flatMap((setting): OtherSetting[] => {
    const light = setting.id === shown ? null : settingLight(project, setting);
    if (!light?.ok) return [];
    return [{ setting: light.value, study: () => studyUnder(study, light.value.daylight, known) }];
  });
}

function* studyUnder(study: RoomStudy, state: DaylightState | null, known: SkyStudies): Generator<null, RoomStudy> {
  if (!state || state.key === study.outdoors) return study;
  const before = known.get(state.key);
  if (before) return before;
  const basis = yield* basisUnder(study, state);
  const under = studyReadings(basis, study);
  known.set(state.key, under);
  return under;
}
