import type { Chain, DrawingId, Level } from '../../kitchen/drawings/types';
import { spoken } from './spoken';

/** Words of the drawings that carry the schedule's tags. */
export const DRAWINGS = spoken({
  intro:
    'Measures are taken from the kitchen as it is drawn here, not on site: the installer measures before anything is ordered or cut.',
  units: { mm: 'Lengths are in millimeters.', in: 'Lengths are in inches.' },
  signs:
    'Tags are those of the schedule. A circle with a cross marks where laying starts, its arrow the way the rows run. Dashed is what lies behind or under something, in long dashes what hangs over it; crossed are tall units. A heavy line across a counter is a seam.',
  scale: (words: string) =>
    `Scale ${words} where the paper is printed at 100%; the bar at each drawing holds at any size.`,
  ratio: {
    mm: (ratio: string) => `1 : ${ratio}`,
    in: (ratio: string, inch: string) => `${inch} in = 1 ft (1 : ${ratio})`,
  },
  notDrawn: (items: string) => `Not drawn: ${items}.`,
  names: {
    plan: 'Plan',
    back: 'Back wall',
    right: 'Right wall',
    front: 'Wall of the door',
    left: 'Left wall',
    'island-seats': 'Island, seen from its seats',
    'island-units': 'Island, its working side',
  } satisfies { readonly [I in DrawingId]: string },
  titled: (letter: string, name: string) => `${letter}\u00a0\u00a0${name}`,
  letters: (list: string) => `Elevations: ${list}.`,
  elevation: (letter: string, name: string) => `Elevation ${letter}, ${name}`,
  inWords: 'Tags and measures in words',
  scrolls: (name: string) => `${name}: a drawing that scrolls`,
  tagsAre: (tags: string) => `Tags: ${tags}.`,
  start: (tag: string, how: string) => `Laying of ${tag} starts at the mark, ${how}.`,
  starts: { centered: 'from the middle', corner: 'from the corner' },
  /** Which side of the plan a chain is of. */
  sides: {
    above: (what: string) => `Back wall. ${what}`,
    left: (what: string) => `Left wall. ${what}`,
    right: (what: string) => `Right wall. ${what}`,
    below: (what: string) => `Left to right. ${what}`,
  } satisfies { readonly [S in Chain['side']]: (what: string) => string },
  chains: {
    units: (lengths: string, whole: string) => `Units from left to right: ${lengths}; in all ${whole}.`,
    over: (lengths: string, whole: string) => `What hangs, from left to right: ${lengths}; in all ${whole}.`,
    openings: (lengths: string, whole: string) => `Openings and what is beside them: ${lengths}; in all ${whole}.`,
    heights: (lengths: string, whole: string) => `Heights from the floor up: ${lengths}; in all ${whole}.`,
    whole: (_: string, whole: string) => `Whole length: ${whole}.`,
    run: (lengths: string, whole: string) => `What stands along the wall: ${lengths}; in all ${whole}.`,
    across: (lengths: string, whole: string) => `Across the room: ${lengths}; in all ${whole}.`,
  },
  levels: (levels: string) => `Above the floor: ${levels}.`,
  level: {
    counter: (height: string) => `counter ${height}`,
    'units-below': (height: string) => `underside of the wall cabinets ${height}`,
    'units-above': (height: string) => `top of the wall cabinets ${height}`,
    tall: (height: string) => `top of the tall cabinets ${height}`,
    sill: (height: string) => `sill ${height}`,
    head: (height: string) => `head of the opening ${height}`,
    ceiling: (height: string) => `ceiling ${height}`,
  } satisfies { readonly [L in Level['what']]: (height: string) => string },
  north: 'N',
} as const);
