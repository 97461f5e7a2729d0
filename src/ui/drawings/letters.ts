import type { DrawingId } from '../../kitchen/drawings/types';

/** What drawings are called by, so that plan and elevations refer to each other: the walls round from the back one to the right, then the island. */
export const LETTERS = {
  back: 'A',
  right: 'B',
  front: 'C',
  left: 'D',
  'island-seats': 'E',
  'island-units': 'F',
} as const satisfies { readonly [I in Exclude<DrawingId, 'plan'>]: string };

const { back, right, front, left } = LETTERS;
export const WALL_LETTERS = { back, right, front, left } as const;
