import type { Kitchen, RunWall } from '../kitchen';

export type Extent = readonly [low: number, high: number];

/** A rectangle before a wall, given along it and away from it, on the plan: mm from the front left corner. */
export function beforeWall(
  { room }: Pick<Kitchen, 'room'>,
  wall: RunWall,
  along: Extent,
  away: Extent,
): { readonly x: Extent; readonly y: Extent } {
  switch (wall) {
    case 'left':
      return { x: away, y: along };
    case 'right':
      return { x: [room.width - away[1], room.width - away[0]], y: along };
    case 'back':
      return { x: along, y: [room.depth - away[1], room.depth - away[0]] };
  }
}
