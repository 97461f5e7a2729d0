import type { Problem } from '../../engine/result';
import { placeIn } from '../place-problem';

/** No surface reflects three times the light of a perfect diffuser, not even one that fluoresces: then it is percent. */
const MOST_FACTOR = 3;

/** Share of rows beyond that from which on the file is in percent: one number with a lost decimal point does not make it so. */
const PERCENT_SHARE = 0.1;

/** Up to here values are factors of surfaces without doubt. */
export const SURELY_FACTOR = 1.005;

/**
 * How the reflectances of a file are written, from the greatest of each row: factors of a perfect diffuser (white is 1) or
 * percent. Null where there are none, and where they could be either and the file does not name them: dark colors in percent, or bright ones
 * that glow.
 */
export function scaleOf(
  greatest: readonly number[],
  named: 'factor' | 'percent' | null = null,
): 'factor' | 'percent' | null {
  const known = greatest.filter((value) => !Number.isNaN(value));
  if (known.length === 0) return null;
  const beyond = known.filter((value) => value > MOST_FACTOR).length;
  if (beyond > 0) return beyond >= known.length * PERCENT_SHARE ? 'percent' : 'factor';
  return known.some((value) => value > SURELY_FACTOR) ? named : 'factor';
}

/** Whether a spectrum with such a greatest value sends back more than falls on it, in percent or as a factor. */
export const isGlowing = (greatest: number): boolean =>
  (greatest > MOST_FACTOR ? greatest / 100 : greatest) > SURELY_FACTOR;

/** Says what was decided; `named` is what the file calls them. */
export function scaleNotice(
  scale: 'factor' | 'percent',
  greatest: readonly number[],
  named: 'factor' | 'percent' | null,
  file: string,
): Problem {
  const most = greatest.reduce((max, value) => (Number.isNaN(value) ? max : Math.max(value, max)), 0);
  const told = named && named !== scale ? ` although the file names them ${words(named)}` : '';
  return {
    code: 'reflectance-scale',
    text: `Reflectances are read as ${words(scale)}${told}: the greatest is ${Number(most.toPrecision(4))}.`,
    at: placeIn(file),
    remedy: 'Nothing to do if that is right; else say how they are written.',
  };
}

const words = (scale: 'factor' | 'percent'): string => (scale === 'percent' ? 'percent' : 'factors from 0 to 1');
