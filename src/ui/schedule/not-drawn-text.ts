import type { ScheduleRow } from '../../kitchen/schedule/types';
import { DRAWINGS } from '../words/schedule-drawings';
import { elementInLine } from './row-words';
import { notDrawn, type TaggedWall } from './tagged-walls';

/** Which items have no tag on the drawings, and what they are; empty where all have one. */
export function notDrawnText(walls: readonly TaggedWall[], rows: readonly ScheduleRow[]): string {
  const missing = notDrawn(walls, rows).map((row) => `${row.id} ${elementInLine(row)}`);
  return missing.length > 0 ? DRAWINGS.notDrawn(missing.join('; ')) : '';
}
