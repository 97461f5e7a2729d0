import type { Problem } from '../../engine/result';
import type { Columns } from './columns';
import { weeksOfUnit } from './row-supply';
import { quoted, sheetProblem } from './sheet-problem';
import type { SheetRow } from './types';

/** Neither the heading nor the cell says what it counts. */
const BARE = /^\s*[1-9]\d*(?:[.,]\d+)?(?:\s*[-–]\s*\d+)?\s*$/;

/** Lead times that name no unit were taken for weeks, which may be days; nothing where all of them do. */
export function leadTimeNotice({ at, headings }: Columns, rows: readonly SheetRow[], file: string): readonly Problem[] {
  const column = at.get('lead_time_weeks');
  if (column === undefined || weeksOfUnit(headings[column]?.heading ?? '') !== null) return [];
  const cell = rows.map(({ cells }) => cells[column] ?? '').find((one) => BARE.test(one));
  if (cell === undefined) return [];
  return [
    sheetProblem(
      'lead-time-unit',
      `Lead times that name no unit were read as weeks: ${quoted(cell)} is ${cell.trim()} weeks.`,
      'If they are days, write it into the heading, like "Lead time (days)".',
      file,
    ),
  ];
}
