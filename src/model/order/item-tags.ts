import { SURFACES, type SurfaceId } from '../../engine/surface';

/**
 * The tag each surface has on elevations and in the schedule; ours: two letters of what it is, and a number. An item of several surfaces has that
 * of the first. Tags never change, so that an ID means the same place in every revision.
 */
export const TAG_OF: { readonly [S in SurfaceId]: string } = {
  counter: 'CT1',
  'island-counter': 'CT2',
  upstand: 'CT3',
  floor: 'FL1',
  'base-fronts': 'FR1',
  'wall-fronts': 'FR2',
  'tall-fronts': 'FR3',
  'island-fronts': 'FR4',
  plinth: 'FR5',
  backsplash: 'BS1',
  wall: 'WL1',
  ceiling: 'CL1',
  frame: 'WF1',
  hardware: 'HW1',
  sink: 'SK1',
  tap: 'TP1',
  appliance: 'AP1',
};

/** The tag of what fills the joints of a surface. */
export const groutTag = (surface: SurfaceId): string => `${TAG_OF[surface]}G`;

const KNOWN: ReadonlySet<string> = new Set(SURFACES.flatMap((surface) => [TAG_OF[surface], groutTag(surface)]));

/** Does the text name an item there may be? */
export const isItemTag = (text: string): boolean => KNOWN.has(text);

/** Tags of things no surface shows: X and a number. */
export const isExtraTag = (text: string): boolean => /^X[1-9]\d{0,3}$/.test(text);
