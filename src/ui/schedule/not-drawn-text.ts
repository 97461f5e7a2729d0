import type { ScheduleRow } from '../../kitchen/schedule/types';
import { type TaggedDrawing, tagsDrawn } from '../drawings/tagged';
import { DRAWINGS } from '../words/schedule-drawings';
import { elementInLine } from './row-words';

/** Which items have no tag on the drawings, and what they are; empty where all have one. */
export function notDrawnText(drawings: readonly TaggedDrawing[], rows: readonly ScheduleRow[]): string {
  const drawn = tagsDrawn(drawings);
  const missing = rows.filter(({ id }) => !drawn.has(id)).map((row) => `${row.id} ${elementInLine(row)}`);
  return missing.length > 0 ? DRAWINGS.notDrawn(missing.join('; ')) : '';
}
