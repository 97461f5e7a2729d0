import { scheduleOf } from '../../kitchen/schedule/schedule-of';
import type { SheetPart } from '../../ui/handover/blocks';
import type { HandoverSet } from '../../ui/handover/handover-set';
import { orderingPages } from '../../ui/handover/ordering';
import { today } from '../today';

/** Pages on what is ordered of the option to sign: schedule, drawings with its tags, dates, quantities, what comes. */
export function orderingParts({ project, date, signed: { option, cautions } }: HandoverSet): readonly SheetPart[] {
  return orderingPages(project, scheduleOf(project, option, cautions, today(date)));
}
