import type { SunPosition } from '../../engine/daylight/types';
import type { Opening } from '../../model/kitchen';
import { type PlanXy, towards, wallBearing } from './compass';

/** Where the sun falls through a window: from the two ends of the glass on the plan to where it meets the floor. */
export interface SunBeamOnPlan {
  readonly id: string;
  readonly glass: readonly [PlanXy, PlanXy];
  /** The lit patch of floor as if the room had no other walls: nearer edge, farther edge. */
  readonly floor: readonly [PlanXy, PlanXy, PlanXy, PlanXy];
}

interface RoomSize {
  readonly width: number;
  readonly depth: number;
}

/** The ends of an opening on the plan, back wall at the top, mm. */
export function openingEnds({ wall, center, width: wide }: Opening, { width, depth }: RoomSize): [PlanXy, PlanXy] {
  const [from, to] = [center - wide / 2, center + wide / 2];
  switch (wall) {
    case 'left':
      return [
        [0, depth - from],
        [0, depth - to],
      ];
    case 'right':
      return [
        [width, depth - from],
        [width, depth - to],
      ];
    case 'back':
      return [
        [from, 0],
        [to, 0],
      ];
    case 'front':
      return [
        [from, depth],
        [to, depth],
      ];
  }
}

/** The sun through each window it reaches; none where it stands too low, behind the wall, or behind the wall across the way. */
export function sunBeams(
  openings: readonly Opening[],
  room: RoomSize,
  bearing_deg: number,
  { azimuth_deg, elevation_deg }: SunPosition,
): readonly SunBeamOnPlan[] {
  if (elevation_deg <= 0) return [];
  const [sx, sy] = towards(azimuth_deg, bearing_deg);
  const perHeight = 1 / Math.tan((elevation_deg * Math.PI) / 180);
  return openings.flatMap((opening) => {
    const away = Math.abs(((azimuth_deg - wallBearing(opening.wall, bearing_deg) + 540) % 360) - 180);
    if (away >= 90 || elevation_deg <= opening.facing_deg) return [];
    const glass = openingEnds(opening, room);
    const cast = ([x, y]: PlanXy, height: number): PlanXy => [x - sx * height * perHeight, y - sy * height * perHeight];
    const [one, other] = glass;
    const [low, high] = [opening.sill, opening.sill + opening.height];
    return [
      {
        id: opening.id,
        glass,
        floor: [cast(one, low), cast(other, low), cast(other, high), cast(one, high)] as const,
      },
    ];
  });
}
