import type { Viewpoint } from '../engine/light/types';

/** Eyes of people, from seated to tall and standing, mm above the floor. */
export const LEAST_EYE_MM = 900;
export const MOST_EYE_MM = 2000;

const MM_PER_M = 1000;

/** Whose eyes look: those the viewpoint is made for, or one's own standing or seated. */
export type EyesOf = 'place' | 'standing' | 'seated';

/** How high eyes are. One's own heights hold at every viewpoint; a height given at one viewpoint holds there. */
export interface EyeHeights {
  readonly of: EyesOf;
  readonly standing_mm: number;
  readonly seated_mm: number;
  /** By viewpoint id, where it was changed. */
  readonly places_mm: Readonly<Record<string, number>>;
}

/**
 * Standing 1600 mm and seated 1200 mm (common practice for eye-level drawings, no source); people set their own.
 */
export const USUAL_EYES: EyeHeights = { of: 'place', standing_mm: 1600, seated_mm: 1200, places_mm: {} };

/** The height in force at a viewpoint, mm. */
export function eyeHeight_mm(eyes: EyeHeights, viewpoint: Viewpoint): number {
  if (eyes.of === 'standing') return eyes.standing_mm;
  if (eyes.of === 'seated') return eyes.seated_mm;
  return eyes.places_mm[viewpoint.id] ?? Math.round(viewpoint.eye[2] * MM_PER_M);
}

/** The heights with another one for whom they are set now, kept between 900 and 2000 mm. */
export function withEyeHeight(eyes: EyeHeights, viewpoint: Viewpoint, height_mm: number): EyeHeights {
  const height = Math.min(MOST_EYE_MM, Math.max(LEAST_EYE_MM, Math.round(height_mm)));
  if (eyes.of === 'standing') return { ...eyes, standing_mm: height };
  if (eyes.of === 'seated') return { ...eyes, seated_mm: height };
  return { ...eyes, places_mm: { ...eyes.places_mm, [viewpoint.id]: height } };
}

/** Each viewpoint from its height, and this one from that which it was made with. */
export function atItsOwnHeight({ places_mm, ...eyes }: EyeHeights, viewpoint: string): EyeHeights {
  const { [viewpoint]: _, ...others } = places_mm;
  return { ...eyes, of: 'place', places_mm: others };
}

/** The viewpoint as seen from the height in force; the very same where that is its own. */
export function atEyeHeight(eyes: EyeHeights, viewpoint: Viewpoint): Viewpoint {
  const height = eyeHeight_mm(eyes, viewpoint) / MM_PER_M;
  const [x, y, own] = viewpoint.eye;
  return Math.abs(height - own) < 0.5 / MM_PER_M ? viewpoint : { ...viewpoint, eye: [x, y, height] };
}
