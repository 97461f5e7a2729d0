import { rgbText } from '../words/numbers';
import { SEEN_BY_WORDS } from '../words/seen-by';
import type { PointView } from './point-view';

/** The pixel of a point, with whose sight it is where that is not the usual one. */
export function onScreenText({ srgb8, seen_by }: PointView): string {
  const to = SEEN_BY_WORDS.onScreen[seen_by];
  return to === null ? rgbText(srgb8) : `${rgbText(srgb8)}, ${to}`;
}
