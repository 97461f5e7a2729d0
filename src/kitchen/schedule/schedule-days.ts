import type { Day } from '../../model/order/day';
import { recordOfItem } from '../../model/order/record-of';
import type { Job } from '../../model/order/records';
import { stageDays } from '../../model/order/stage-days';
import { STAGES, type Stage } from '../../model/order/stages';
import type { Option } from '../../model/project';
import type { ScheduleItem } from './types';

type StageDays = { readonly [S in Stage]: Day } | null;

/** The first day of each stage for the items of an option; null where no first day of the job is known. */
export const daysOfItems = (job: Job, items: readonly ScheduleItem[], option: Option): StageDays =>
  stageDays(job, counterWeeks(items, option), idleStages(items, option));

/** The longest lead time of what is made to the template. */
function counterWeeks(items: readonly ScheduleItem[], { items: records = [] }: Option): number | undefined {
  const weeks = items.flatMap((item) => {
    const { kind, finish, state } = item;
    if (kind !== 'slab' || state === 'fixed') return [];
    const own = recordOfItem(item, finish?.id, records)?.lead_time_weeks;
    return own ?? finish?.supply?.lead_time_weeks ?? [];
  });
  return weeks.length > 0 ? Math.max(...weeks) : undefined;
}

/** Stages in which nothing is put in: all of it stays, or there is none. A template is taken only for what is cut to it. */
function idleStages(items: readonly ScheduleItem[], { extras = [] }: Option): ReadonlySet<Stage> {
  const bought = items.filter(({ state }) => state !== 'fixed');
  const busy = new Set<Stage>([...bought.map(({ stage }) => stage), ...extras.map(({ stage }) => stage)]);
  if (bought.some(({ kind }) => kind === 'slab')) busy.add('template');
  return new Set(STAGES.filter((stage) => !busy.has(stage)));
}
