import { type Result, success } from '../../engine/result';
import type { Project, Setting } from '../../model/project';
import { basisUnder, type RoomStudy, refineBasis, studyBasisNow, studyReadings } from './room-study';
import { settingLight } from './setting-light';
import type { StudiedSetting } from './shortlist-in-place';

/** The room of a project studied under each of some settings; each sky is worked out once. For the command line and tests. */
export function studySettings(project: Project, settings: readonly Setting[]): Result<readonly StudiedSetting[]> {
  const lights = [];
  for (const setting of settings) {
    const light = settingLight(project, setting);
    if (!light.ok) return light;
    lights.push({ name: setting.name, light: light.value });
  }
  const night = finished(refineBasis(studyBasisNow(project, null)));
  const bySky = new Map<string, RoomStudy>();
  let latest: RoomStudy | undefined;
  const studied = lights.map(({ name, light }): StudiedSetting => {
    const sky = light.daylight?.key ?? '';
    const study = bySky.get(sky) ?? studyReadings(finished(basisUnder(night, light.daylight)), latest);
    bySky.set(sky, study);
    latest = study;
    return { name, light, study };
  });
  return success(studied);
}

function finished<T>(steps: Generator<unknown, T>): T {
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}
