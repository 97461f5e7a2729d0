import { decimal, rgbText } from '../words/numbers';
import { READING } from '../words/reading';
import { SEEN_BY_WORDS } from '../words/seen-by';
import type { PointView } from './point-view';

/** Less darkening than this is a step of lightness that one hardly sees. */
const TOLD_FROM = 1.05;

/** The pixel of a point, with whose sight it is where that is not the usual one, and whether the picture is darkened there. */
export function onScreenText({ srgb8, seen_by, darkened }: PointView): string {
  const to = SEEN_BY_WORDS.onScreen[seen_by];
  const text = to === null ? rgbText(srgb8) : `${rgbText(srgb8)}, ${to}`;
  return darkened < TOLD_FROM ? text : `${text}, ${READING.darkened(decimal(darkened))}`;
}
