import type { SurfaceId } from '../surface';

/** Surfaces large enough to carry the colors or the pattern of a kitchen; a ceiling or a trim is not where one would set them. */
const LARGE: readonly SurfaceId[] = [
  'counter',
  'island-counter',
  'floor',
  'base-fronts',
  'wall-fronts',
  'tall-fronts',
  'island-fronts',
  'backsplash',
  'wall',
];

export const isLarge = (surface: SurfaceId): boolean => LARGE.includes(surface);
