import { outdoorsAt } from '../../engine/daylight/outdoors';
import type { DaylightSpectra, Outdoors, SunPosition } from '../../engine/daylight/types';
import { rectNormal } from '../../engine/light/rect-bvh';
import type { Vec3 } from '../../engine/light/types';
import type { Kitchen } from '../../model/kitchen';
import type { Daylight } from '../../model/project';
import { windowApertures } from '../parts/window';
import { planKitchen } from '../plan/plan-kitchen';

/** What is outside the windows in a setting. */
export interface DaylightState {
  /** Same key, same outdoors: what its light does in a room need not be worked out again. */
  readonly key: string;
  readonly outdoors: Outdoors;
  readonly spectra: DaylightSpectra;
  readonly sun: SunPosition;
  /** Illuminance of the open horizontal by the sky, and by the sun, lx. */
  readonly sky_lx: number;
  readonly sun_lx: number;
}

/** Moments kept: a day in steps of a quarter of an hour for one place, the clear or the overcast half of it. */
const MOST_STATES = 64;
/** By what the outdoors depend on, last used last; kitchens come as copies, so that no record of theirs can be a key. */
const known = new Map<string, DaylightState>();

/** The outdoors of a setting's daylight; null by night. Worked out once for each site, way its windows look, and moment. */
export function daylightOf(kitchen: Kitchen, daylight: Daylight | null): DaylightState | null {
  if (!daylight) return null;
  const { sky, month, day, hour, sky_lx } = daylight;
  const key = JSON.stringify([sky, month, day, hour, sky_lx ?? null, kitchen.site]);
  const keyWithWindows = JSON.stringify([key, kitchen.openings.map(({ wall, leaves }) => [wall, leaves])]);
  const state = known.get(keyWithWindows) ?? workedOut(kitchen, daylight, key);
  known.delete(keyWithWindows);
  known.set(keyWithWindows, state);
  if (known.size > MOST_STATES) known.delete(known.keys().next().value!);
  return state;
}

function workedOut(kitchen: Kitchen, { sky, month, day, hour, sky_lx }: Daylight, key: string): DaylightState {
  const { latitude_deg, longitude_deg, utc_offset_h, bearing_deg, ground, facing } = kitchen.site;
  const found = outdoorsAt({
    site: { latitude_deg, longitude_deg, utc_offset_h },
    moment: { month, day, hour },
    sky,
    ...(sky_lx === undefined ? {} : { sky_lx }),
    bearing_deg,
    ground,
    facing,
    windowNormals: windowApertures(planKitchen(kitchen)).map(({ rect }) => outward(rectNormal(rect))),
  });
  return { key, ...found };
}

/** Away from the room. */
const outward = ({ axis, sign }: ReturnType<typeof rectNormal>): Vec3 =>
  [0, 1, 2].map((k) => (k === axis ? -sign : 0)) as unknown as Vec3;
