import { basisUnder, type RoomStudy, studyReadings } from '../kitchen/study/room-study';
import { settingLight } from '../kitchen/study/setting-light';
import type { StudiedSetting } from '../kitchen/study/shortlist-in-place';
import type { InSlices, Job } from './job';

/** Rooms under the skies of settings, by the nodes they share. */
const studies = new WeakMap<object, Map<string, RoomStudy>>();
/** Skies kept of a room, the oldest goes first: somebody who moves the hour makes one after the other. */
const MOST_SKIES = 12;

/**
 * The room under the sky of a setting, whichever is on screen, once its light is final; null when something newer came in
 * between. Each of the last skies is worked out once.
 */
export function* underSky({ show, room, stale }: Job, id: string): InSlices<StudiedSetting | null> {
  const setting = show.project.settings.find((one) => one.id === id);
  const light = setting && settingLight(show.project, setting);
  if (!setting || !light?.ok) return null;
  // A first picture's light is not what answers rest on.
  while (!room.isFinal) {
    if (stale()) return null;
    yield null;
  }
  const sky = light.value.daylight;
  const { basis, study } = room;
  if (!sky || sky.key === basis.outdoors) return { name: setting.name, light: light.value, study };
  const known = studies.get(basis.nodes) ?? new Map<string, RoomStudy>();
  studies.set(basis.nodes, known);
  let under = known.get(sky.key);
  if (!under) {
    const steps = basisUnder(basis, sky);
    let step = steps.next();
    for (; !step.done; step = steps.next()) {
      if (stale()) return null;
      yield null;
    }
    under = studyReadings(step.value, study);
    known.set(sky.key, under);
    if (known.size > MOST_SKIES) known.delete(known.keys().next().value!);
    yield null;
  }
  return { name: setting.name, light: light.value, study: under };
}
