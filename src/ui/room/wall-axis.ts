import type { Kitchen, Wall } from '../../model/kitchen';

/** How places along a wall lie in its elevation, seen from within, mm. */
interface WallAxis {
  readonly length: number;
  /** From a place along the wall to one from the left end of the elevation, and back. */
  readonly turn: (along: number) => number;
}

/** Left and back wall run to the right as the plan does; right and door wall are seen the other way round. */
export function wallAxis({ room }: Pick<Kitchen, 'room'>, wall: Wall): WallAxis {
  const length = wall === 'left' || wall === 'right' ? room.depth : room.width;
  const isMirrored = wall === 'right' || wall === 'front';
  return { length, turn: (along) => (isMirrored ? length - along : along) };
}
