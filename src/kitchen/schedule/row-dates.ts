import type { SurfaceId } from '../../engine/surface';
import type { Day } from '../../model/order/day';
import type { ItemRecord, Job } from '../../model/order/records';
import { orderBy } from '../../model/order/stage-days';
import type { FittingStage, Stage } from '../../model/order/stages';
import type { PurchaseKind } from '../../model/quantity/usual-waste';
import type { RowProblem } from './types';

export interface RowDates {
  readonly needed_on: Day | null;
  readonly order_by: Day | null;
  readonly problems: readonly RowProblem[];
}

/** What dates of rows are told from. */
export interface Calendar {
  readonly job: Job;
  /** Null: the first day of installing is not known. */
  readonly days: { readonly [S in Stage]: Day } | null;
  /** Something is made to a template. */
  readonly isTemplated: boolean;
  /** The day it is; null where one does not want to be told what is late. */
  readonly today: Day | null;
}

const WORDS = {
  noLead: 'No lead time is known: ask the supplier.',
  late: (day: Day) => `It should have been ordered by ${day}. Ask for the earliest delivery before anything is begun.`,
};

/** What cut-outs and holes are made for. */
const CUT_FOR: readonly SurfaceId[] = ['sink', 'tap', 'appliance'];

/**
 * When an item has to be there: when it is put in; sink, faucet and cooktop when the counter is measured, which is cut to them (common
 * practice, no source).
 */
export const neededAt = (
  surfaces: readonly SurfaceId[],
  stage: FittingStage,
  { isTemplated }: Pick<Calendar, 'isTemplated'>,
): Stage => (isTemplated && surfaces.some((surface) => CUT_FOR.includes(surface)) ? 'template' : stage);

/** When an item is needed and by when to order it. Of what is ordered or stays nothing is said. */
export function rowDates(
  kind: PurchaseKind | 'extra',
  stage: Stage,
  weeks: number | undefined,
  record: Pick<ItemRecord, 'needed_on' | 'ordered_on'>,
  { job, days, today }: Omit<Calendar, 'isTemplated'>,
): RowDates {
  const isMade = kind === 'slab';
  const needed_on = record.needed_on ?? days?.[stage] ?? null;
  if (record.ordered_on !== undefined) return { needed_on, order_by: null, problems: [] };
  const order_by = orderBy(stage, isMade, days, weeks, job, record.needed_on);
  const problems: RowProblem[] = [];
  if (weeks === undefined) problems.push({ code: 'no-lead-time', text: WORDS.noLead });
  if (order_by !== null && today !== null && order_by < today) {
    problems.push({ code: 'order-by-passed', text: WORDS.late(order_by) });
  }
  return { needed_on, order_by, problems };
}
