import type { Wall } from '../../model/kitchen';

/** A point or direction on the plan as it is drawn: x to the right, y downward. */
export type PlanXy = readonly [x: number, y: number];

const RADIANS = Math.PI / 180;

/** Bearing of each wall's outside against that of the back wall, clockwise. */
const TURN_DEG: { readonly [W in Wall]: number } = { back: 0, right: 90, front: 180, left: 270 };

/** The bearing a wall faces outward, degrees from north. */
export const wallBearing = (wall: Wall, bearing_deg: number): number => (bearing_deg + TURN_DEG[wall]) % 360;

/** Towards a compass direction on a plan whose top faces `bearing_deg`. Length 1. */
export function towards(azimuth_deg: number, bearing_deg: number): PlanXy {
  const angle = (azimuth_deg - bearing_deg) * RADIANS;
  return [Math.sin(angle), -Math.cos(angle)];
}

/** The bearing of the plan's top when north lies in this direction from its middle; whole degrees, 0-359. */
export function bearingOfNorth([x, y]: PlanXy): number {
  const north_deg = Math.atan2(x, -y) / RADIANS;
  return wrapDegrees(Math.round(-north_deg));
}

/** Whole turns taken off: 0 up to 360. */
export const wrapDegrees = (degrees: number): number => ((degrees % 360) + 360) % 360;
