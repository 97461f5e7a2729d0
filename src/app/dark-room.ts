import { daylightOf } from '../kitchen/study/daylight-of';
import type { Kitchen } from '../model/kitchen';
import type { Setting } from '../model/project';

/**
 * Why a room is dark in a setting: nothing is on, or what is on is daylight and there is none (by night, or behind a closed
 * blind). Null where some light shines.
 */
export type Darkness = 'nothing-on' | 'no-daylight';

/** Whether nothing shines in a setting, and why. */
export function darknessOf(kitchen: Kitchen, { daylight, lamps }: Setting): Darkness | null {
  if (kitchen.fixtures.some(({ group }) => lamps[group].level > 0)) return null;
  if (!daylight) return 'nothing-on';
  const outdoors = daylightOf(kitchen, daylight);
  const shines = outdoors !== null && outdoors.sky_lx + outdoors.sun_lx > 0;
  return shines && daylight.blind > 0 && kitchen.openings.length > 0 ? null : 'no-daylight';
}
