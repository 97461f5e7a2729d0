import { drawingsOf } from '../../kitchen/drawings/drawings-of';
import type { ScheduleRow } from '../../kitchen/schedule/types';
import type { Kitchen } from '../../model/kitchen';
import type { LengthUnit } from '../../model/length-text';
import { chooseScale } from './choose-scale';
import type { Scale } from './scales';
import { type TaggedDrawing, tagged } from './tagged';

/** The drawings of a kitchen at one scale. */
export interface DrawingSet {
  readonly scale: Scale;
  readonly drawings: readonly TaggedDrawing[];
}

const known = new WeakMap<
  readonly ScheduleRow[],
  Map<string, { readonly kitchen: Kitchen; readonly set: DrawingSet }>
>();

/** Plan, walls and island with the tags of the schedule, at the largest scale that a page holds. Remembered by the schedule's rows. */
export function taggedDrawings(kitchen: Kitchen, rows: readonly ScheduleRow[], unit: LengthUnit): DrawingSet {
  const before = known.get(rows) ?? new Map();
  known.set(rows, before);
  const found = before.get(unit);
  if (found?.kitchen === kitchen) return found.set;
  const drawings = drawingsOf(kitchen, rows);
  const scale = chooseScale(drawings, unit);
  const set = { scale, drawings: drawings.map((drawing) => tagged(drawing, rows, scale.ratio, unit)) };
  before.set(unit, { kitchen, set });
  return set;
}
