import type { Lab } from '../color/types';
import { warmCool2018, warmth } from '../naming/warmth';
import { PAIR } from './pair';

export type TemperatureClass = 'warm' | 'leaning' | 'cool' | 'neutral';

export const TEMPERATURE_CLASSES: readonly TemperatureClass[] = ['warm', 'leaning', 'cool', 'neutral'];

/** Relative warmth from which a full color counts as warm though the published sign calls it cool. Our judgment. */
const WARM_COLOR_W = 10;

/**
 * Warm, leaning warm, cool or neutral, for one color in CIELAB D65, 2 degree.
 * Warm: Ou et al. 2018 call it warm, or a full color (U >= 4) with w >= 10 on all three axes. Leaning warm and cool: a named
 * undertone (U >= 1) whose w has one sign on all three axes. Neutral: the rest.
 * @param strength looks up the undertone strength U of the same color; called only where it decides
 */
export function temperatureClass(lab: Lab<'D65-2'>, strength: () => number): TemperatureClass {
  if (warmCool2018(lab) >= 0) return 'warm';
  const w = warmth(lab);
  const least = Math.min(w.w50, w.w44, w.w32);
  const most = Math.max(w.w50, w.w44, w.w32);
  if (least <= 0 && most >= 0) return 'neutral';
  const u = strength();
  if (least >= WARM_COLOR_W && u >= PAIR.colorStrength) return 'warm';
  if (u < PAIR.namedStrength) return 'neutral';
  return least > 0 ? 'leaning' : 'cool';
}

const DIRECTION: { readonly [C in TemperatureClass]: number } = { cool: -1, neutral: 0, leaning: 1, warm: 1 };

/** Whether two classes are on the same side of neutral. */
export const areAlike = (one: TemperatureClass, other: TemperatureClass): boolean =>
  DIRECTION[one] === DIRECTION[other];
