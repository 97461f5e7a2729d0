import type { Kitchen, OpenSide } from '../../model/kitchen';

/** Height of a wide opening as it is often built, how deep a next room is, and least free wall beside it, mm (our judgment). */
const HEIGHT = 2200;
const NEXT_DEPTH = 3500;
const BESIDE = 200;
const WIDTHS = [2400, 1800, 1200] as const;

/** Openings to a next room worth trying, widest first: at the front of the side walls, at either end of the door's wall. */
export function openSides({ room }: Kitchen): readonly OpenSide[] {
  const common = { height: Math.min(HEIGHT, room.height - BESIDE), next_depth: NEXT_DEPTH };
  return WIDTHS.flatMap((wide) => [
    { ...common, wall: 'front' as const, from: BESIDE, to: BESIDE + wide },
    { ...common, wall: 'front' as const, from: room.width - BESIDE - wide, to: room.width - BESIDE },
    { ...common, wall: 'right' as const, from: BESIDE, to: BESIDE + wide },
    { ...common, wall: 'left' as const, from: BESIDE, to: BESIDE + wide },
  ]);
}
