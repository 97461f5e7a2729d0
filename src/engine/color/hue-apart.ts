import { chromaOf, hueDegOf } from './lab';
import type { Lab } from './types';

/** Degrees between two directions, 0-180. */
export function degreesApart(a: number, b: number): number {
  const apart = Math.abs(a - b) % 360;
  return Math.min(apart, 360 - apart);
}

/** Degrees between two CIELAB hues, 0-180; 0 where one of the two is a neutral, which has none. */
export const hueApartDeg = (a: Lab<'D65-2'>, b: Lab<'D65-2'>): number =>
  chromaOf(a) === 0 || chromaOf(b) === 0 ? 0 : degreesApart(hueDegOf(a), hueDegOf(b));
