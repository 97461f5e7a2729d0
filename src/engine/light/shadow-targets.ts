import { inGroupsOfFour } from './kernel/groups';
import type { Targets } from './kernel/types';

/** Points, x, y and z of each, as targets of shadow rays, in the same order. */
export function shadowTargets(points: Float64Array): Targets {
  const count = points.length / 3;
  const length = (count + 3) & ~3;
  const groups = new Float64Array(3 * length);
  for (let k = 0; k < length; k++) {
    const from = 3 * Math.min(k, count - 1);
    const at = inGroupsOfFour(k);
    for (let axis = 0; axis < 3; axis++) groups[at + 4 * axis] = points[from + axis]!;
  }
  return { count, groups, blocked: new Int32Array(length) };
}
