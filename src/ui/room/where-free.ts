import { checkKitchen } from '../../model/check-kitchen';
import type { Fixture, PlanPoint } from '../../model/fixture';
import type { Kitchen } from '../../model/kitchen';
import { isPlaced } from './new-fixture';

/** Places are tried this far apart, and new lamps keep farther from each other than that, mm. */
const STEP_MM = 250;
const APART_MM = 700;

/**
 * New lamps as they are where they fit, else at places that are free of other lamps, row by row from the front; as many as there is
 * room for. Where there is none they come back as they are, for the kitchen's checks to say why.
 */
export function whereFree(kitchen: Kitchen, made: Fixture): Fixture {
  const fits = (fixture: Fixture) =>
    checkKitchen({ ...kitchen, fixtures: [...kitchen.fixtures, fixture] }, 'kitchen').length === 0;
  if (!isPlaced(made) || fits(made)) return made;
  const at: PlanPoint[] = [];
  const { width, depth } = kitchen.room;
  for (let y = STEP_MM; y < depth && at.length < made.count; y += STEP_MM) {
    for (let x = STEP_MM; x < width && at.length < made.count; x += STEP_MM) {
      if (at.some(([ax, ay]) => Math.hypot(ax - x, ay - y) < APART_MM)) continue;
      const place: PlanPoint = [x, y];
      if (fits({ ...made, count: at.length + 1, at: [...at, place] })) at.push(place);
    }
  }
  return at.length > 0 ? { ...made, count: at.length, at } : made;
}
