import { spoken } from './spoken';

/** Words of the drawings that carry the schedule's tags. */
export const DRAWINGS = spoken({
  intro: 'Tags are those of the schedule. Not to scale for cutting: what is made is measured on site.',
  notDrawn: (items: string) => `Not drawn: ${items}.`,
  walls: { back: 'Back wall', left: 'Left wall', right: 'Right wall', front: 'Wall of the door' },
  island: 'Island, seen from its seats',
} as const);
