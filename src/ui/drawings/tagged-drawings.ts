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

const known = new WeakMap<Kitchen, Map<string, DrawingSet>>();
/** Sets kept of one kitchen: its options in the one unit, and somewhat more. */
const MOST_KEPT = 6;

/**
 * Plan, walls and island with the tags of the schedule, at the largest scale that a page holds. Remembered by the kitchen and what of the
 * schedule is drawn: a schedule is made anew with every letter that is typed.
 */
export function taggedDrawings(kitchen: Kitchen, rows: readonly ScheduleRow[], unit: LengthUnit): DrawingSet {
  const before = known.get(kitchen) ?? new Map<string, DrawingSet>();
  known.set(kitchen, before);
  const key = JSON.stringify([unit, rows.map(drawnOf)]);
  const found = before.get(key);
  if (found) return found;
  const drawings = drawingsOf(kitchen, rows);
  const scale = chooseScale(drawings, unit);
  const set = { scale, drawings: drawings.map((drawing) => tagged(drawing, rows, scale.ratio, unit)) };
  if (before.size >= MOST_KEPT) before.clear();
  before.set(key, set);
  return set;
}

/** What a row has a say in on a drawing. */
const drawnOf = ({ id, kind, surfaces, layout, size_mm, joint_mm, direction_deg, start, quantity }: ScheduleRow) => [
  id,
  kind,
  surfaces,
  layout,
  size_mm,
  joint_mm,
  direction_deg,
  start,
  quantity?.slabs?.seams,
];
