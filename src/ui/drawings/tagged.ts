import type { Drawing } from '../../kitchen/drawings/types';
import type { ScheduleRow } from '../../kitchen/schedule/types';
import type { LengthUnit } from '../../model/length-text';
import { type Box, boxOf, grown } from './boxes';
import { type PlacedTag, placeTags } from './place-tags';
import { type PlacedMark, placeMarks } from './plan-marks';
import { layOut, type SheetLayout } from './sheet-layout';
import { type PlacedStart, placeStarts } from './start-places';
import { paperBox, paperOf, tagDemands, tagsOf } from './tag-demands';

/** A drawing laid out with its tags, and on the plan with the letters of the walls. */
export interface TaggedDrawing {
  readonly layout: SheetLayout;
  readonly tags: readonly PlacedTag[];
  readonly marks: readonly PlacedMark[];
  /** Where laying starts: with the tag of what is laid. */
  readonly starts: readonly PlacedStart[];
}

/** Lays a drawing out with a tag for every item of the schedule that it shows. */
export function tagged(drawing: Drawing, rows: readonly ScheduleRow[], ratio: number, unit: LengthUnit): TaggedDrawing {
  const layout = layOut(drawing, ratio, unit);
  const toPaper = paperOf(layout);
  const tags = tagsOf(rows);
  const starts = placeStarts(layout, tags);
  const within: Box = { x: 0.4, y: 0.4, width: layout.width - 0.8, height: layout.height - 0.8 };
  const kept = [
    ...drawing.lines
      .filter(({ kind }) => kind === 'handle' || kind === 'tap')
      .map(({ points }) => grown(boxOf(points.map(toPaper)), 0.5)),
    ...starts.map(({ box }) => box),
  ];
  const edges = [
    ...drawing.shapes.slice(1).flatMap((shape) => edgesOf(paperBox(layout, shape))),
    ...drawing.lines
      .filter(({ kind }) => kind !== 'front' && kind !== 'edge')
      .flatMap(({ points }) => points.slice(1).map((end, i) => boxOf([toPaper(points[i]!), toPaper(end)]))),
  ];
  const marks = drawing.room ? placeMarks(layout, kept, edges) : [];
  const around = { within, kept: [...kept, ...marks.map(({ box }) => box)], edges };
  return { layout, tags: placeTags(tagDemands(layout, tags), around), marks, starts };
}

const edgesOf = ({ x, y, width, height }: Box): readonly Box[] => [
  { x, y, width, height: 0 },
  { x, y: y + height, width, height: 0 },
  { x, y, width: 0, height },
  { x: x + width, y, width: 0, height },
];

/** Tags that stand on some drawings. */
export const tagsDrawn = (drawings: readonly TaggedDrawing[]): ReadonlySet<string> =>
  new Set(drawings.flatMap(({ tags }) => tags.flatMap((one) => one.tags)));
