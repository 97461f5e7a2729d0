import type { SurfaceId } from '../../engine/surface';
import { type Box, boxOf, grown, type Place } from './boxes';
import type { SheetLayout } from './sheet-layout';
import { LETTER, tagWide } from './sizes';
import { paperOf } from './tag-demands';

/** A mark where laying starts, an arrow the way its rows run, and the tag of what is laid; on paper, mm. */
export interface PlacedStart {
  readonly tag: string;
  readonly at: Place;
  readonly end: Place;
  /** The middle of its words. */
  readonly words: Place;
  readonly box: Box;
}

/** Length of the arrow, and from its end to the middle of the words. */
const ARROW = 8;
/** Of the words over the foot that rows stand on. */
const ABOVE_FOOT = 2;

/** Where the laying of each surface that is laid in pieces starts. */
export function placeStarts(
  layout: SheetLayout,
  tags: ReadonlyMap<SurfaceId, readonly string[]>,
): readonly PlacedStart[] {
  const toPaper = paperOf(layout);
  const seen = new Set<SurfaceId>();
  return layout.drawing.coursings.flatMap(({ surface, start }) => {
    const tag = tags.get(surface)?.[0];
    if (!start || tag === undefined || seen.has(surface)) return [];
    seen.add(surface);
    const at = toPaper(start.at);
    const angle = (start.direction_deg * Math.PI) / 180;
    const away = (length: number): Place => [at[0] + length * Math.cos(angle), at[1] - length * Math.sin(angle)];
    // The words lie level beside the end of the arrow.
    const half = tagWide(tag) / 2;
    const far = start.direction_deg === 0 ? half : LETTER / 2 + 0.4;
    const [x, y] = away(ARROW + far);
    // Over the foot of a wall, where a counter ends.
    const words: Place = [x, layout.drawing.room ? y : y - ABOVE_FOOT];
    const wordBox = { x: words[0] - half, y: words[1] - LETTER / 2, width: 2 * half, height: LETTER };
    const corners: readonly Place[] = [
      [wordBox.x, wordBox.y],
      [wordBox.x + wordBox.width, wordBox.y + wordBox.height],
    ];
    return [{ tag, at, end: away(ARROW), words, box: grown(boxOf([at, ...corners]), 1.6) }];
  });
}
