import type { SurfaceId } from '../engine/surface';

const WORDS: { readonly [S in SurfaceId]: string } = {
  counter: 'counter',
  'island-counter': 'island counter',
  floor: 'floor',
  'base-fronts': 'base fronts',
  'wall-fronts': 'wall-cabinet fronts',
  'tall-fronts': 'tall fronts',
  'island-fronts': 'island fronts',
  plinth: 'plinth',
  backsplash: 'backsplash',
  upstand: 'upstand',
  wall: 'wall',
  ceiling: 'ceiling',
  hardware: 'hardware',
  sink: 'sink',
  tap: 'tap',
  appliance: 'appliance',
  frame: 'window and door frames',
};

/** The surface in plain words, in lower case, for use within a sentence. */
export const surfaceWords = (surface: SurfaceId): string => WORDS[surface];
